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

export function timesVector({ size, half, entries }: Banded, x: Float64Array): Float64Array {
  const y = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const row = i * (half + 1);
    let sum = entries[row]! * x[i]!;
    for (let d = 1; d <= half && d <= i; d++) {
      const entry = entries[row + d]!;
      sum += entry * x[i - d]!;
      y[i - d]! += entry * x[i]!;
    }
    y[i]! += sum;
  }
  return y;
}

/** Cholesky factor within the same band; the matrix is positive definite, as an arm that is held is. */
export function factor({ size, half, entries }: Banded): Banded {
  const l = banded(size, half);
  const width = half + 1;
  for (let i = 0; i < size; i++) {
    for (let d = Math.min(half, i); d >= 0; d--) {
      const j = i - d;
      let sum = entries[i * width + d]!;
      for (let k = Math.max(0, i - half); k < j; k++)
        sum -= l.entries[i * width + i - k]! * l.entries[j * width + j - k]!;
      l.entries[i * width + d] = d === 0 ? Math.sqrt(sum) : sum / l.entries[j * width]!;
    }
  }
  return l;
}

/** Solves with a factor. */
export function solve({ size, half, entries }: Banded, right: Float64Array): Float64Array {
  const x = Float64Array.from(right);
  const width = half + 1;
  for (let i = 0; i < size; i++) {
    let sum = x[i]!;
    for (let d = 1; d <= half && d <= i; d++) sum -= entries[i * width + d]! * x[i - d]!;
    x[i] = sum / entries[i * width]!;
  }
  for (let i = size - 1; i >= 0; i--) {
    const value = x[i]! / entries[i * width]!;
    x[i] = value;
    for (let d = 1; d <= half && d <= i; d++) x[i - d]! -= entries[i * width + d]! * value;
  }
  return x;
}
