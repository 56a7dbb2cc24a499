/**
 * Memory that serves one arm after the other: to ask for it and to clear it away takes longer than the sums done in it.
 * What is taken from it holds until the next `clear`.
 */
export interface Space {
  whole: Float64Array;
  used: number;
}

export const space = (length = 4096): Space => ({ whole: new Float64Array(length), used: 0 });

export function clear(from: Space): void {
  from.used = 0;
}

/** A vector of zeros. Vectors taken before stay as they are, also when the memory must grow. */
export function take(from: Space, length: number): Float64Array {
  if (from.used + length > from.whole.length) {
    from.whole = new Float64Array(2 * (from.whole.length + length));
    from.used = 0;
  }
  const vector = from.whole.subarray(from.used, (from.used += length));
  vector.fill(0);
  return vector;
}
