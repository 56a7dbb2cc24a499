import { requireFinite, requireNotNegative, requirePositive } from '../require.ts';

/** What hangs at the end of an arm. */
export interface MotorAtTip {
  /** Motor, propeller, screws and mount [kg]. */
  mass: number;
  /** Centre of that mass above the axis of the arm [m]. */
  offset: number;
  /** About an axis along the arm, through its own centre [kg·m²]. */
  rollInertia: number;
  /** About a level axis across the arm, through its own centre [kg·m²]. */
  pitchInertia: number;
  /** About the motor's axis: what does not spin freely [kg·m²]. */
  yawInertia: number;
}

/** Share of a motor about its own axis that is fixed to the arm; the bell turns in its bearings. */
const FIXED_SHARE = 0.5;

/**
 * A motor as a solid cylinder.
 * $$I_{roll}=I_{pitch}=\frac{m(3r^2+h^2)}{12},\quad I_{yaw}=\tfrac12\cdot\frac{m r^2}{2}$$
 * @param motor - mass [kg], diameter and height [m], centre of mass above the arm's axis [m]
 * @returns mass and inertias at the tip
 * @validity an estimate; half of the motor is taken to be fixed against turning about its own axis
 * @throws InputError when a size is out of range
 * @derivation solid cylinder about its centre, as in tables of moments of inertia; the share is common practice
 */
export function cylinderMotor(motor: { mass: number; diameter: number; height: number; offset: number }): MotorAtTip {
  requirePositive(motor.diameter, { parameter: 'diameter', quantity: 'motor diameter', kind: 'length' });
  requirePositive(motor.height, { parameter: 'height', quantity: 'motor height', kind: 'length' });
  const radius = motor.diameter / 2;
  const across = (motor.mass * (3 * radius ** 2 + motor.height ** 2)) / 12;
  const tip = {
    mass: motor.mass,
    offset: motor.offset,
    rollInertia: across,
    pitchInertia: across,
    yawInertia: (FIXED_SHARE * motor.mass * radius ** 2) / 2,
  };
  requireMotor(tip);
  return tip;
}

/**
 * Refuses a motor that cannot exist.
 * @throws InputError when mass or an inertia is negative, or a number is not one
 */
export function requireMotor({ mass, offset, rollInertia, pitchInertia, yawInertia }: MotorAtTip): void {
  requireNotNegative(mass, { parameter: 'motorMass', quantity: 'mass at the tip', kind: 'mass' });
  requireFinite(offset, { parameter: 'offset', quantity: 'height of the motor’s centre of mass', kind: 'length' });
  for (const [parameter, value] of Object.entries({ rollInertia, pitchInertia, yawInertia })) {
    requireNotNegative(value, { parameter, quantity: 'moment of inertia at the tip', kind: 'momentOfInertia' });
  }
}
