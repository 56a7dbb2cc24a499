import fc from 'fast-check';
import { InputError } from '@frameworthy/shared';
import { expect } from 'vitest';

/** What a reader, a link or a broken record may put where a number belongs. */
export const anyNumber = fc.oneof(
  fc.constantFrom(0, -0, -1, 1, 1e308, -1e308, 5e-324, 1e-30, 1e15, NaN, Infinity, -Infinity, 0.014, 0.001, 0.5),
  fc.double(),
  fc.double({ min: 1e-4, max: 1, noNaN: true }),
);

/** Every number found anywhere in a result. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value !== null && typeof value === 'object') return Object.values(value).flatMap(numbersIn);
  return [];
}

/** Runs a function on garbage: it may refuse with the package's own error, else every number must be finite. */
export function refusesOrFinite(run: () => unknown): void {
  let result: unknown;
  try {
    result = run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return;
  }
  expect(numbersIn(result).filter((value) => !Number.isFinite(value))).toEqual([]);
}
