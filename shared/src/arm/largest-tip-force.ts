import { requirePositive } from '../require.ts';
import type { BendingPlane } from '../section/index.ts';

export interface LoadedSection {
  /** Second moment [m⁴] and extreme fibre [m] in the plane of the force. */
  plane: BendingPlane;
  /** From the section to the force [m]. */
  lever: number;
  /** Bending strength along the arm [Pa]. */
  strength: number;
}

/**
 * Force across the tip at which a section of the arm reaches its bending strength.
 * $$F = \frac{\sigma\,I}{c\,l}$$
 * @param section - plane of bending, lever, strength
 * @returns force [N]
 * @validity linear up to failure, no peak at a hole's edge, no local buckling
 * @throws InputError when a number is not positive
 * @source gere-2004-mechanics, § 5.5, flexure formula
 */
export function largestTipForce({ plane, lever, strength }: LoadedSection): number {
  requirePositive(plane.secondMomentOfArea, {
    parameter: 'secondMomentOfArea',
    quantity: 'second moment of area',
    kind: 'secondMomentOfArea',
  });
  requirePositive(plane.extremeFibre, { parameter: 'extremeFibre', quantity: 'extreme fibre', kind: 'length' });
  requirePositive(lever, { parameter: 'lever', quantity: 'lever of the force', kind: 'length' });
  requirePositive(strength, { parameter: 'strength', quantity: 'bending strength', kind: 'stress' });
  return (strength * plane.secondMomentOfArea) / (plane.extremeFibre * lever);
}
