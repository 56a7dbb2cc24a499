import { requireBetween, requireNotNegative, requirePositive } from '../require.ts';
import type { PropertyClass } from './property-class.ts';
import { stressArea, type Thread } from './thread.ts';

export interface ScrewStrength {
  /** Tension at which the thread breaks [N]. */
  tension: number;
  /** Tension that leaves no lasting stretch [N]. */
  proof: number;
  /** Shear through the thread, one plane [N]. */
  shear: number;
}

/**
 * Strength of one screw, nothing taken off for safety.
 * $$F_t = R_m A_s,\quad F_p = S_p A_s,\quad F_v = \alpha_v R_m A_s$$
 * @param thread - nominal diameter and pitch [m]
 * @param strength - property class
 * @returns forces [N]
 * @validity threads in the shear plane, head and nut no weaker than the thread
 * @throws InputError when a number is out of range
 * @source iso-2013-898, minimum ultimate and proof loads; en-2005-1993-1-8, Table 3.4 for shear
 */
export function screwStrength(thread: Thread, strength: PropertyClass): ScrewStrength {
  const area = stressArea(thread);
  requirePositive(strength.tensileStrength, {
    parameter: 'tensileStrength',
    quantity: 'tensile strength',
    kind: 'stress',
  });
  requirePositive(strength.proofStress, { parameter: 'proofStress', quantity: 'proof stress', kind: 'stress' });
  requireBetween(strength.shearRatio, 0.1, 1, { parameter: 'shearRatio', quantity: 'shear ratio', kind: 'ratio' });
  return {
    tension: strength.tensileStrength * area,
    proof: strength.proofStress * area,
    shear: strength.shearRatio * strength.tensileStrength * area,
  };
}

export interface ScrewLoad {
  /** Across the screw, over all shear planes together [N]. */
  shear: number;
  /** Along the screw, from outside; preload is not part of it [N]. */
  tension: number;
  /** Number of planes that the shear is shared by: 2 where the arm lies between two plates [-]. */
  shearPlanes: number;
}

/**
 * Share of a screw's strength that shear and tension use together.
 * $$u = \frac{F_v}{n F_{v,max}} + \frac{F_t}{1.4\,F_{t,max}},\quad\text{and not less than } \frac{F_t}{F_{t,max}}$$
 * @param load - shear, tension, shear planes
 * @param strength - of one screw [N]
 * @returns use [-]; the screw breaks at 1
 * @validity short screws without bending; the code's safety factors are left out
 * @throws InputError when a load is negative
 * @source en-2005-1993-1-8, Table 3.4, combined shear and tension
 */
export function screwUse({ shear, tension, shearPlanes }: ScrewLoad, strength: ScrewStrength): number {
  requireNotNegative(shear, { parameter: 'shear', quantity: 'shear force', kind: 'force' });
  requireNotNegative(tension, { parameter: 'tension', quantity: 'tension', kind: 'force' });
  requireBetween(shearPlanes, 1, 4, { parameter: 'shearPlanes', quantity: 'number of shear planes', kind: 'count' });
  requirePositive(strength.shear, { parameter: 'strength', quantity: 'shear strength of the screw', kind: 'force' });
  requirePositive(strength.tension, {
    parameter: 'strength',
    quantity: 'tensile strength of the screw',
    kind: 'force',
  });
  const inTension = tension / strength.tension;
  return Math.max(shear / (shearPlanes * strength.shear) + inTension / 1.4, inTension);
}
