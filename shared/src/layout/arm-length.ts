import { requireBelow, requirePositive } from '../require.ts';
import type { PlanPoint } from './motor-layout.ts';

/**
 * Free length of an arm that points from the middle of the frame to its motor.
 * $$L = \sqrt{x^2+y^2} - r$$
 * @param arm - motor axis [m], distance of the outer root screw from the middle r [m]
 * @returns length from outer root screw to motor axis [m]
 * @validity arm straight and radial
 * @throws InputError when the root lies beyond the motor
 * @derivation plane geometry
 */
export function armFreeLength({ motor, rootDistance }: { motor: PlanPoint; rootDistance: number }): number {
  const reach = Math.hypot(motor.x, motor.y);
  requirePositive(reach, { parameter: 'motor', quantity: 'distance of the motor', kind: 'length' });
  const subject = { parameter: 'rootDistance', quantity: 'distance of the outer root screw', kind: 'length' } as const;
  requirePositive(rootDistance, subject);
  requireBelow(rootDistance, reach, 'must be less than the distance of the motor', subject);
  return reach - rootDistance;
}
