import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { InputError } from '@frameworthy/shared';
import { describe, expect, test } from 'vitest';
import { eliminate, solveLinear } from '../../shared/src/solve-linear.ts';

const entry = fc.double({ min: -10, max: 10, noNaN: true });
/** Diagonals that outweigh their rows: never singular, and as well conditioned as those of frames. */
const system = fc.integer({ min: 1, max: 12 }).chain((size) =>
  fc
    .tuple(
      fc.array(fc.array(entry, { minLength: size, maxLength: size }), { minLength: size, maxLength: size }),
      fc.array(entry, { minLength: size, maxLength: size }),
      fc.shuffledSubarray([...Array(size).keys()], { minLength: size, maxLength: size }),
    )
    .map(([rows, right, order]) => {
      const heavy = rows.map((row, i) => row.map((value, j) => (i === j ? 1 + 10 * size + Math.abs(value) : value)));
      // Rows out of order: the pivot has to be looked for.
      return { matrix: order.map((i) => heavy[i]!), right };
    }),
);

describe('linear equations', () => {
  test('are solved as a general matrix library solves them, in any order and unit of the rows', () => {
    fc.assert(
      fc.property(system, fc.double({ min: -12, max: 12, noNaN: true }), ({ matrix, right }, power) => {
        const scaled = matrix.map((row, i) => row.map((value) => value * 10 ** (i % 2 ? power : 0)));
        const sides = right.map((value, i) => value * 10 ** (i % 2 ? power : 0));
        const expected = solve(new Matrix(matrix), Matrix.columnVector(right)).getColumn(0);
        const size = Math.max(...expected.map(Math.abs), 1e-300);
        eliminate(scaled, sides)!.forEach((value, i) =>
          expect(Math.abs(value - expected[i]!)).toBeLessThanOrEqual(1e-11 * size),
        );
      }),
    );
  });

  test('that do not determine their unknowns are refused in the reader’s words', () => {
    const subject = { parameter: 'motors', quantity: 'motors', rule: 'must not stand in one line' };
    expect(
      eliminate(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeUndefined();
    expect(() =>
      solveLinear(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
        subject,
      ),
    ).toThrow(InputError);
  });
});
