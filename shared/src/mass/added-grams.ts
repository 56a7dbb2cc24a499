import { requireBetween } from '../require.ts';
import { agility } from './agility.ts';
import { massProperties } from './assembly.ts';
import type { Placed } from './body.ts';
import type { Motor } from './motor.ts';
import { pointBody } from './thin-bodies.ts';

export interface AddedGrams {
  /** The craft before, battery included. */
  parts: readonly Placed[];
  motors: readonly Motor[];
  /** One motor at full throttle [N]. */
  fullThrust: number;
  /** Reaction torque over thrust [m]. */
  torquePerThrust: number;
  /** Added at each of the arms [kg]. */
  mass: number;
  /** How far out along the arm: 0 in the middle, 1 at the motor axis [-]. */
  reach: number;
}

/** Shares lost: 0.01 is one hundredth [-]. */
export interface Cost {
  roll: number;
  pitch: number;
  yaw: number;
  /** Straight up, thrust less weight over mass. */
  climb: number;
}

/**
 * What the same grams on every arm cost in acceleration, by how far out they sit.
 * $$\Delta I_{xx} = \sum m\,y^2 = n\,m\,(s\,y_{motor})^2,\quad \text{cost} = 1-\frac{\alpha_{with}}{\alpha_{without}}$$
 * @param added - craft, motors, thrust [N], torque per thrust [m], grams an arm [kg] and reach [-]
 * @returns share of each acceleration that is lost [-]
 * @validity added parts small against the arm, at the height of the arm axis
 * @throws InputError when a value is out of range
 * @derivation the craft is put together twice, with and without point masses at reach times the motor's place
 */
export function costOfGrams({ parts, motors, fullThrust, torquePerThrust, mass, reach }: AddedGrams): Cost {
  requireBetween(reach, 0, 2, { parameter: 'reach', quantity: 'place along the arm', kind: 'ratio' });
  const extra = motors.map<Placed>(({ position: { x, y } }) => ({
    body: pointBody(mass),
    position: { x: x * reach, y: y * reach, z: 0 },
  }));
  const fly = (all: readonly Placed[]) => {
    const properties = massProperties(all);
    return { ...agility({ properties, motors, fullThrust, torquePerThrust }), mass: properties.mass };
  };
  const [before, after] = [fly(parts), fly([...parts, ...extra])];
  const lost = (axis: 'roll' | 'pitch' | 'yaw') => (before[axis] > 0 ? 1 - after[axis] / before[axis] : 0);
  return { roll: lost('roll'), pitch: lost('pitch'), yaw: lost('yaw'), climb: 1 - before.mass / after.mass };
}
