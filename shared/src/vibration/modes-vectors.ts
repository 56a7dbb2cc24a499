/** A vector with its product with the mass matrix. */
export interface Direction {
  x: Float64Array;
  mx: Float64Array;
}

export function dot(x: Float64Array, y: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < x.length; i++) sum += x[i]! * y[i]!;
  return sum;
}

/** x + by · y, into x. */
export function add(x: Float64Array, by: number, y: Float64Array): void {
  for (let i = 0; i < x.length; i++) x[i]! += by * y[i]!;
}

/** by · x */
export function scaled(x: Float64Array, by: number): Float64Array {
  const y = new Float64Array(x.length);
  for (let i = 0; i < y.length; i++) y[i] = by * x[i]!;
  return y;
}

/** Takes out of x what it shares with directions of length 1, two at a time. */
export function takeOut(x: Float64Array, directions: readonly Direction[]): void {
  const n = x.length;
  for (let k = 0; k + 1 < directions.length; k += 2) {
    const { x: x1, mx: m1 } = directions[k]!;
    const { x: x2, mx: m2 } = directions[k + 1]!;
    let [share1, share2] = [0, 0];
    for (let i = 0; i < n; i++) {
      const value = x[i]!;
      share1 += value * m1[i]!;
      share2 += value * m2[i]!;
    }
    for (let i = 0; i < n; i++) x[i]! -= share1 * x1[i]! + share2 * x2[i]!;
  }
  if (directions.length % 2 === 0) return;
  const odd = directions[directions.length - 1]!;
  add(x, -dot(x, odd.mx), odd.x);
}
