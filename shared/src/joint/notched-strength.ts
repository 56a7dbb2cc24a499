import { requireBetween, requirePositive } from '../require.ts';

export interface Notch {
  /** Of the hole [m]. */
  holeDiameter: number;
  /** Distance over which the laminate can even out the peak: d0 for a point, a0 for a mean [m]. */
  characteristicLength: number;
  /** Elastic factor of the hole, 3 for an isotropic sheet [-]. */
  holeFactor?: number;
}

/** Usual values where a laminate has not been tested: d0 of 1.0 mm, a0 of 3.8 mm. */
export const CHARACTERISTIC_LENGTHS = { point: 1.016e-3, mean: 3.81e-3 } as const;

function reach({ holeDiameter, characteristicLength, holeFactor = 3 }: Notch): { xi: number; extra: number } {
  requirePositive(holeDiameter, { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' });
  requirePositive(characteristicLength, {
    parameter: 'characteristicLength',
    quantity: 'characteristic length',
    kind: 'length',
  });
  requireBetween(holeFactor, 1, 10, { parameter: 'holeFactor', quantity: 'hole factor', kind: 'ratio' });
  const radius = holeDiameter / 2;
  return { xi: radius / (radius + characteristicLength), extra: holeFactor - 3 };
}

/**
 * Strength of a laminate with a hole over that without: it breaks when the stress a set distance from the hole reaches
 * the strength.
 * $$\frac{\sigma_N}{\sigma_0} = \frac{2}{2+\xi^2+3\xi^4-(K-3)(5\xi^6-7\xi^8)},\quad \xi = \frac{R}{R+d_0}$$
 * @param notch - hole diameter, characteristic length d0, elastic factor
 * @returns strength ratio [-]
 * @validity wide sheet; d0 belongs to one laminate and one factor, so a carried-over d0 is an estimate
 * @throws InputError when a number is out of range
 * @source whitney-1974-stress, point stress criterion; konish-1975-approximate for K other than 3
 */
export function notchedStrengthRatio(notch: Notch): number {
  const { xi, extra } = reach(notch);
  return Math.min(1, 2 / (2 + xi ** 2 + 3 * xi ** 4 - extra * (5 * xi ** 6 - 7 * xi ** 8)));
}

/**
 * The same by the mean stress over a set distance from the hole.
 * $$\frac{\sigma_N}{\sigma_0} = \frac{2(1-\xi)}{2-\xi^2-\xi^4+(K-3)(\xi^6-\xi^8)},\quad \xi = \frac{R}{R+a_0}$$
 * @param notch - hole diameter, characteristic length a0, elastic factor
 * @returns strength ratio [-]
 * @validity as notchedStrengthRatio
 * @throws InputError when a number is out of range
 * @source whitney-1974-stress, average stress criterion; konish-1975-approximate for K other than 3
 */
export function meanStressRatio(notch: Notch): number {
  const { xi, extra } = reach(notch);
  // Both bracket and 1 - ξ vanish for a huge hole: divide the factor out by hand.
  const bracket = (2 + xi ** 2) * (1 + xi) + extra * xi ** 6 * (1 + xi);
  return Math.min(1, 2 / bracket);
}
