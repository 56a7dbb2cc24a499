import { requireNotNegative, requirePositive } from '../require.ts';

export interface TwoScrewRoot {
  /** Force at the motor axis, across the arm [N]. */
  tipForce: number;
  /** From the outer screw to the motor axis L [m]. */
  armLength: number;
  /** Between the two screws s [m]. */
  screwSpacing: number;
}

export interface RootReactions {
  /** At the outer screw, against the tip force [N]. */
  outer: number;
  /** At the inner screw, the same way as the tip force [N]. */
  inner: number;
  /** Bending moment of the arm at the outer screw, the largest there is [N·m]. */
  moment: number;
}

/**
 * What the two screws of an arm root carry when the tip is pushed across the arm. The outer screw is the pivot, the
 * inner one holds the end down; the outer always carries the more, by the tip force itself.
 * $$F_{inner} = \frac{F L}{s},\quad F_{outer} = \frac{F (L+s)}{s}$$
 * @param root - tip force, arm length, screw spacing
 * @returns both reactions and the moment at the outer screw
 * @validity rigid arm root, no friction between the plates, no load shared by the plate edge
 * @throws InputError when a length is not positive or the force is negative
 * @derivation moments about the outer screw: F L = F_inner s; forces: F_outer = F + F_inner
 */
export function twoScrewRoot({ tipForce, armLength, screwSpacing }: TwoScrewRoot): RootReactions {
  requireNotNegative(tipForce, { parameter: 'tipForce', quantity: 'force at the motor', kind: 'force' });
  requirePositive(armLength, { parameter: 'armLength', quantity: 'arm length', kind: 'length' });
  requirePositive(screwSpacing, { parameter: 'screwSpacing', quantity: 'screw spacing', kind: 'length' });
  const moment = tipForce * armLength;
  const inner = moment / screwSpacing;
  return { inner, outer: inner + tipForce, moment };
}
