import { requireLength } from '../require-physical.ts';
import type { Body } from './body.ts';
import { NO_INERTIA } from './inertia-tensor.ts';
import { requireMass } from './limits.ts';

/**
 * Thin disc about its centre, axis along z: a propeller that turns many times while the frame turns once.
 * $$I_{zz} = \tfrac12 m r^2,\quad I_{xx} = I_{yy} = \tfrac14 m r^2$$
 * @param disc - mass [kg] and radius [m]
 * @returns body about its centre
 * @validity thickness much smaller than the radius
 * @throws InputError when radius or mass is out of range
 * @source meriam-2012-dynamics, Table D/4, thin circular disc
 */
export function discBody({ mass, radius }: { mass: number; radius: number }): Body {
  requireMass(mass);
  requireLength(radius, { parameter: 'radius', quantity: 'radius' });
  const across = (mass * radius ** 2) / 4;
  return { mass, inertia: { ...NO_INERTIA, xx: across, yy: across, zz: 2 * across } };
}

/**
 * Slender rod about its centre, along x: an arm whose thickness is small against its length.
 * $$I_{yy} = I_{zz} = \tfrac{1}{12} m L^2,\quad I_{xx} = 0$$
 * @param rod - mass [kg] and length [m]
 * @returns body about its centre
 * @validity thickness much smaller than the length
 * @throws InputError when length or mass is out of range
 * @source meriam-2012-dynamics, Table D/4, slender rod
 */
export function rodBody({ mass, length }: { mass: number; length: number }): Body {
  requireMass(mass);
  requireLength(length, { parameter: 'length', quantity: 'length' });
  const across = (mass * length ** 2) / 12;
  return { mass, inertia: { ...NO_INERTIA, yy: across, zz: across } };
}

/**
 * A part so small that only where it sits counts: a screw, a gram of solder.
 * @param mass - [kg]
 * @returns body without inertia of its own
 * @validity size much smaller than its distance from the axis
 * @throws InputError when the mass is out of range
 * @derivation own inertia is of the order of mass times size squared, its parallel-axis term of mass times distance squared
 */
export function pointBody(mass: number): Body {
  requireMass(mass);
  return { mass, inertia: NO_INERTIA };
}
