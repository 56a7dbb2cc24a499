import * as d3 from 'd3-array';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nice, ticks } from '~/island/ticks.ts';

/** Spans as axes have them: of any size, in front of, behind or over zero. */
const span = fc
  .tuple(fc.double({ min: -9, max: 9, noNaN: true }), fc.double({ min: -3, max: 0, noNaN: true }), fc.boolean())
  .chain(([size, share, over]) =>
    fc.double({ min: -1, max: 1, noNaN: true }).map((place): [number, number] => {
      const [width, middle] = [10 ** size, (over ? place : place * 10 ** -share) * 10 ** size];
      return [middle - width / 2, middle + width / 2];
    }),
  );
const count = fc.integer({ min: 2, max: 10 });
/** To the last digits that an axis could show. */
const same = (own: readonly number[], theirs: readonly number[], [from, to]: [number, number]) => {
  expect(own.length).toBe(theirs.length);
  own.forEach((value, i) => expect(Math.abs(value - theirs[i]!)).toBeLessThanOrEqual(1e-8 * (to - from)));
};

test('ticks are those of d3-array', () => {
  fc.assert(
    fc.property(span, count, (ends, n) => {
      // Where a tick falls on an end to the last bit, either may have it.
      const theirs = d3.ticks(...ends, n);
      const step = d3.tickStep(...ends, n);
      fc.pre(ends.every((end) => Math.abs(end / step - Math.round(end / step)) > 1e-8));
      same(ticks(...ends, n), theirs, ends);
    }),
  );
});

test('a widened span is that of d3-array', () => {
  fc.assert(
    fc.property(span, count, (ends, n) => {
      const step = d3.tickStep(...ends, n);
      fc.pre(ends.every((end) => Math.abs(end / step - Math.round(end / step)) > 1e-8));
      same(nice(...ends, n), d3.nice(...ends, n), ends);
    }),
  );
});

test('ends that are round already stay, and are ticks', () => {
  expect(nice(0, 250, 5)).toEqual([0, 250]);
  expect(ticks(0, 250, 5)).toEqual([0, 50, 100, 150, 200, 250]);
  expect(ticks(0, 0.3, 3)).toEqual([0, 0.1, 0.2, 0.3]);
  expect(ticks(-20, 20, 4)).toEqual([-20, -10, 0, 10, 20]);
});
