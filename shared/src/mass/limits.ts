import { requireBetween, requireFinite, requirePositive } from '../require.ts';
import type { InertiaTensor } from './inertia-tensor.ts';
import type { Vector } from './vector.ts';

/**
 * Refuses a mass that no part of an airframe has: outside a microgram to a thousand tonnes.
 * @throws InputError when it is outside.
 */
export function requireMass(value: number, parameter = 'mass', quantity = 'mass'): void {
  const subject = { parameter, quantity, kind: 'mass' } as const;
  requirePositive(value, subject);
  requireBetween(value, 1e-9, 1e6, subject);
}

/**
 * Refuses a place further than 100 m from the origin.
 * @throws InputError when a coordinate is not a number or is outside.
 */
export function requirePlace({ x, y, z }: Vector, parameter = 'position', quantity = 'position'): void {
  for (const value of [x, y, z]) requireBetween(value, -100, 100, { parameter, quantity, kind: 'length' });
}

/**
 * Refuses a tensor with entries that are not numbers, or moments below zero by more than rounding.
 * @throws InputError when an entry is out of range.
 */
export function requireTensor(tensor: InertiaTensor, parameter = 'inertia', quantity = 'moment of inertia'): void {
  const subject = { parameter, quantity, kind: 'momentOfInertia' } as const;
  const moments = [tensor.xx, tensor.yy, tensor.zz];
  for (const moment of moments) requireFinite(moment, subject);
  // A rod has none about its own axis, and turning it leaves rounding there, of either sign.
  const rounding = 1e-12 * Math.max(...moments);
  for (const moment of moments) requireBetween(Math.abs(moment) <= rounding ? 0 : moment, 0, 1e12, subject);
  for (const product of [tensor.xy, tensor.xz, tensor.yz]) requireFinite(product, subject);
}
