/**
 * Fourier series of a rectangular plate in units of its short side a = 1, D = 1 and its load. x runs across the long
 * edges, y along them; both from the middle. `ratio` is b/a.
 */
export type PlateLoad = 'uniform' | 'centre';

/** Odd terms of each series: deflection to six digits, edge moment of a centre load to three. */
const TERMS = 14;

export const ODD = Array.from({ length: TERMS }, (_, i) => 2 * i + 1);

/** sin(mπ/2) of an odd m. */
export const sign = (m: number): number => (m % 4 === 1 ? 1 : -1);

export interface PlateSeries {
  /** At the middle, over qa⁴/D or Pa²/D. */
  deflection: number;
  /** At the middle, across the long edges and along them, over qa²; the part of a centre load that the size of its spot
   * leaves alone, over P. */
  across: number;
  along: number;
}

const FIFTH = Math.PI ** 5;

/** Plate on four supports under a uniform load: Lévy's solution. */
export function uniformOnSupports(ratio: number, nu: number): PlateSeries {
  let [deflection, curveX, curveY] = [0, 0, 0];
  for (const m of ODD) {
    const alpha = (m * Math.PI * ratio) / 2;
    const cosh = Math.cosh(alpha);
    const own = 4 / (FIFTH * m ** 5);
    const a = (-2 * (alpha * Math.tanh(alpha) + 2)) / (FIFTH * m ** 5 * cosh);
    const b = 2 / (FIFTH * m ** 5 * cosh);
    const k2 = (m * Math.PI) ** 2;
    deflection += sign(m) * (own + a);
    curveX -= sign(m) * k2 * (own + a);
    curveY += sign(m) * k2 * (a + 2 * b);
  }
  return { deflection, across: -(curveX + nu * curveY), along: -(curveY + nu * curveX) };
}

/**
 * The same under a force in the middle. Its moment has no limit at a point: `across` and `along` are β/4π in
 * M = P/4π [(1+ν) ln(2a/πr) + β] of a spot of radius r.
 */
export function centreOnSupports(ratio: number, nu: number): PlateSeries {
  let [deflection, mean, difference] = [0, 0, 0];
  for (const m of ODD) {
    const alpha = (m * Math.PI * ratio) / 2;
    const [tanh, cosh] = [Math.tanh(alpha), Math.cosh(alpha)];
    deflection += (tanh - alpha / cosh ** 2) / m ** 3;
    mean += (1 - tanh) / m;
    difference += alpha / cosh ** 2 / m;
  }
  // A strip without end has (1+ν)/2 + (1-ν)/2 across and (1+ν)/2 - (1-ν)/2 along; its ends take away from both.
  const half = { sum: (1 + nu) / 2 - 2 * (1 + nu) * mean, spread: (1 - nu) / 2 - 2 * (1 - nu) * difference };
  return {
    deflection: (deflection + TAIL) / (2 * Math.PI ** 3),
    across: (half.sum + half.spread) / (4 * Math.PI),
    along: (half.sum - half.spread) / (4 * Math.PI),
  };
}

/** What the terms of Σ1/m³ past the last one add; their tanh is one. */
const TAIL = (7 / 8) * 1.2020569031595942 - ODD.reduce((sum, m) => sum + 1 / m ** 3, 0);

/**
 * Slope at the edge y = b/2 of the supported plate: amplitude of cos(mπx/a), times sin(mπ/2), in the same units.
 * `short` and `long` are the sides along which the wave runs and across which it decays.
 */
export function edgeSlope(load: PlateLoad, m: number, short: number, long: number): number {
  const alpha = (m * Math.PI * long) / (2 * short);
  const tanh = Math.tanh(alpha);
  return load === 'uniform'
    ? ((2 * short ** 3) / (Math.PI * m) ** 4) * (alpha - tanh * (1 + alpha * tanh))
    : (-sign(m) * short * alpha * tanh) / (2 * Math.PI ** 2 * m ** 2 * Math.cosh(alpha));
}
