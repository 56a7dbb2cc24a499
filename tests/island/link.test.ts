import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AnyCalculator, QuantityInput } from '~/island/declaration.ts';
import { writeLink } from '~/island/link.ts';
import { readLink, splitLink } from '~/island/read-link.ts';
import { isQuantity, inputsOf, startValues } from '~/island/values.ts';
import { example } from './example.tsx';

const lever: AnyCalculator = example;
const start = startValues(lever);
const open = (hash: string) => readLink(lever, splitLink(hash)?.parts ?? [], start);

test('a link holds what differs from the start, readable and with units', () => {
  expect(writeLink(lever, { ...start, arm: 0.12, end: 'held' }, start, { system: 'metric' })).toBe(
    '#lever?arm=120mm&end=held',
  );
  expect(writeLink(lever, { ...start, arm: 0.127 }, start, { system: 'inch' })).toBe('#lever?arm=5in');
  expect(writeLink(lever, { ...start, force: 21.5 }, start, { system: 'inch' })).toBe('#lever?force=21.5N');
  expect(writeLink(lever, start, start, { system: 'metric' })).toBe('#lever?');
});

test('what a page sets is not repeated in its links', () => {
  const page = startValues(lever, { arm: 0.2 });
  expect(writeLink(lever, page, page, { system: 'metric' })).toBe('#lever?');
  expect(writeLink(lever, { ...page, arm: 0.1 }, page, { system: 'metric' })).toBe('#lever?arm=100mm');
});

test('a link opens to the same values, whatever they are and whatever the units', () => {
  const anyValues = fc.record(
    Object.fromEntries(
      inputsOf(lever).map(([key, input]) => [
        key,
        isQuantity(input)
          ? fc.double({ min: (input as QuantityInput).min, max: (input as QuantityInput).max, noNaN: true })
          : fc.constantFrom(...Object.keys(input.choices)),
      ]),
    ),
  );
  fc.assert(
    fc.property(anyValues, fc.constantFrom('metric' as const, 'inch' as const), (values, system) => {
      const read = open(writeLink(lever, values, start, { system }));
      expect(read.problems).toEqual([]);
      for (const [key, value] of Object.entries(values)) {
        if (typeof value === 'number')
          expect(Math.abs((read.values[key] as number) - value)).toBeLessThanOrEqual(1e-15 * Math.abs(value));
        else expect(read.values[key]).toBe(value);
      }
    }),
  );
});

describe('bad parts are skipped and named, the rest is taken', () => {
  test.each([
    ['an unknown name', 'wheel=3mm', '"wheel" is not known here.'],
    ['a wrong unit', 'force=5g', 'Force: g is a mass, this field wants a force.'],
    ['no unit', 'wall=2', 'Wall: "2" has no unit.'],
    ['too much', 'force=1e308N', 'Force: "1e308N" is too large to compute with.'],
    ['out of range', 'wall=20m', 'Wall: 20 m is too large: at most 0.05 m.'],
    ['letters', 'wall=abc', 'Wall: "abc" is not a number.'],
    ['two points', 'wall=1.2.3mm', 'Wall: "1.2.3mm" has two decimal points.'],
    ['an unknown choice', 'end=loose', 'End: has no choice "loose".'],
    ['the name of a built-in', 'constructor=1mm', '"constructor" is not known here.'],
    ['a built-in as a choice', 'end=toString', 'End: has no choice "toString".'],
    ['cut after the name', 'wal', '"wal" is not known here.'],
    ['cut after the sign', 'wall=', 'Wall: the value is missing.'],
    ['a damaged escape', 'wall=%E0%A4%A', '"wall=%E0%A4%A" is damaged.'],
    ['markup', '%3Cimg%20src=x%3E=1', '"<img src" is not known here.'],
  ])('%s', (_, part, problem) => {
    const read = open(`#lever?arm=120mm&${part}`);
    expect(read.problems.map((text) => text.replace(/\u202f/g, ' '))).toEqual([problem]);
    expect(read.values).toEqual({ ...start, arm: 0.12 });
  });
});

test('fragments of headings are left alone', () => {
  expect([splitLink(''), splitLink('#limits'), splitLink('#lever')]).toEqual([undefined, undefined, undefined]);
});

test('any fragment at all is read without a throw, and only known values change', () => {
  fc.assert(
    fc.property(
      fc.string({
        unit: fc.constantFrom(...'armwlfoce=&?%0129.,/+-mNin;<>#é\0', 'arm=', 'wall=', 'force='),
        maxLength: 40,
      }),
      (text) => {
        const read = open(`#lever?${text}`);
        expect(Object.keys(read.values)).toEqual(Object.keys(start));
      },
    ),
  );
});
