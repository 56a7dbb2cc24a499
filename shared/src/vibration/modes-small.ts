/** Eigenvalues, ascending, and vectors of a small symmetric matrix, by Jacobi's rotations. */
export function symmetricEigen(matrix: readonly (readonly number[])[]): { values: number[]; vectors: number[][] } {
  const n = matrix.length;
  const a = matrix.map((row) => [...row]);
  const v = a.map((_, i) => a.map((__, j) => (i === j ? 1 : 0)));
  for (let round = 0; round < 20; round++) {
    let off = 0;
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        const apq = a[p]![q]!;
        if (Math.abs(apq) <= 1e-15 * Math.sqrt(Math.abs(a[p]![p]! * a[q]![q]!))) continue;
        off++;
        const theta = (a[q]![q]! - a[p]![p]!) / (2 * apq);
        const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(theta, 1));
        const c = 1 / Math.hypot(t, 1);
        rotate({ a, v, p, q, c, s: t * c });
      }
    }
    if (off === 0) break;
  }
  const order = a.map((_, i) => i).sort((i, j) => a[i]![i]! - a[j]![j]!);
  return { values: order.map((i) => a[i]![i]!), vectors: order.map((i) => v.map((row) => row[i]!)) };
}

function rotate({
  a,
  v,
  p,
  q,
  c,
  s,
}: {
  a: number[][];
  v: number[][];
  p: number;
  q: number;
  c: number;
  s: number;
}): void {
  const turn = (row: number[]): void => {
    const [x, y] = [row[p]!, row[q]!];
    row[p] = c * x - s * y;
    row[q] = s * x + c * y;
  };
  a.forEach(turn);
  v.forEach(turn);
  const [rowP, rowQ] = [a[p]!, a[q]!];
  a[p] = rowP.map((x, j) => c * x - s * rowQ[j]!);
  a[q] = rowP.map((x, j) => s * x + c * rowQ[j]!);
}
