import { requireBetween } from '../require.ts';
import { solveLinear } from '../solve-linear.ts';
import { inertiaMatrix, type InertiaTensor } from './inertia-tensor.ts';
import { requireTensor } from './limits.ts';
import type { Vector } from './vector.ts';

/**
 * How fast a body at rest begins to turn under a moment, products of inertia included.
 * $$\boldsymbol\alpha = I^{-1}\mathbf M$$
 * @param inertia - about the centre of mass [kg·m²]
 * @param moment - about the same point [N·m]
 * @returns angular acceleration about x, y, z [rad/s²]
 * @validity from rest: without the gyroscopic term $\boldsymbol\omega\times I\boldsymbol\omega$
 * @throws InputError when the tensor has no resistance about some axis, or a value is out of range
 * @source goldstein-2002-mechanics, ch. 5, Euler's equations of motion
 */
export function angularAcceleration(inertia: InertiaTensor, moment: Vector): Vector {
  requireTensor(inertia);
  for (const value of [moment.x, moment.y, moment.z]) {
    requireBetween(value, -1e12, 1e12, { parameter: 'moment', quantity: 'moment', kind: 'moment' });
  }
  const rule = 'must resist turning about every axis';
  const subject = { parameter: 'inertia', quantity: 'moment of inertia', rule };
  const [x, y, z] = solveLinear(inertiaMatrix(inertia), [moment.x, moment.y, moment.z], subject) as [
    number,
    number,
    number,
  ];
  const most = { parameter: 'inertia', quantity: 'angular acceleration', kind: 'angularAcceleration' } as const;
  for (const value of [x, y, z]) requireBetween(value, -1e15, 1e15, most);
  return { x, y, z };
}
