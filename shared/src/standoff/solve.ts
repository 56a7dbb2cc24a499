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
  )?.map((entry, i) => entry * scale[i]!);
}

/**
 * Gaussian elimination with row exchange.
 * @param matrix - square, entries of the order of one
 * @param right - right side
 * @returns solution, or undefined where the matrix is singular
 * @derivation textbook elimination with partial pivoting
 */
export function eliminate(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    if (!(Math.abs(rows[pivot]![k]!) > SINGULAR)) return undefined;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    for (let i = k + 1; i < n; i++) {
      const factor = rows[i]![k]! / rows[k]![k]!;
      for (let j = k; j <= n; j++) rows[i]![j]! -= factor * rows[k]![j]!;
    }
  }
  const solution = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const known = solution.reduce((sum, value, j) => (j > i ? sum + rows[i]![j]! * value : sum), 0);
    solution[i] = (rows[i]![n]! - known) / rows[i]![i]!;
  }
  return solution;
}
