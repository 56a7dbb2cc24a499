import { InputError } from '../error.ts';
import { principalAxes, type InertiaTensor, type Vector } from '../mass/index.ts';
import { momentOf } from '../mass/vector.ts';
import { requireBetween, requireFinite } from '../require.ts';
import { effectiveMass, type Turn } from './effective-mass.ts';

export interface PointBlow {
  /** [kg] */
  mass: number;
  /** About the centre of mass [kg·m²]. */
  inertia: InertiaTensor;
  /** From the centre of mass to the point that is hit [m]. */
  lever: Vector;
  /** Line of the blow; its length plays no part [-]. */
  direction: Vector;
}

const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;

/**
 * The mass that a free rigid body shows to a blow at any point and along any line.
 * $$\frac{1}{m_{eff}} = \frac1m + (\mathbf r\times\mathbf n)^{\mathsf T} I^{-1} (\mathbf r\times\mathbf n)$$
 * @param blow - mass, inertia tensor, lever [m] and direction
 * @returns effective mass [kg], and the lever and inertia about each principal axis that the blow turns it about
 * @validity as effectiveMass: free, rigid, nothing has turned far
 * @throws InputError when a number is out of range or the direction has no length
 * @derivation in principal axes the quadratic form is the sum of effectiveMass
 */
export function effectiveMassAt({ mass, inertia, lever, direction }: PointBlow): {
  effectiveMass: number;
  turns: readonly Turn[];
} {
  for (const value of Object.values(lever))
    requireBetween(value, -1e3, 1e3, { parameter: 'lever', quantity: 'lever of the blow', kind: 'length' });
  for (const value of Object.values(direction))
    requireFinite(value, { parameter: 'direction', quantity: 'direction of the blow' });
  const size = Math.hypot(direction.x, direction.y, direction.z);
  if (size < 1e-12) {
    throw new InputError({
      parameter: 'direction',
      quantity: 'direction of the blow',
      value: size,
      rule: 'must not be zero',
    });
  }
  const along = { x: direction.x / size, y: direction.y / size, z: direction.z / size };
  const turning = momentOf(lever, along);
  const turns = principalAxes(inertia).map(({ moment, direction: axis }) => ({
    lever: dot(turning, axis),
    momentOfInertia: moment,
  }));
  return { effectiveMass: effectiveMass({ mass, turns }), turns };
}
