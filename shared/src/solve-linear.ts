import { InputError } from './error.ts';

/** Smallest scaled pivot, where the caller knows no better: below it the digits of a double are used up. */
const SINGULAR = 1e-13;

/**
 * Solves a small system of linear equations by elimination with row scaling and partial pivoting.
 * @param matrix - rows of coefficients, square
 * @param right - right-hand side, one number a row
 * @param singular - scaled pivot at and below which the equations count as undetermined
 * @returns the unknowns in order of the columns, or undefined where the equations do not determine them
 * @validity a dozen equations or so; numbers whose products stay finite
 * @derivation Gaussian elimination: rows are exchanged so that the largest scaled entry divides, then back substitution
 */
export function eliminate(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
  singular = SINGULAR,
): number[] | undefined {
  const size = right.length;
  const scales = matrix.map((row) => Math.max(...row.map(Math.abs)));
  if (!scales.every((scale) => scale > 0)) return undefined;
  const rows = matrix.map((row, i) => [...row, right[i]!].map((entry) => entry / scales[i]!));
  for (let column = 0; column < size; column++) {
    const entry = (row: number) => Math.abs(rows[row]![column]!);
    let pivot = column;
    for (let row = column + 1; row < size; row++) if (entry(row) > entry(pivot)) pivot = row;
    if (!(entry(pivot) > singular)) return undefined;
    const [top, other] = [rows[pivot]!, rows[column]!];
    [rows[column], rows[pivot]] = [top, other];
    for (const row of rows.slice(column + 1)) {
      const factor = row[column]! / top[column]!;
      for (let k = column; k <= size; k++) row[k]! -= factor * top[k]!;
    }
  }
  const unknowns = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    const row = rows[i]!;
    const known = unknowns.reduce((sum, value, k) => sum + (k > i ? row[k]! * value : 0), 0);
    unknowns[i] = (row[size]! - known) / row[i]!;
  }
  return unknowns;
}

/**
 * Solves a small system whose failure the reader can mend.
 * @param matrix - rows of coefficients, square
 * @param right - right-hand side, one number a row
 * @returns the unknowns in order of the columns
 * @validity as eliminate
 * @throws InputError when the equations do not determine the unknowns; `subject` says what that means to the reader
 * @derivation eliminate
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
  subject: { parameter: string; quantity: string; rule: string },
): number[] {
  const unknowns = eliminate(matrix, right);
  if (!unknowns) throw new InputError({ ...subject, value: 'given' });
  return unknowns;
}
