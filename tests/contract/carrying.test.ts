import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import type { AnyCalculator, Input, Onward } from '../../src/island/declaration.ts';
import { GoOn } from '../../src/island/GoOn.tsx';
import { carryingLink } from '../../src/island/link.ts';
import { readLink, splitLink } from '../../src/island/read-link.ts';
import { startValues, type ValueSet } from '../../src/island/values.ts';

/** The defaults, and the defaults with each choice in turn. */
const cases = (calculator: AnyCalculator): ValueSet[] => [
  startValues(calculator),
  ...Object.entries(calculator.inputs as Record<string, Input>).flatMap(([key, input]) =>
    'choices' in input
      ? Object.keys(input.choices).map((choice) => ({ ...startValues(calculator), [key]: choice }))
      : [],
  ),
];

const carrying = Object.values(calculators).flatMap((calculator) =>
  ((calculator.carriesTo ?? []) as readonly Onward<ValueSet, unknown>[]).map(
    (onward) => [`${calculator.id}: ${onward.says}`, calculator, onward] as const,
  ),
);

describe('values that go on to another calculator', () => {
  test('some do', () => expect(carrying.length).toBeGreaterThan(4));

  test.each(carrying)(
    '%s: the page has it, takes every key, and every value is in its range',
    (_, calculator, onward) => {
      const target = calculators[onward.calculator];
      if (!target) throw new Error(`no calculator "${onward.calculator}"`);
      // As an article sees it: a relative address works over http, under a sub-path and from a folder.
      const file = posix.join('content/articles/any', onward.page).replace(/\.html$/, '.mdx');
      expect(onward.page).toMatch(/^\.\.\/[\w-]+\/[\w-]+\.html$/);
      expect(readFileSync(file, 'utf8')).toContain(`<Calculator id="${target.id}"`);
      let carried = 0;
      for (const values of cases(calculator)) {
        const picked = onward.values(calculator.compute(values), values);
        if (!picked) continue;
        carried++;
        const link = splitLink(carryingLink(target.id, picked));
        expect(link?.id).toBe(target.id);
        const read = readLink(target, link?.parts ?? [], startValues(target));
        expect(read.problems, JSON.stringify(values)).toEqual([]);
        for (const [key, one] of Object.entries(picked)) {
          const arrived = read.values[key];
          if (typeof one === 'string') expect(arrived).toBe(one);
          else expect(Math.abs((arrived as number) - one.value)).toBeLessThanOrEqual(5e-3 * Math.abs(one.value));
        }
        expect(() => target.compute(read.values), JSON.stringify(read.values)).not.toThrow();
      }
      expect(carried).toBeGreaterThan(0);
    },
  );

  test('a quantity arrives as the kind that the target asks for', () => {
    for (const [name, calculator, onward] of carrying) {
      for (const values of cases(calculator)) {
        for (const [key, one] of Object.entries(onward.values(calculator.compute(values), values) ?? {})) {
          const input = (calculators[onward.calculator]!.inputs as Record<string, Input>)[key];
          expect(typeof one === 'string' ? 'choice' : one.quantity, `${name}, ${key}`).toBe(
            input && 'quantity' in input ? input.quantity : 'choice',
          );
        }
      }
    }
  });

  test('the links stand under the results, and none where nothing goes on', () => {
    const shown = (calculator: AnyCalculator, values: ValueSet) =>
      renderToString(h(GoOn, { calculator, values, result: calculator.compute(values) }));
    const laminate = calculators['laminate']!;
    const plate = shown(laminate, startValues(laminate));
    expect(plate).toContain(
      'href="../arms/vibration.html#arm-frequency?shape=strip&amp;material=own&amp;youngsModulus=',
    );
    expect(plate).not.toContain('two-screw-root');
    expect(shown(laminate, { ...startValues(laminate), part: 'tube' })).toContain('two-screw-root?tubeMaterial=own');
    const without = Object.values(calculators).find(({ carriesTo }) => !carriesTo)!;
    expect(shown(without, startValues(without))).toBe('');
  });
});
