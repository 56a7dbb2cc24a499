import { requireBetween } from '../require.ts';
import { inertiaMatrix, type InertiaTensor, type Matrix3 } from './inertia-tensor.ts';
import { requireTensor } from './limits.ts';

/** How a body is turned: first about x, then about y, then about z, all axes of the frame [rad]. */
export interface Orientation {
  roll?: number;
  pitch?: number;
  yaw?: number;
}

/**
 * Matrix that takes directions in the body's own axes to the frame's.
 * $$R = R_z(\psi)\,R_y(\theta)\,R_x(\phi)$$
 * @param orientation - roll, pitch and yaw [rad], zero where not given
 * @returns rotation matrix [-]
 * @throws InputError when an angle is not a number or beyond a thousand radians
 * @source goldstein-2002-mechanics, Appendix A, x-y-z convention
 */
export function rotationMatrix({ roll = 0, pitch = 0, yaw = 0 }: Orientation): Matrix3 {
  for (const angle of [roll, pitch, yaw]) {
    requireBetween(angle, -1e3, 1e3, { parameter: 'orientation', quantity: 'orientation', kind: 'angle' });
  }
  const [sr, sp, sy] = [Math.sin(roll), Math.sin(pitch), Math.sin(yaw)];
  const [cr, cp, cy] = [Math.cos(roll), Math.cos(pitch), Math.cos(yaw)];
  return [
    [cy * cp, cy * sp * sr - sy * cr, cy * sp * cr + sy * sr],
    [sy * cp, sy * sp * sr + cy * cr, sy * sp * cr - cy * sr],
    [-sp, cp * sr, cp * cr],
  ];
}

/**
 * Inertia of a turned body in the frame's axes.
 * $$I' = R\,I\,R^{\mathsf T}$$
 * @param inertia - in the body's own axes [kg·m²]
 * @param orientation - how the body is turned [rad]
 * @returns tensor in the frame's axes, about the same point [kg·m²]
 * @validity exact; trace and principal moments stay as they are
 * @throws InputError when an entry or an angle is out of range
 * @source goldstein-2002-mechanics, ch. 5, inertia tensor
 */
export function rotateInertia(inertia: InertiaTensor, orientation: Orientation): InertiaTensor {
  requireTensor(inertia);
  const turn = rotationMatrix(orientation);
  const [ox, oy, oz] = inertiaMatrix(inertia);
  const dot = (a: readonly [number, number, number], b: readonly [number, number, number]) =>
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const entry = (i: 0 | 1 | 2, j: 0 | 1 | 2) => dot(turn[i], [dot(ox, turn[j]), dot(oy, turn[j]), dot(oz, turn[j])]);
  return { xx: entry(0, 0), yy: entry(1, 1), zz: entry(2, 2), xy: -entry(0, 1), xz: -entry(0, 2), yz: -entry(1, 2) };
}
