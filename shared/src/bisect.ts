/** Root of `f` between two points at which its signs differ, to the last digits. */
export function bisect(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const sign = Math.sign(f(low));
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (Math.sign(f(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The n-th sign change of `f` above `from`, walked and then bisected: growing steps of a fifth while roots may crowd near
 * zero, even ones after.
 */
export function nthRoot(f: (x: number) => number, n: number, { from, step }: { from: number; step: number }): number {
  let [x, value, found] = [from, f(from), 0];
  // Each of our equations has a root in every stretch of π or so: the walk always ends.
  for (;;) {
    const to = x + Math.min(step, 0.2 * x);
    const next = f(to);
    if (Math.sign(next) !== Math.sign(value) && ++found === n) return bisect(f, x, to);
    [x, value] = [to, next];
  }
}
