import { take, type Space } from './modes-space.ts';

/** Vectors in one row after the other, each with its product with the mass matrix; row k starts at k · size. */
export interface Directions {
  size: number;
  rows: number;
  x: Float64Array;
  mx: Float64Array;
}

export const directions = (size: number, rows: number, memory: Space): Directions => ({
  size,
  rows,
  x: take(memory, size * rows),
  mx: take(memory, size * rows),
});

/** The same with room for twice as many. */
export function roomier(old: Directions, memory: Space): Directions {
  const more = directions(old.size, 2 * old.rows, memory);
  more.x.set(old.x);
  more.mx.set(old.mx);
  return more;
}

/** Row i against row j times M. */
export function share({ size, x, mx }: Directions, i: number, j: number): number {
  let sum = 0;
  for (let k = 0, a = i * size, b = j * size; k < size; k++) sum += x[a + k]! * mx[b + k]!;
  return sum;
}

/** Adds a share of row j to row i. */
export function addRow({ size, x }: Directions, i: number, by: number, j: number): void {
  for (let k = 0, a = i * size, b = j * size; k < size; k++) x[a + k]! += by * x[b + k]!;
}

/** Scales a row and its product. */
export function scaleRow({ size, x, mx }: Directions, row: number, by: number): void {
  for (let k = row * size; k < (row + 1) * size; k++) {
    x[k]! *= by;
    mx[k]! *= by;
  }
}

/** Takes out of a row what it shares with those before it, two at a time; they have length 1. */
export function takeOut(all: Directions, row: number): void {
  const { size, x, mx } = all;
  const own = row * size;
  let other = 0;
  for (; other + 1 < row; other += 2) {
    const [a, b] = [other * size, (other + 1) * size];
    let [first, second] = [0, 0];
    for (let k = 0; k < size; k++) {
      const value = x[own + k]!;
      first += value * mx[a + k]!;
      second += value * mx[b + k]!;
    }
    for (let k = 0; k < size; k++) x[own + k]! -= first * x[a + k]! + second * x[b + k]!;
  }
  if (other < row) addRow(all, row, -share(all, row, other), other);
}
