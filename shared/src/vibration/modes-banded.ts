/** Symmetric matrix of which only the band below the diagonal is kept, row by row. */
export interface Banded {
  size: number;
  /** Entries beside the diagonal. */
  half: number;
  /** Entry (i, i − d) stands at i (half + 1) + d. */
  entries: Float64Array;
}

export const banded = (size: number, half: number): Banded => ({
  size,
  half,
  entries: new Float64Array(size * (half + 1)),
});

/** Adds to an entry and its mirror image. Call once a pair. */
export function addTo({ half, entries }: Banded, row: number, column: number, value: number): void {
  const [i, j] = row >= column ? [row, column] : [column, row];
  entries[i * (half + 1) + i - j]! += value;
}

/** Adds a small symmetric matrix whose rows belong to the given places, ascending; −1 is a place that is held. */
export function addBlock(to: Banded, places: readonly number[], block: readonly (readonly number[])[]): void {
  for (let i = 0; i < places.length; i++) {
    const row = block[i]!;
    const at = places[i]! * (to.half + 2);
    for (let j = 0; j <= i; j++) if (places[j]! >= 0) to.entries[at - places[j]!]! += row[j]!;
  }
}

/** The matrix times x, into `y` where one is given. */
export function timesVector(
  { size, half, entries }: Banded,
  x: Float64Array,
  y: Float64Array = new Float64Array(size),
): Float64Array {
  for (let i = 0, row = 0; i < size; i++, row += half + 1) {
    const xi = x[i]!;
    const near = half < i ? half : i;
    let sum = entries[row]! * xi;
    for (let d = 1; d <= near; d++) {
      const entry = entries[row + d]!;
      sum += entry * x[i - d]!;
      y[i - d]! += entry * xi;
    }
    y[i] = sum;
  }
  return y;
}

export interface Factor extends Banded {
  /** How many eigenvalues of the matrix lie below zero, by Sylvester's law of inertia. */
  negative: number;
}

/** L D Lᵀ within the same band, D⁻¹ on the diagonal: of the matrix, or of it less a share of another. */
export function factor(matrix: Banded, less?: { share: number; of: Banded }): Factor {
  const { size, half } = matrix;
  const a = matrix.entries.slice();
  if (less) for (let i = 0; i < a.length; i++) a[i]! -= less.share * less.of.entries[i]!;
  let negative = 0;
  for (let k = 0; k < size; k++) {
    const at = k * (half + 1);
    // The shift may hit an eigenvalue of a part: next to nothing stands for nothing, as in every count by signs.
    if (a[at] === 0) a[at] = Number.EPSILON * matrix.entries[at]!;
    if (a[at]! < 0) negative++;
    const inverse = 1 / a[at]!;
    a[at] = inverse;
    const last = Math.min(k + half, size - 1);
    // Entry (i, k) stands half places after entry (i − 1, k).
    for (let i = k + 1, ik = at + half + 2; i <= last; i++, ik += half + 2) {
      if (a[ik] === 0) continue;
      const share = a[ik]! * inverse;
      for (let j = k + 1, jk = at + half + 2, ij = ik - 1; j <= i; j++, jk += half + 2, ij--) a[ij]! -= share * a[jk]!;
    }
    for (let i = k + 1, ik = at + half + 2; i <= last; i++, ik += half + 2) a[ik]! *= inverse;
  }
  return { size, half, entries: a, negative };
}

/** Solves with a factor, in place. */
export function solve({ size, half, entries }: Factor, x: Float64Array): Float64Array {
  for (let i = 1, row = half + 1; i < size; i++, row += half + 1) {
    const near = half < i ? half : i;
    let sum = x[i]!;
    for (let d = 1; d <= near; d++) sum -= entries[row + d]! * x[i - d]!;
    x[i] = sum;
  }
  for (let i = 0, row = 0; i < size; i++, row += half + 1) x[i]! *= entries[row]!;
  for (let i = size - 1, row = i * (half + 1); i > 0; i--, row -= half + 1) {
    const value = x[i]!;
    const near = half < i ? half : i;
    for (let d = 1; d <= near; d++) x[i - d]! -= entries[row + d]! * value;
  }
  return x;
}
