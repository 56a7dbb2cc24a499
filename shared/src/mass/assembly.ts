import { InputError } from '../error.ts';
import type { Placed } from './body.ts';
import { addInertia, type InertiaTensor, NO_INERTIA, pointInertia } from './inertia-tensor.ts';
import { requireMass, requirePlace, requireTensor } from './limits.ts';
import { rotateInertia } from './rotation.ts';
import { between, type Vector } from './vector.ts';

/** What a set of parts weighs, where it balances and how it resists turning. */
export interface MassProperties {
  /** [kg] */
  mass: number;
  /** Centre of mass [m]. */
  centre: Vector;
  /** About the centre of mass, in the frame's axes [kg·m²]. */
  inertia: InertiaTensor;
}

/**
 * Total mass, centre of mass and inertia tensor of any number of rigid parts.
 * $$m=\sum m_i,\quad \mathbf c=\frac{\sum m_i\mathbf r_i}{m},\quad I=\sum\left[R_iI_iR_i^{\mathsf T}+m_i\left(d_i^2\mathbf 1-\mathbf d_i\mathbf d_i^{\mathsf T}\right)\right],\quad \mathbf d_i=\mathbf r_i-\mathbf c$$
 * @param parts - bodies with position [m] and orientation [rad]
 * @returns mass [kg], centre of mass [m], inertia about it [kg·m²]
 * @validity parts are rigid and rigidly joined; a strapped pack is nearly so
 * @throws InputError when there is no part, or a mass, place or angle is out of range
 * @source meriam-2012-dynamics, Appendix B, composite bodies
 */
export function massProperties(parts: readonly Placed[]): MassProperties {
  if (parts.length === 0) {
    throw new InputError({
      parameter: 'parts',
      quantity: 'number of parts',
      value: 0,
      rule: 'must be at least',
      limit: 1,
    });
  }
  for (const { body, position } of parts) {
    requireMass(body.mass);
    requirePlace(position);
    requireTensor(body.inertia);
  }
  const mass = parts.reduce((sum, { body }) => sum + body.mass, 0);
  const mean = (axis: keyof Vector) =>
    parts.reduce((sum, { body, position }) => sum + (body.mass / mass) * position[axis], 0);
  const centre = { x: mean('x'), y: mean('y'), z: mean('z') };
  const inertia = parts.reduce<InertiaTensor>((sum, { body, position, orientation }) => {
    const moved = pointInertia(body.mass, between(centre, position));
    const own = orientation ? rotateInertia(body.inertia, orientation) : body.inertia;
    return addInertia(sum, addInertia(own, moved));
  }, NO_INERTIA);
  return { mass, centre, inertia };
}
