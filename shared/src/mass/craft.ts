import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';
import type { Placed } from './body.ts';
import { boxBody, type Box } from './box.ts';
import { cylinderBody } from './cylinder.ts';
import { fourMotors, type Motor } from './motor.ts';
import { rodBody } from './thin-bodies.ts';

/** A four-motor craft without its battery, as plain bodies. Origin in the middle of the motors, on the arm axis. */
export interface Craft {
  /** Plates, boards, camera, standoffs: an even box [kg, m]. */
  body: Box;
  /** Underside of the body below the arm axis [m]. */
  bodyDepth: number;
  /** Centre of mass of the body ahead of the middle of the motors; 0 where not given [m]. */
  bodyForward?: number;
  /** One arm with its wires [kg]. */
  armMass: number;
  /** From root to motor axis [m]. */
  armLength: number;
  /** One motor with propeller and screws [kg]. */
  motorMass: number;
  /** Diagonal from motor to motor [m]. */
  wheelbase: number;
  /** Of the front arms from straight ahead: a true X has 45° [rad]. */
  armAngle: number;
  /** Propeller disc above the arm axis [m]. */
  propellerHeight: number;
}

/** Bell of an ordinary 5-inch motor. Its own inertia is a few thousandths of what its distance gives. [m] */
const BELL = { outerRadius: 0.014, length: 0.02 };

/**
 * The parts of a craft in their places, without the battery.
 * @param craft - body box, arms, motors and layout [kg, m, rad]
 * @returns placed bodies, and the four motors
 * @validity body as an even box, arms as slender rods, motors as solid cylinders; front and rear alike
 * @throws InputError when a size is out of range or an arm is longer than half the wheelbase
 * @derivation geometry: the arm's middle lies half its length inside the motor axis; the motor's middle halfway up to the
 * propeller
 */
export function craftParts(craft: Craft): { parts: Placed[]; motors: [Motor, Motor, Motor, Motor] } {
  const {
    body,
    bodyDepth,
    bodyForward = 0,
    armMass,
    armLength,
    motorMass,
    wheelbase,
    armAngle,
    propellerHeight,
  } = craft;
  requireBetween(bodyDepth, -1, 1, { parameter: 'bodyDepth', quantity: 'underside of the body', kind: 'length' });
  requireBetween(bodyForward, -1, 1, {
    parameter: 'bodyForward',
    quantity: 'centre of mass of the body ahead of the motors',
    kind: 'length',
  });
  const motors = fourMotors({ wheelbase, armAngle, height: propellerHeight });
  if (armLength > wheelbase / 2) {
    const subject = { parameter: 'armLength', quantity: 'arm length', kind: 'length' } as const;
    throw new InputError({
      ...subject,
      value: armLength,
      rule: 'must be at most half the wheelbase',
      limit: wheelbase / 2,
    });
  }
  const middle = { x: bodyForward, y: 0, z: body.height / 2 - bodyDepth };
  const arm = rodBody({ mass: armMass, length: armLength });
  const motor = cylinderBody({ mass: motorMass, ...BELL });
  const inward = 1 - armLength / wheelbase;
  const spokes = motors.flatMap<Placed>(({ position: { x, y } }) => [
    { body: arm, position: { x: x * inward, y: y * inward, z: 0 }, orientation: { yaw: Math.atan2(y, x) } },
    { body: motor, position: { x, y, z: propellerHeight / 2 } },
  ]);
  return { parts: [{ body: boxBody(body), position: middle }, ...spokes], motors };
}
