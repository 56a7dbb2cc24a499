import { eliminate } from '../solve-linear.ts';

/** Pivot, of a matrix scaled to ones on its diagonal, below which nothing holds the movement. */
const SINGULAR = 1e-10;

/**
 * Solves a symmetric positive system by Gaussian elimination with row exchange, scaled to ones on the diagonal first,
 * since forces and moments differ by orders of magnitude.
 * $$K u = f$$
 * @param matrix - square, symmetric
 * @param right - right side
 * @returns solution, or undefined where some movement meets no stiffness
 * @derivation textbook elimination; scaling S K S (S⁻¹u) = S f with S_i = 1/√K_ii
 */
export function solveSymmetric(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  if (!matrix.every((row, i) => row[i]! > 0)) return undefined;
  const scale = matrix.map((row, i) => 1 / Math.sqrt(row[i]!));
  const scaled = matrix.map((row, i) => row.map((entry, j) => entry * scale[i]! * scale[j]!));
  return eliminate(
    scaled,
    right.map((entry, i) => entry * scale[i]!),
    SINGULAR,
  )?.map((entry, i) => entry * scale[i]!);
}
