import { requireBetween, requirePositive } from '../require.ts';
import { requireLength, requireStrength } from '../require-physical.ts';
import type { BendingPlane } from '../section/index.ts';
import { requireArm, type RootedArm } from './root-moment.ts';

export interface RequiredLengthGiven extends RootedArm {
  /** The bare arm, without doubler and without hole. */
  bare: BendingPlane;
  /** Stress that the bare arm may see [Pa]. */
  allowable: number;
  /** Stress just past the end of the doubler over the plain bending stress there. */
  endStep: number;
  /** From the inner screw to the inner end of the arm [m]. */
  edgeDistance: number;
  /** From the middle of the outer hole to where it no longer weakens the arm [m]. */
  holeReach: number;
  /** Length in which the doubler takes up its share [m]. */
  leadIn: number;
}

export interface RequiredLength {
  /** Station beyond which the bare arm is enough; 0 where it is enough from the outer screw on [m]. */
  bareEnough: number;
  /** How far the doubler must run past the outer screw [m]. */
  pastScrew: number;
  /** Whole doubler, from the inner end of the arm [m]. */
  length: number;
  /** Which of the two demands sets it. */
  governs: 'bare arm' | 'lead-in';
}

/**
 * Length that a doubler in the root of an arm needs.
 * $$x_1 = L - \frac{\sigma_{all}I}{K_{step}\,c\,F},\qquad \ell = e + s + \max\left(x_1,\; r_h + x_{95}\right)$$
 * @param given - arm, bare section, allowable stress, end step, edge distance, reach of the hole and lead-in
 * @returns station where the bare arm is enough, run past the screw, and whole length [m]
 * @validity one force at the motor; the doubler itself is thick enough at the outer hole
 * @throws InputError for values that are not physical
 * @derivation The moment falls straight from the outer screw to the motor. Set K c M(x)/I to the allowable and solve for
 * x. The doubler must also have taken up its share where the outer hole weakens the arm.
 */
export function requiredLength(given: RequiredLengthGiven): RequiredLength {
  requireArm(given);
  const { bare, allowable, endStep, edgeDistance, holeReach, leadIn, tipForce, armLength, screwSpacing } = given;
  requirePositive(bare.secondMomentOfArea, {
    parameter: 'bare',
    quantity: 'second moment of area',
    kind: 'secondMomentOfArea',
  });
  requireLength(bare.extremeFibre, { parameter: 'bare', quantity: 'distance of the extreme fibre' });
  requireStrength(allowable, { parameter: 'tubeStrength', quantity: 'allowable stress' });
  requireBetween(endStep, 1, 10, { parameter: 'endStep', quantity: 'end-step factor', kind: 'ratio' });
  requireLength(edgeDistance, { parameter: 'edgeDistance', quantity: 'edge distance' });
  requireBetween(holeReach, 0, 100, { parameter: 'holeReach', quantity: 'reach of the hole', kind: 'length' });
  requireBetween(leadIn, 0, 1e11, { parameter: 'leadIn', quantity: 'lead-in length', kind: 'length' });
  const bearable = (allowable * bare.secondMomentOfArea) / (endStep * bare.extremeFibre);
  const bareEnough = tipForce * armLength <= bearable ? 0 : armLength - bearable / tipForce;
  const ledIn = holeReach + leadIn;
  const pastScrew = Math.max(bareEnough, ledIn);
  return {
    bareEnough,
    pastScrew,
    length: edgeDistance + screwSpacing + pastScrew,
    governs: bareEnough > ledIn ? 'bare arm' : 'lead-in',
  };
}
