import { InputError } from './error.ts';

/** Smallest share of the largest entry that a pivot may have: below it the digits of a double are used up. */
const SINGULAR = 1e-13;

/**
 * Solves a small system of linear equations by elimination with row scaling and partial pivoting.
 * @param matrix - rows of coefficients, square
 * @param right - right-hand side, one number a row
 * @returns the unknowns in order of the columns
 * @validity a dozen equations or so; numbers whose products stay finite
 * @throws InputError when the equations do not determine the unknowns; `subject` says what that means to the reader
 * @derivation Gaussian elimination: rows are exchanged so that the largest scaled entry divides, then back substitution
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
  subject: { parameter: string; quantity: string; rule: string },
): number[] {
  const size = right.length;
  const refuse = () => new InputError({ ...subject, value: 'given' });
  const rows = matrix.map((row, i) => {
    const scale = Math.max(...row.map(Math.abs));
    if (!(scale > 0)) throw refuse();
    return [...row, right[i] as number].map((entry) => entry / scale);
  });
  for (let column = 0; column < size; column++) {
    const entry = (row: number) => Math.abs(rows[row]?.[column] as number);
    let pivot = column;
    for (let row = column + 1; row < size; row++) if (entry(row) > entry(pivot)) pivot = row;
    if (!(entry(pivot) > SINGULAR)) throw refuse();
    const [top, other] = [rows[pivot] as number[], rows[column] as number[]];
    [rows[column], rows[pivot]] = [top, other];
    for (const row of rows.slice(column + 1)) {
      const factor = (row[column] as number) / (top[column] as number);
      for (let k = column; k <= size; k++) row[k] = (row[k] as number) - factor * (top[k] as number);
    }
  }
  const unknowns = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    const row = rows[i] as number[];
    const known = unknowns.reduce((sum, value, k) => sum + (k > i ? (row[k] as number) * value : 0), 0);
    unknowns[i] = ((row[size] as number) - known) / (row[i] as number);
  }
  return unknowns;
}
