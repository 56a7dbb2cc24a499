import { requireFinite, requirePositive } from '../require.ts';
import { requireSegments, rigidity, type ArmSegment } from './segment.ts';

export interface ArmTorque {
  segments: readonly ArmSegment[];
  /** About the arm's own axis, at the motor [N·m]. */
  torque: number;
  /** Torsional spring at the root; fixed where not given [N·m/rad]. */
  rootStiffness?: number;
}

/**
 * Twist of the tip of a stepped arm.
 * $$\varphi = \frac{T}{k_{root}} + T\sum\frac{L_i}{G_i J_i}$$
 * @param load - segments, torque, root spring
 * @returns twist at the motor axis [rad]
 * @validity free warping, linear material
 * @throws InputError when a number is out of range
 * @source gere-2004-mechanics, § 3.4, non-uniform torsion
 */
export function armTwist({ segments, torque, rootStiffness }: ArmTorque): number {
  requireSegments(segments);
  requireFinite(torque, { parameter: 'torque', quantity: 'torque', kind: 'moment' });
  if (rootStiffness !== undefined) {
    requirePositive(rootStiffness, {
      parameter: 'rootStiffness',
      quantity: 'torsional stiffness of the root',
      kind: 'rotationalStiffness',
    });
  }
  const root = rootStiffness === undefined ? 0 : 1 / rootStiffness;
  return torque * segments.reduce((sum, s) => sum + s.length / rigidity(s, 'vertical').torsional, root);
}
