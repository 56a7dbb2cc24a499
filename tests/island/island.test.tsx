import { InputError } from '@frameworthy/shared';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import Calculator from '~/island/Calculator.tsx';
import { sweep, type AnyCalculator, type QuantityInput } from '~/island/declaration.ts';
import { atNotch, notches, notchOf, readEntry, stepped } from '~/island/entry.ts';
import { evaluate, explain } from '~/island/evaluate.ts';
import { change, undone } from '~/island/history.ts';
import { showIn } from '~/island/show.ts';
import { readChoice } from '~/island/unit-choice.ts';
import { startValues, type ValueSet } from '~/island/values.ts';
import { unitFor } from '@frameworthy/shared/quantity';
import { example } from './example.tsx';

const lever: AnyCalculator = example;
const plain = (text: string) => text.replace(/\u202f/g, ' ');
const arm = lever.inputs['arm'] as QuantityInput;

test('without scripts it is a complete worked example', () => {
  const html = plain(render(<Calculator calculator={lever} overrides={{ arm: 0.2 }} />));
  expect(html).toContain('The pivot holds 2 N·m.');
  expect(html).toMatch(/<input id="lever-arm"[^>]* value="200"/);
  expect(html).toContain('What the pivot must hold.');
  expect(html).toContain('From the pivot to the tip.');
  expect(html).toMatch(/<svg class="drawing"[^>]*aria-label="Lever. Arm 200 mm."/);
  expect(html).toContain('Yours: Arm 200 mm');
  expect(html).not.toContain('lever-pad');
});

describe('a field', () => {
  const mm = unitFor('length');
  test('holds what is typed against its range, in the unit beside it', () => {
    const told = (text: string, unit = mm) => {
      const entry = readEntry(arm, text, unit);
      return entry.ok ? entry.value : plain(entry.problem);
    };
    expect(told('120')).toBeCloseTo(0.12, 12);
    expect(told('5 in')).toBeCloseTo(0.127, 12);
    expect(told('-3')).toBe('−3 mm is too small: at least 10 mm.');
    expect(told('0')).toBe('0 mm is too small: at least 10 mm.');
    expect(told('30 in', unitFor('length', { system: 'inch' }))).toBe('30 in is too large: at most 19.69 in.');
  });

  test('steps stay in range and free of the dust of binary fractions', () => {
    expect(stepped(arm, 0.1, 2)).toBe(0.102);
    expect(stepped(arm, 0.4999, 10)).toBe(0.5);
    expect(stepped(arm, 0.0105, -10)).toBe(0.01);
  });

  test('the slider reaches both ends', () => {
    expect([atNotch(arm, 0), atNotch(arm, notches(arm))]).toEqual([0.01, 0.5]);
    expect(atNotch(arm, notchOf(arm, 0.123))).toBe(0.123);
  });
});

describe('an error of the package', () => {
  test('goes to the field that lists its parameter, with value and limit in the units of the reader', () => {
    const refused = evaluate(lever, { ...startValues(lever), arm: 0.0254, wall: 0.0508 });
    const told = refused.ok ? undefined : explain(lever, refused.error, showIn({ system: 'inch' }));
    expect(told && { ...told, text: plain(told.text) }).toEqual({
      field: 'wall',
      text: 'Wall thickness 2 in must be smaller than the arm (1 in).',
    });
  });

  test('without a field concerns all values', () => {
    const error = new InputError({
      parameter: 'span',
      quantity: 'span',
      value: 3,
      rule: 'must be at least',
      limit: 4,
      kind: 'length',
    });
    expect(plain(explain(lever, error, showIn({ system: 'metric' })).text)).toBe(
      'Span 3000 mm must be at least 4000 mm.',
    );
    expect(explain(lever, error, showIn({ system: 'metric' })).field).toBeUndefined();
  });

  test('any other error is said plainly and not shown raw', () => {
    expect(explain(lever, new TypeError('x is undefined'), showIn({ system: 'metric' })).text).toBe(
      'These values together cannot be computed. Change one of them back.',
    );
  });
});

describe('undo', () => {
  const first = { values: { a: 1 }, past: [] };
  test('takes quick changes of one field back together', () => {
    const typed = change(change(first, { a: 2 }, 'a', 0), { a: 25 }, 'a', 300);
    expect(undone(typed).values).toEqual({ a: 1 });
  });
  test('takes later changes back one by one', () => {
    const typed = change(change(first, { a: 2 }, 'a', 0), { a: 3 }, 'a', 5000);
    expect([undone(typed).values, undone(undone(typed)).values]).toEqual([{ a: 2 }, { a: 1 }]);
  });
  test('knows nothing of a change to the same value', () => {
    expect(change(first, { a: 1 }, 'a', 0).past).toEqual([]);
  });
});

test.each([null, '', '{', '7', 'null', '{"system":"stone","units":3}'])(
  'a stored choice of units that reads %j is metric',
  (stored) => {
    expect(readChoice(stored).system).toBe('metric');
  },
);

test("a sweep holds the reader's own value as a point, so that the reading there is the result", () => {
  const values: ValueSet = { ...startValues(lever), arm: 0.1234567 };
  const data = sweep(values, lever.compute, { input: 'arm', from: 0.01, to: 0.5 }, [
    { label: 'M', of: (result: { moment: number }) => result.moment },
  ]);
  const at = data.x.indexOf(0.1234567);
  expect(data.series[0]?.y[at]).toBe((lever.compute(values) as { moment: number }).moment);
});

test('a sweep has a gap where the calculator refuses', () => {
  const data = sweep(
    { ...startValues(lever), wall: 0.05 } as ValueSet,
    lever.compute,
    { input: 'arm', from: 0.01, to: 0.1, count: 10 },
    [{ label: 'M', of: (result: { moment: number }) => result.moment }],
  );
  expect(data.series[0]?.y.map(Number.isFinite)).toEqual(data.x.map((x) => x > 0.05));
});
