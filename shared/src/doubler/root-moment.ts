import { requireLength, requireLoad } from '../require-physical.ts';
import { requireFinite } from '../require.ts';

export interface RootedArm {
  /** Force at the motor axis, across the arm [N]. */
  tipForce: number;
  /** From the outer screw to the motor axis [m]. */
  armLength: number;
  /** From the inner to the outer screw [m]. */
  screwSpacing: number;
}

export function requireArm({ tipForce, armLength, screwSpacing }: RootedArm): void {
  requireLoad(tipForce, { parameter: 'tipForce', quantity: 'force at the motor', kind: 'force' });
  requireLength(armLength, { parameter: 'armLength', quantity: 'arm length' });
  requireLength(screwSpacing, { parameter: 'screwSpacing', quantity: 'screw spacing' });
}

/**
 * Bending moment along an arm held by two screws, the outer one at position 0.
 * $$M(x) = F(L-x)\ \ (0\le x\le L),\qquad M(x) = FL\left(1+\tfrac xs\right)\ \ (-s\le x<0)$$
 * @param arm - force [N], arm length and screw spacing [m]
 * @param position - from the outer screw, positive towards the motor [m]
 * @returns bending moment, zero beyond the motor and behind the inner screw [N·m]
 * @validity both screws hold as points; the arm carries nothing else
 * @throws InputError for values that are not physical
 * @derivation Statics of a beam on two supports with a load on its overhang.
 */
export function rootMoment(arm: RootedArm, position: number): number {
  requireArm(arm);
  requireFinite(position, { parameter: 'position', quantity: 'position along the arm', kind: 'length' });
  const { tipForce, armLength, screwSpacing } = arm;
  if (position >= 0) return tipForce * Math.max(armLength - position, 0);
  return tipForce * armLength * Math.max(1 + position / screwSpacing, 0);
}
