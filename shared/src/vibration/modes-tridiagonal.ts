const MOST_ROUNDS = 50;

/**
 * Eigenvalues and vectors by the implicit QL method: a shift near an end value, then plane rotations that chase the bulge
 * from the bottom to the top.
 * @source golub-2013-matrix, § 8.3.5
 */
export function settle(
  diagonal: readonly number[],
  beside: readonly number[],
): {
  /** In no order. */
  values: number[];
  /** Component k of vector i stands at k · size + i. */
  vectors: number[];
} {
  const size = diagonal.length;
  const [d, e] = [[...diagonal], [...beside]];
  const z: number[] = [];
  for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) z.push(i === j ? 1.0 : 0.0);
  for (let top = 0; top < size; top++) {
    for (let round = 0; round < MOST_ROUNDS; round++) {
      let end = top;
      while (end < size - 1 && Math.abs(e[end]!) > Number.EPSILON * (Math.abs(d[end]!) + Math.abs(d[end + 1]!))) end++;
      if (end === top) break;
      chase({ d, e, z, top, end });
    }
  }
  return { values: d, vectors: z };
}

interface Work {
  d: number[];
  e: number[];
  z: number[];
  top: number;
  end: number;
}

function chase({ d, e, z, top, end }: Work): void {
  const size = d.length;
  // Wilkinson's shift: the eigenvalue of the first two rows that is nearer to the first.
  const half = (d[top + 1]! - d[top]!) / (2 * e[top]!);
  const shift = d[top]! - e[top]! / (half + (half < 0 ? -1 : 1) * Math.sqrt(half * half + 1));
  let [c, s, along, carried] = [1, 1, d[end]! - shift, 0];
  for (let i = end - 1; i >= top; i--) {
    const [bulge, own] = [s * e[i]!, c * e[i]!];
    const length = Math.sqrt(bulge * bulge + along * along);
    e[i + 1] = length;
    if (length === 0) {
      d[i + 1]! -= carried;
      e[end] = 0;
      return;
    }
    s = bulge / length;
    c = along / length;
    const rest = d[i + 1]! - carried;
    const step = (d[i]! - rest) * s + 2 * c * own;
    carried = s * step;
    d[i + 1] = rest + carried;
    along = c * step - own;
    for (let k = i; k < z.length; k += size) {
      const [left, right] = [z[k]!, z[k + 1]!];
      z[k + 1] = s * left + c * right;
      z[k] = c * left - s * right;
    }
  }
  d[top]! -= carried;
  e[top] = along;
  e[end] = 0;
}
