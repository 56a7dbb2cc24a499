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
 * The same in fewer steps for a smooth `f` that costs much: Ridders' rule, which keeps the root between its two points
 * and takes an exponential out of `f` before it draws the straight line. To a part in 10¹².
 */
export function ridders(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let [atLow, atHigh] = [f(low), f(high)];
  for (let i = 0; i < 60 && atLow !== 0 && atHigh !== 0; i++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return middle;
    const atMiddle = f(middle);
    const root = Math.sqrt(atMiddle ** 2 - atLow * atHigh);
    if (root === 0) return middle;
    const next = middle + ((middle - low) * Math.sign(atLow - atHigh) * atMiddle) / root;
    const atNext = f(next);
    // Of the three pieces, the one whose ends differ in sign.
    const points = [[low, atLow], [middle, atMiddle], [next, atNext], [high, atHigh]] as [number, number][]; // prettier-ignore
    points.sort((a, b) => a[0] - b[0]);
    const piece = points.findIndex(([, y], k) => k > 0 && Math.sign(y) !== Math.sign(points[k - 1]![1]));
    if (piece < 0) return next;
    [[low, atLow], [high, atHigh]] = [points[piece - 1]!, points[piece]!];
    if (high - low <= 1e-12 * Math.abs(high)) break;
  }
  return Math.abs(atLow) < Math.abs(atHigh) ? low : high;
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
