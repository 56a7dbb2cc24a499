import { STANDARD_GRAVITY } from '../quantity/kinds.ts';
import { requireBetween, requireNotNegative } from '../require.ts';
import type { MountLoad } from './bond-stress.ts';

export type MountCase = 'flight' | 'stop' | 'pull' | 'strike';
export const MOUNT_CASES = ['flight', 'stop', 'pull', 'strike'] as const satisfies readonly MountCase[];

export interface MountLoadsGiven {
  /** Of one motor at full throttle [N]. */
  fullThrust: number;
  /** Reaction torque over thrust [m]. */
  torquePerThrust: number;
  /** Motor with propeller and screws [kg]. */
  motorMass: number;
  /** Of that mass, above the surface that is looked at [m]. */
  centreHeight: number;
  /** Of the propeller above the surface that is looked at [m]. */
  propellerHeight: number;
  /** [m] */
  propellerDiameter: number;
  /** Missing at one blade tip [kg]. */
  chip: number;
  /** [rad/s] */
  motorSpeed: number;
  /** Of the frame in a crash, in standard gravities [-]. */
  deceleration: number;
  /** What a blade tip pushes against before it breaks [N]. */
  bladeForce: number;
}

/**
 * Force of a rotor that is out of balance.
 * $$F = m\,e\,\omega^2$$
 * @param rotor - mass missing or added [kg], its distance from the axis [m], speed [rad/s]
 * @returns force that turns with the rotor [N]
 * @validity stiff shaft
 * @throws InputError when a number is out of range
 * @source thomson-1998-vibration, rotating unbalance
 */
export function unbalanceForce(rotor: { mass: number; distance: number; speed: number }): number {
  requireBetween(rotor.mass, 0, 10, { parameter: 'chip', quantity: 'mass out of balance', kind: 'mass' });
  requireBetween(rotor.distance, 0, 10, { parameter: 'distance', quantity: 'distance from the axis', kind: 'length' });
  requireBetween(rotor.speed, 0, 1e5, { parameter: 'motorSpeed', quantity: 'speed', kind: 'rotationalSpeed' });
  return rotor.mass * rotor.distance * rotor.speed ** 2;
}

/**
 * What a motor's mount has to hold: in flight thrust, reaction torque and a chipped blade; in a crash the motor's own
 * mass, sideways or straight off; and a blade that hits something.
 * $$F_{stop}=m\,a,\quad M_{stop}=m\,a\,h_m,\quad T_{strike}=F_b\tfrac{D_p}{2},\quad M_{strike}=F_b\,h_p$$
 * @param given - thrust, masses, heights, speed, deceleration and blade force
 * @returns one load for each case
 * @validity the largest value that each reaches, held still; cases are not added up
 * @throws InputError when a number is out of range
 * @derivation Newton's second law for the motor's mass; moments of each force about the surface
 */
export function mountLoads(given: MountLoadsGiven): Readonly<Record<MountCase, MountLoad>> {
  const length = (
    parameter: 'torquePerThrust' | 'centreHeight' | 'propellerHeight' | 'propellerDiameter',
    quantity: string,
  ) => requireBetween(given[parameter], 0, 10, { parameter, quantity, kind: 'length' });
  length('torquePerThrust', 'torque per thrust');
  length('centreHeight', 'height of the motor’s centre of mass');
  length('propellerHeight', 'height of the propeller');
  length('propellerDiameter', 'propeller diameter');
  requireBetween(given.fullThrust, 0, 1e5, { parameter: 'fullThrust', quantity: 'thrust', kind: 'force' });
  requireBetween(given.motorMass, 0, 100, { parameter: 'motorMass', quantity: 'mass of the motor', kind: 'mass' });
  requireBetween(given.bladeForce, 0, 1e6, { parameter: 'bladeForce', quantity: 'force at the blade', kind: 'force' });
  requireNotNegative(given.deceleration, { parameter: 'deceleration', quantity: 'deceleration', kind: 'ratio' });
  requireBetween(given.deceleration, 0, 1e6, { parameter: 'deceleration', quantity: 'deceleration', kind: 'ratio' });
  const radius = given.propellerDiameter / 2;
  const unbalance = unbalanceForce({ mass: given.chip, distance: radius, speed: given.motorSpeed });
  const inertia = given.motorMass * given.deceleration * STANDARD_GRAVITY;
  return {
    flight: {
      shear: unbalance,
      lift: given.fullThrust,
      torque: given.fullThrust * given.torquePerThrust,
      tipping: unbalance * given.propellerHeight,
    },
    stop: { shear: inertia, lift: 0, torque: 0, tipping: inertia * given.centreHeight },
    pull: { shear: 0, lift: inertia, torque: 0, tipping: 0 },
    strike: {
      shear: given.bladeForce,
      lift: 0,
      torque: given.bladeForce * radius,
      tipping: given.bladeForce * given.propellerHeight,
    },
  };
}
