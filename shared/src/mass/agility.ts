import { requireBetween } from '../require.ts';
import type { MassProperties } from './assembly.ts';
import { type Motor, thrustMoment } from './motor.ts';
import type { Vector } from './vector.ts';

const RESISTS = { x: 'xx', y: 'yy', z: 'zz' } as const;

/** Angular accelerations at full command, each about its own axis [rad/s²]. */
export interface Agility {
  roll: number;
  pitch: number;
  yaw: number;
  /** Smaller of roll and pitch over the larger: 1 when both feel alike [-]. */
  likeness: number;
}

/**
 * What a craft answers to full stick: half the motors go to full thrust, the others to none, around half thrust on all.
 * $$\alpha_x=\frac{\tfrac T2\sum|y_i|}{I_{xx}},\quad \alpha_y=\frac{\tfrac T2\sum|x_i|}{I_{yy}},\quad \alpha_z=\frac{\tfrac T2\,n\,\kappa}{I_{zz}}$$
 * @param craft - mass properties, motors, full thrust of one motor [N], reaction torque per thrust [m]
 * @returns accelerations in roll, pitch and yaw [rad/s²] and the likeness of roll and pitch [-]
 * @validity thrust follows the command at once; yaw without the torque that speeds the rotors up and down; the flight
 * controller keeps the other two axes still, so products of inertia do not enter (`angularAcceleration` takes them along)
 * @throws InputError when a value is out of range or the inertia does not resist
 * @derivation sum of moments: motor i changes by $\pm T/2$, with the sign of its lever, so total thrust stays for a
 * layout that mirrors front to rear and side to side, and the couple does not depend on where the centre of mass is
 */
export function agility(craft: {
  properties: MassProperties;
  motors: readonly Motor[];
  fullThrust: number;
  torquePerThrust: number;
}): Agility {
  const { properties, motors, fullThrust, torquePerThrust } = craft;
  requireBetween(fullThrust, 1e-9, 1e9, { parameter: 'fullThrust', quantity: 'full thrust of a motor', kind: 'force' });
  const answer = (axis: keyof Vector, sign: (motor: Motor) => number) => {
    const thrusts = motors.map((motor) => (sign(motor) * fullThrust) / 2);
    const moment = thrustMoment({ motors, thrusts, torquePerThrust, about: properties.centre })[axis];
    const inertia = properties.inertia[RESISTS[axis]];
    requireBetween(inertia, 1e-20, 1e12, {
      parameter: 'inertia',
      quantity: 'moment of inertia',
      kind: 'momentOfInertia',
    });
    return Math.abs(moment) / inertia;
  };
  const roll = answer('x', ({ position }) => Math.sign(position.y));
  const pitch = answer('y', ({ position }) => -Math.sign(position.x));
  const yaw = answer('z', ({ reaction }) => reaction);
  return { roll, pitch, yaw, likeness: Math.max(roll, pitch) > 0 ? Math.min(roll, pitch) / Math.max(roll, pitch) : 1 };
}
