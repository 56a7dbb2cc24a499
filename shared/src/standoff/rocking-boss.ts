import { InputError } from '../error.ts';
import { requireBelow, requirePositive } from '../require.ts';
import { eliminate } from '../solve-linear.ts';

export interface RockingBoss {
  /** Of the standoff's face or washer [m]. */
  bossRadius: number;
  /** Of the plate round it that is free to bend: to the next support or edge [m]. */
  plateRadius: number;
  /** How the plate is held at that radius. */
  edge: 'supported' | 'fixed';
}

const POISSON_RATIO = 0.3;

/**
 * Refuses a boss that does not sit in its plate.
 * @throws InputError when a radius is not positive, the two do not fit, or the edge is unknown
 */
export function requireBoss({ bossRadius, plateRadius, edge }: RockingBoss): void {
  requirePositive(plateRadius, { parameter: 'plateRadius', quantity: 'free radius of the plate', kind: 'length' });
  requirePositive(bossRadius, { parameter: 'bossRadius', quantity: 'radius of the standoff’s face', kind: 'length' });
  const subject = { parameter: 'plateRadius', quantity: 'free radius of the plate', kind: 'length' } as const;
  requireBelow(plateRadius, 20 * bossRadius, 'must be smaller than twenty times the radius of the face', subject);
  if (bossRadius / plateRadius > 0.95) {
    throw new InputError({
      ...subject,
      value: plateRadius,
      rule: 'must be larger than the face of the standoff',
      limit: bossRadius / 0.95,
    });
  }
  if (edge !== 'supported' && edge !== 'fixed') {
    throw new InputError({
      parameter: 'edge',
      quantity: 'edge of the plate',
      value: edge,
      rule: 'must be supported or fixed',
    });
  }
}

/**
 * Rigid boss that rocks in a round plate: what a standoff's foot finds in a thin carbon plate.
 * $$\sigma = \beta\frac{M}{a t^2},\quad \theta = \alpha\frac{M}{E t^3}$$
 * @param boss - radii and edge
 * @returns α and β [-]
 * @validity thin isotropic plate, ν = 0.3, boss over plate radius between 0.05 and 0.95
 * @throws InputError when the boss does not fit in the plate
 * @source young-2002-roark, Table 11.2, cases 20 and 21
 * @derivation w = (c₁r + c₂r³ + c₃/r + c₄ r ln r) cos θ with w = θr and w' = θ at the boss, w = 0 and M_r = 0 or w' = 0
 * at the edge; M = 4πD|c₄|, D = Et³/12(1-ν²); stress from M_r at the boss
 */
export function rockingBoss(boss: RockingBoss): { alpha: number; beta: number } {
  requireBoss(boss);
  const ratio = boss.bossRadius / boss.plateRadius;
  const nu = POISSON_RATIO;
  // Radii in units of the plate's; rows: w and w' at the boss, w and the edge condition at one.
  const radialMoment = (r: number): number[] => [0, (6 + 2 * nu) * r, (2 - 2 * nu) / r ** 3, (1 + nu) / r];
  const slope = (r: number): number[] => [1, 3 * r ** 2, -1 / r ** 2, Math.log(r) + 1];
  const rows = [
    [ratio, ratio ** 3, 1 / ratio, ratio * Math.log(ratio)],
    slope(ratio),
    [1, 1, 1, 0],
    boss.edge === 'fixed' ? slope(1) : radialMoment(1),
  ];
  const c = eliminate(rows, [ratio, 1, 0, 0])!;
  // Unit rocking angle: moment 4πD|c₄|/a... with D in units of Et³/12(1-ν²).
  const rigidity = 1 / (12 * (1 - nu ** 2));
  const moment = 4 * Math.PI * rigidity * Math.abs(c[3]!);
  const curvatureMoment = Math.abs(radialMoment(ratio).reduce((sum, m, i) => sum + m * c[i]!, 0)) * rigidity;
  return { alpha: 1 / moment, beta: (6 * curvatureMoment) / moment };
}
