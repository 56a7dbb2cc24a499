import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { withoutServerWords } from '../../src/open-from-disk/leave-out.ts';
import { withPureCalls } from '../../src/open-from-disk/pure-calls.ts';

const OF_STEP = new Set(['says', 'formula', 'numbers']);
const OF_CALCULATOR = new Set(['assumptions', 'sources', 'formulas']);

describe('words that no script reads', () => {
  test('go from a worked step; its slots stay', () => {
    const left = withoutServerWords(
      `export const steps = [{ id: 'sum', says: 'A "sum" of \\\\frac{a}{b}.', formula: 'a + ' + 'b', numbers: '\\\\slot{a}', slots: (v) => ({ a: length(v.a) }) }];`,
      OF_STEP,
    );
    expect(left).toBe(
      `export const steps = [{ id: 'sum', says: '', formula: '', numbers: '', slots: (v) => ({ a: length(v.a) }) }];`,
    );
  });

  test('go from a calculator; what it says to the reader stays', () => {
    const left = withoutServerWords(
      `export default defineCalculator({ compute, says: () => 'It holds.', assumptions: ['Stiff [and light].'], sources: ['a', 'b'] });`,
      OF_CALCULATOR,
    );
    expect(left).toBe(
      `export default defineCalculator({ compute, says: () => 'It holds.', assumptions: [], sources: [] });`,
    );
  });

  test('go from a material number; its spread stays', () => {
    const source = "E: materialValue(spread(GPA, 60, 90, 120), 'estimate', 'common-practice', `Of ${fibre}.`),";
    expect(withoutServerWords(`export const X = { ${source} };`, new Set())).toContain(
      "materialValue(spread(GPA, 60, 90, 120), '', '', `Of ${fibre}.`)",
    );
  });

  test('are found in the files of this site, and once gone stay gone', () => {
    const files = globSync('{src/calculators/*/{steps,index}.ts,shared/src/material/*.ts}');
    const names = new Set([...OF_STEP, ...OF_CALCULATOR]);
    let saved = 0;
    for (const file of files) {
      const source = readFileSync(file, 'utf8');
      const left = withoutServerWords(source, names);
      saved += source.length - left.length;
      expect(withoutServerWords(left, names), file).toBe(left);
    }
    expect(saved).toBeGreaterThan(5000);
  });
});

test('constants that are made by calls are marked as pure; values, functions and what is done at load stay', () => {
  const source = `const a = 2 * Math.PI, f = () => g(), b = make(f).middle;
export const c = { ...b, d: 1 } as const;
install(c);`;
  const pure = (made: string) => `/* @__PURE__ */ (() => (${made}))()`;
  expect(withPureCalls(source)).toBe(
    source
      .replace('make(f).middle', pure('make(f).middle'))
      .replace('{ ...b, d: 1 } as const', pure('{ ...b, d: 1 } as const')),
  );
  const library = readFileSync('node_modules/d3-array/dist/d3-array.mjs', 'utf8');
  expect(withPureCalls(library)).toContain(`const blur2 = ${pure('Blur2(blurf)')};`);
});
