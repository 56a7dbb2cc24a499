import { addInertia, type InertiaTensor, pointInertia } from './inertia-tensor.ts';
import { requireMass, requirePlace, requireTensor } from './limits.ts';
import type { Vector } from './vector.ts';

interface Transfer {
  /** About the body's own centre of mass, or about the other point [kg·m²]. */
  inertia: InertiaTensor;
  /** [kg] */
  mass: number;
  /** From one point to the other [m]. */
  offset: Vector;
}

function check({ inertia, mass, offset }: Transfer): void {
  requireTensor(inertia);
  requireMass(mass);
  requirePlace(offset, 'offset', 'offset');
}

/**
 * Inertia about any point, from the inertia about the centre of mass.
 * $$I_P = I_C + m\,(d^2\,\mathbf 1 - \mathbf d\,\mathbf d^{\mathsf T})$$
 * @param transfer - tensor about the centre of mass [kg·m²], mass [kg], offset of the point [m]
 * @returns tensor about the point, axes kept parallel [kg·m²]
 * @validity exact for a rigid body
 * @throws InputError when mass or an entry is out of range
 * @source meriam-2012-dynamics, Appendix B, transfer of axes
 */
export function inertiaAboutPoint(transfer: Transfer): InertiaTensor {
  check(transfer);
  return addInertia(transfer.inertia, pointInertia(transfer.mass, transfer.offset));
}

/**
 * The way back: inertia about the centre of mass, from the inertia about another point.
 * $$I_C = I_P - m\,(d^2\,\mathbf 1 - \mathbf d\,\mathbf d^{\mathsf T})$$
 * @param transfer - tensor about the point [kg·m²], mass [kg], offset between point and centre of mass [m]
 * @returns tensor about the centre of mass [kg·m²]; a moment below zero says that the inputs contradict each other
 * @validity loses digits when the offset is many times the body's size
 * @throws InputError when mass or an entry is out of range
 * @source meriam-2012-dynamics, Appendix B, transfer of axes
 */
export function inertiaAboutCentre(transfer: Transfer): InertiaTensor {
  check(transfer);
  return addInertia(transfer.inertia, pointInertia(-transfer.mass, transfer.offset));
}
