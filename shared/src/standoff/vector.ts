import type { Vector } from '../mass/index.ts';
import { requireBetween } from '../require.ts';
import { requirePosition } from './column.ts';

/** Vector product. */
export const cross = (a: Vector, b: Vector): Vector => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

export const add = (a: Vector, b: Vector): Vector => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });

export const times = ({ x, y, z }: Vector, factor: number): Vector => ({ x: x * factor, y: y * factor, z: z * factor });

/**
 * Refuses a point beyond reason.
 * @throws InputError when a coordinate is not a number within a hundred metres
 */
export function requirePoint(point: Vector, quantity: string): void {
  for (const axis of ['x', 'y', 'z'] as const) requirePosition(point[axis], axis, quantity);
}

/**
 * Refuses a force beyond reason.
 * @throws InputError when a component is not a number below a giganewton
 */
export function requireForce(force: Vector): void {
  for (const axis of ['x', 'y', 'z'] as const) {
    requireBetween(force[axis], -1e9, 1e9, { parameter: 'force', quantity: 'force on the top plate', kind: 'force' });
  }
}
