import { take, type Space } from './modes-space.ts';

/** Symmetric matrix of which only the band below the diagonal is kept, row by row. */
export interface Banded {
  size: number;
  /** Entries beside the diagonal. */
  half: number;
  /** Entry (i, i − d) stands at i (half + 1) + d. */
  entries: Float64Array;
}

export const banded = (size: number, half: number, memory: Space): Banded => ({
  size,
  half,
  entries: take(memory, size * (half + 1)),
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

/** The matrix times the part of `x` that starts at `from`, into the same part of `y`. */
export function timesVector({ size, half, entries }: Banded, x: Float64Array, y: Float64Array, from = 0): Float64Array {
  for (let i = 0, row = 0, at = from; i < size; i++, row += half + 1, at++) {
    const xi = x[at]!;
    const near = half < i ? half : i;
    let sum = entries[row]! * xi;
    for (let d = 1; d <= near; d++) {
      const entry = entries[row + d]!;
      sum += entry * x[at - d]!;
      y[at - d]! += entry * xi;
    }
    y[at] = sum;
  }
  return y;
}

export interface Factor extends Banded {
  /** How many eigenvalues of the matrix lie below zero, by Sylvester's law of inertia. */
  negative: number;
}

/** L D Lᵀ of the matrix, or of it less a share of another, within the same band: L D below the diagonal, D⁻¹ on it. */
export function factor({ size, half, entries }: Banded, memory: Space, less?: { share: number; of: Banded }): Factor {
  const a = take(memory, entries.length);
  if (less) for (let i = 0; i < entries.length; i++) a[i] = entries[i]! - less.share * less.of.entries[i]!;
  else a.set(entries);
  let negative = 0;
  for (let k = 0, at = 0; k < size; k++, at += half + 1) {
    // The shift may hit an eigenvalue of a part: next to nothing stands for nothing, as in every count by signs.
    if (a[at] === 0) a[at] = Number.EPSILON * entries[at]!;
    if (a[at]! < 0) negative++;
    const inverse = 1 / a[at]!;
    a[at] = inverse;
    const last = k + half < size ? k + half : size - 1;
    // Entry (i, k) stands half + 2 places after entry (i − 1, k).
    for (let i = k + 1, ik = at + half + 2; i <= last; i++, ik += half + 2) {
      if (a[ik] === 0) continue;
      const part = a[ik]! * inverse;
      for (let j = k + 1, jk = at + half + 2, ij = ik - 1; j <= i; j++, jk += half + 2, ij--) a[ij]! -= part * a[jk]!;
    }
  }
  return { size, half, entries: a, negative };
}

/** Solves with a factor, in place, for the part of `x` that starts at `from`. */
export function solve({ size, half, entries }: Factor, x: Float64Array, from = 0): void {
  for (let i = 0, row = 0, at = from; i < size; i++, row += half + 1, at++) {
    const near = half < i ? half : i;
    let sum = x[at]!;
    for (let d = 1; d <= near; d++) sum -= entries[row + d]! * x[at - d]!;
    x[at] = sum * entries[row]!;
  }
  for (let i = size - 2, row = i * (half + 1), at = from + i; i >= 0; i--, row -= half + 1, at--) {
    const near = i + half < size ? half : size - 1 - i;
    let sum = 0;
    for (let d = 1, below = row + half + 2; d <= near; d++, below += half + 2) sum += entries[below]! * x[at + d]!;
    x[at]! -= sum * entries[row]!;
  }
}
