import { InputError } from '../error.ts';
import { requireBelow, requirePositive } from '../require.ts';
import { requireStrength } from '../require-physical.ts';
import type { DrilledArm } from './drilled-arm.ts';

export interface HoleStation {
  drilled: DrilledArm;
  /** [m] */
  holeDiameter: number;
  /** From the outer root screw to the hole's centre [m]. */
  station: number;
  /** From the outer root screw to the motor axis [m]. */
  armLength: number;
  /** Bending strength along the arm, without a hole [Pa]. */
  bendingStrength: number;
  /** In-plane shear strength of wall or plate [Pa]. */
  shearStrength: number;
  /** Peak shear stress of the section for one newton across the arm [1/m²]. */
  shearPerForce: number;
}

export interface HoleInArm {
  /** Bending moment at the hole for one newton at the motor [m]. */
  lever: number;
  /** Force at the motor that breaks the arm at its root, without a hole [N]. */
  rootForce: number;
  /** At the hole's station, without the hole [N]. */
  wholeForce: number;
  /** At the hole, as a notched laminate [N]. */
  holeForce: number;
  /** At the hole, were the elastic peak to decide [N]. */
  elasticForce: number;
  /** The arm's, with the hole: the lower of hole and root [N]. */
  armForce: number;
  /** Station from which on the hole is no weaker in bending than the root [m]. */
  harmlessFrom: number;
  /** Whether shear beside the hole, and not bending, sets its force. */
  byShear: boolean;
}

/**
 * Largest force at the motor that an arm with one hole bears, at the hole and at its root.
 * $$F_{root} = \frac{\sigma_0 Z}{L},\quad F_{hole} = \frac{s\,\sigma_0 Z}{L-x},\quad x_0 = L\,(1-s)$$
 * @param hole - shares left by the hole, station, arm length, strengths
 * @returns forces at the motor, and the station x0 from which on the root is the weaker place
 * @validity force across the arm at the motor, one section from root to motor, root taken whole: its screw holes and
 * doubler are questions of their own. Shear counts at a hole that it flows past
 * @throws InputError when the station lies outside the arm or the hole runs over the outer screw or the motor axis
 * @derivation moment F (L - x) at the hole against s σ0 Z, and F L at the root against σ0 Z; both equal where L - x = s L
 */
export function holeInArm(hole: HoleStation): HoleInArm {
  const { drilled, holeDiameter, station, armLength, bendingStrength, shearStrength, shearPerForce } = hole;
  requirePositive(armLength, { parameter: 'armLength', quantity: 'length of the arm', kind: 'length' });
  const subject = { parameter: 'station', quantity: 'station of the hole', kind: 'length' } as const;
  requirePositive(station, subject);
  requireBelow(station, armLength, 'must lie between the outer screw and the motor axis', subject);
  requirePositive(holeDiameter, { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' });
  if (station < holeDiameter)
    throw new InputError({ ...subject, value: station, rule: 'overlaps the outer screw', limit: holeDiameter });
  requireBelow(station, armLength - holeDiameter / 2, 'overlaps the motor axis', subject);
  requireStrength(bendingStrength, { parameter: 'bendingStrength', quantity: 'bending strength' });
  requireStrength(shearStrength, { parameter: 'shearStrength', quantity: 'shear strength' });
  requirePositive(shearPerForce, { parameter: 'shearPerForce', quantity: 'shear stress per force' });
  const lever = armLength - station;
  const modulus = drilled.gross.secondMomentOfArea / drilled.gross.extremeFibre;
  const moment = bendingStrength * modulus;
  const shear = shearStrength / shearPerForce;
  const rootForce = Math.min(moment / armLength, shear);
  const bending = (moment * drilled.notchedShare) / lever;
  const sheared = shear * drilled.shearShare;
  const holeForce = Math.min(bending, sheared);
  return {
    lever,
    rootForce,
    wholeForce: Math.min(moment / lever, shear),
    holeForce,
    elasticForce: Math.min((moment * drilled.elasticShare) / lever, sheared),
    armForce: Math.min(rootForce, holeForce),
    harmlessFrom: armLength * (1 - drilled.notchedShare),
    byShear: sheared < bending,
  };
}
