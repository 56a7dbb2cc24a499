import { placement, type Battery, type Craft, type Placement } from '../mass/index.ts';
import { currentArrangement } from './arrangement.ts';
import { framePlan, type FramePlan } from './plan.ts';
import { frameParts, totalOf, type FramePart } from './parts.ts';
import type { FrameRecord } from './record.ts';

/** The frame as the bodies that `placement` balances. */
export interface FrameCraft {
  craft: Craft;
  battery: Battery;
}

/** Middle of mass of the electronics and of the rest of the body, which sits in the middle. */
function bodyForward(record: FrameRecord, bodyMass: number): number {
  const items = currentArrangement(record).items;
  return items.reduce((sum, { mass, x }) => sum + mass * x, 0) / bodyMass;
}

/**
 * The frame as a body box, four arms, four motors and a battery.
 * @param record - a valid record
 * @param plan - its plan and heights
 * @param parts - its mass budget
 * @returns craft and battery for `placement` [kg, m]
 * @validity plates, standoffs, electronics and hardware as one even box with the centre of mass of its parts fore and aft
 * @throws InputError where sizes do not make a part
 * @derivation sums over the parts
 */
export function frameCraft(record: FrameRecord, plan: FramePlan, parts: readonly FramePart[]): FrameCraft {
  const { body, battery, motor, arm } = record;
  const bodyMass = totalOf(parts, ['plates', 'standoffs', 'electronics', 'hardware']).mass;
  const { mass, length, width, height, lie, side, forward, gap } = battery;
  return {
    craft: {
      body: { mass: bodyMass, length: body.length, width: body.width, height: plan.top - plan.underside },
      bodyDepth: -plan.underside,
      bodyForward: bodyForward(record, bodyMass),
      armMass: totalOf(parts, ['arms']).mass / 4,
      armLength: arm.length,
      motorMass: motor.mass,
      wheelbase: plan.layout.wheelbase,
      armAngle: plan.layout.armAngle,
      propellerHeight: motor.propellerHeight,
    },
    battery: { pack: { mass, length, width, height }, lie, side, forward, gap },
  };
}

export interface FrameBalance extends Placement {
  parts: readonly FramePart[];
  plan: FramePlan;
  allUp: number;
  /** Without motors, electronics and battery [kg]. */
  frameMass: number;
  /** Of the parts that have a price. */
  cost: number;
}

/**
 * Mass, balance, hover and agility of a frame.
 * @param record - a valid record
 * @returns mass budget, plan and what `placement` gives
 * @validity as frameCraft and placement
 * @throws InputError where a value is out of range
 * @derivation frameParts and framePlan, put through placement
 */
export function frameBalance(record: FrameRecord): FrameBalance {
  const plan = framePlan(record);
  const parts = frameParts(record);
  const { fullThrust, torquePerThrust } = record.motor;
  return {
    ...placement({ ...frameCraft(record, plan, parts), fullThrust, torquePerThrust }),
    parts,
    plan,
    allUp: totalOf(parts).mass,
    frameMass: totalOf(parts, ['arms', 'plates', 'standoffs', 'hardware']).mass,
    cost: totalOf(parts).cost,
  };
}
