import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';
import { requirePlace } from './limits.ts';
import { between, momentOf, type Vector } from './vector.ts';

/** Which way the frame is twisted by the motor's reaction, seen from above: 1 for counterclockwise. */
export type Reaction = 1 | -1;

export interface Motor {
  /** Middle of the propeller disc [m]. */
  position: Vector;
  reaction: Reaction;
}

/**
 * Four motors on the corners of a rectangle, neighbours turning against each other.
 * @param layout - wheelbase, the diagonal from motor to motor [m]; arm angle from straight ahead [rad]; disc height [m]
 * @returns front left, front right, rear right, rear left
 * @validity arms straight from one middle
 * @throws InputError when the angle is not between 10° and 80° or a length is out of range
 * @derivation $x = \pm\tfrac w2\cos\theta$, $y = \pm\tfrac w2\sin\theta$; 45° is a true X
 */
export function fourMotors(layout: {
  wheelbase: number;
  armAngle: number;
  height: number;
}): [Motor, Motor, Motor, Motor] {
  const { wheelbase, armAngle, height } = layout;
  requireBetween(wheelbase, 1e-3, 100, { parameter: 'wheelbase', quantity: 'wheelbase', kind: 'length' });
  requireBetween(armAngle, Math.PI / 18, (4 * Math.PI) / 9, {
    parameter: 'armAngle',
    quantity: 'arm angle',
    kind: 'angle',
  });
  requireBetween(height, -100, 100, { parameter: 'height', quantity: 'propeller height', kind: 'length' });
  const [x, y, z] = [(wheelbase / 2) * Math.cos(armAngle), (wheelbase / 2) * Math.sin(armAngle), height];
  return [
    { position: { x, y, z }, reaction: 1 },
    { position: { x, y: -y, z }, reaction: -1 },
    { position: { x: -x, y: -y, z }, reaction: 1 },
    { position: { x: -x, y, z }, reaction: -1 },
  ];
}

/**
 * Moment of all thrusts and reaction torques about a point.
 * $$\mathbf M=\sum(\mathbf r_i-\mathbf c)\times T_i\hat{\mathbf z}+\kappa\sum s_iT_i\,\hat{\mathbf z}$$
 * @param load - motors, thrust of each [N], reaction torque per thrust [m], point [m]
 * @returns moments about x, y, z [N·m]
 * @validity discs level, no flapping, no change of rotor speed
 * @throws InputError when counts differ or a value is out of range
 * @source meriam-2012-dynamics, moment of a force; reaction torque by definition of torque per thrust
 */
export function thrustMoment(load: {
  motors: readonly Motor[];
  thrusts: readonly number[];
  torquePerThrust: number;
  about: Vector;
}): Vector {
  const { motors, thrusts, torquePerThrust, about } = load;
  requirePlace(about, 'about', 'centre of mass');
  requireBetween(torquePerThrust, 0, 10, {
    parameter: 'torquePerThrust',
    quantity: 'torque per thrust',
    kind: 'length',
  });
  if (thrusts.length !== motors.length) {
    throw new InputError({
      parameter: 'thrusts',
      quantity: 'number of thrusts',
      value: thrusts.length,
      rule: 'must equal the number of motors',
      limit: motors.length,
    });
  }
  return motors.reduce<Vector>(
    (sum, { position, reaction }, i) => {
      const thrust = thrusts[i] as number;
      requireBetween(thrust, -1e9, 1e9, { parameter: 'thrusts', quantity: 'thrust', kind: 'force' });
      requirePlace(position, 'motors', 'motor position');
      const arm = momentOf(between(about, position), { x: 0, y: 0, z: thrust });
      return { x: sum.x + arm.x, y: sum.y + arm.y, z: sum.z + reaction * torquePerThrust * thrust };
    },
    { x: 0, y: 0, z: 0 },
  );
}
