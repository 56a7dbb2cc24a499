// A worked step is what a reader checks by hand: what stands left of the last sign of equality must come to what stands right.
import { describe, expect, test } from 'vitest';
import { calculators } from '~/calculators/index.ts';
import { SAMPLES } from '~/frame/samples.ts';
import { startValues } from '~/island/values.ts';
import { filledFrom } from '../frame/filled.ts';
import { texValue } from './tex-arithmetic.ts';

/** Lines that are no arithmetic: they compare, say where a number is from, or leave a part out and say so. */
const WORDS = /\\text|\\dots|\\quad|\\qquad|\\mathrm\{net\}|:|\\ge|\\le(?!ft)/;
/** A line may write 9.81 for the standard 9.80665. */
const ROUNDED = 5e-4;
const all = Object.values(calculators);
const lines = all.flatMap(({ steps }) => steps.map(({ numbers }) => numbers));

describe('the arithmetic of TeX', () => {
  test.each<[string, number]>([
    ['\\frac12 + 2\\cdot(3-1)^2', 8.5],
    ['\\left[\\frac{#0#}{2}\\right]^{-1/2}', 0.5],
    ['2\\sqrt{#0#}\\,\\pi', 2 * Math.sqrt(8) * Math.PI],
    ['\\max\\left(0,\\; 3 - \\tfrac{#0#}{4}\\right) - \\ln 1', 1],
    ['\\sin\\tfrac{\\pi}{2}', 1],
  ])('%s', (tex, expected) => expect(texValue(tex, [8])).toBeCloseTo(expected, 12));

  test('what is no arithmetic is refused', () => {
    for (const tex of ['\\text{about } 2', '(2', '2 +', 'F', '\\frac{1}']) expect(() => texValue(tex, [])).toThrow();
  });
});

test('few lines are of words alone', () => {
  expect(lines.filter((line) => WORDS.test(line)).length).toBeLessThan(lines.length / 5);
});

describe.each(all.filter(({ steps }) => steps.length > 0).map((one) => [one.id, one] as const))('%s', (_, one) => {
  const given = [startValues(one), ...SAMPLES.map((record) => filledFrom(one, record))];

  test.each(one.steps.map((step) => [step.id, step] as const))('%s comes to its result', (_id, step) => {
    for (const values of given) {
      const slots = step.slots(values, one.compute(values));
      const numbers: number[] = [];
      const marked = step.numbers.replace(/\\slot\{([^{}]+)\}/g, (_match, name: string) => {
        return `#${numbers.push(slots[name]!.value) - 1}#`;
      });
      if (WORDS.test(marked)) continue;
      const sides = marked.split(/=|\\Rightarrow/).slice(1);
      const [found, result] = [sides[0]!, sides.at(-1)!].map((side) => texValue(side, numbers)) as [number, number];
      expect(Math.abs(found - result), `${step.numbers}: ${found}, not ${result}`).toBeLessThanOrEqual(
        ROUNDED * Math.abs(result) + 1e-15,
      );
    }
  });
});
