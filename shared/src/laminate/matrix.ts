import { InputError } from '../error.ts';

/** Three by three, row by row: rows and columns stand for x, y and shear. */
export type Matrix3 = readonly [Vector3, Vector3, Vector3];
export type Vector3 = readonly [number, number, number];

export const multiply = (matrix: Matrix3, v: Vector3): Vector3 => {
  const row = (r: Vector3): number => r[0] * v[0] + r[1] * v[1] + r[2] * v[2];
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
};

/** Entry by entry. */
export const matrixFrom = (of: (row: 0 | 1 | 2, column: 0 | 1 | 2) => number): Matrix3 => [
  [of(0, 0), of(0, 1), of(0, 2)],
  [of(1, 0), of(1, 1), of(1, 2)],
  [of(2, 0), of(2, 1), of(2, 2)],
];

/**
 * Inverse of a symmetric positive definite matrix by Gauss-Jordan elimination on the diagonal.
 * @throws InputError when the matrix is not positive definite, as no stable material gives
 */
export function invertDefinite(matrix: readonly (readonly number[])[]): number[][] {
  const a = matrix.map((row) => [...row]);
  const scale = a.map((row, i) => row[i]!);
  for (let k = 0; k < a.length; k++) {
    const pivot = a[k]![k]!;
    // Small against where it started: the digits are gone, or it never was a stiffness.
    if (!(pivot > scale[k]! * 1e-14)) {
      throw new InputError({
        parameter: 'plies',
        quantity: 'stiffness of the stack',
        value: pivot,
        rule: 'must resist every deformation',
      });
    }
    a[k]![k] = 1;
    a[k] = a[k]!.map((entry) => entry / pivot);
    a.forEach((row, i) => {
      if (i === k) return;
      const factor = row[k]!;
      row[k] = 0;
      a[i] = row.map((entry, j) => entry - factor * a[k]![j]!);
    });
  }
  return a;
}
