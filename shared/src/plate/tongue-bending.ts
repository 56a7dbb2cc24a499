/** Bending of a cantilever of one rigidity but for a softer stretch: loads in, slope and movement at its end out. */
export interface PointLoad {
  /** From the root [m]. */
  at: number;
  /** Across the tongue [N]. */
  force: number;
}

export interface SoftStretch {
  from: number;
  to: number;
  /** Rigidity outside over rigidity here, 1 or more [-]. */
  softer: number;
}

/** Bending moment at a distance from the root [N·m]. */
export const momentAt = (loads: readonly PointLoad[], x: number): number =>
  loads.reduce((sum, { at, force }) => sum + force * Math.max(0, at - x), 0);

/**
 * Integral of the moment up to a place, in units of the rigidity outside the stretch: slope there, and with the lever
 * the movement there. Exact: between the breaks the moment is a straight line.
 */
export function bendTongue(
  loads: readonly PointLoad[],
  place: number,
  soft?: SoftStretch,
): { slope: number; movement: number } {
  const breaks = [0, place, ...loads.map(({ at }) => at), ...(soft ? [soft.from, soft.to] : [])]
    .filter((x) => x >= 0 && x <= place)
    .sort((a, b) => a - b);
  let [slope, movement] = [0, 0];
  for (let i = 1; i < breaks.length; i++) {
    const [from, to] = [breaks[i - 1]!, breaks[i]!];
    const middle = (from + to) / 2;
    const factor = soft && middle > soft.from && middle < soft.to ? soft.softer : 1;
    const curve = (x: number) => factor * momentAt(loads, x);
    const step = (to - from) / 6;
    // Simpson's rule is exact here: the product with the lever is a parabola.
    slope += step * (curve(from) + 4 * curve(middle) + curve(to));
    movement += step * (curve(from) * (place - from) + 4 * curve(middle) * (place - middle) + curve(to) * (place - to));
  }
  return { slope, movement };
}
