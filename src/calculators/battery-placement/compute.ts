import {
  comparePlacements,
  craftParts,
  fourMotors,
  massProperties,
  placedBattery,
  type MassProperties,
  type Placement,
} from '@frameworthy/shared/mass';
import type { Values } from '~/island/declaration.ts';
import { craftOf, packOf } from '../craft-inputs.ts';
import type { inputs } from './inputs.ts';

export type PlacementValues = Values<typeof inputs>;

export interface PlacementResult {
  chosen: Placement;
  turned: Placement;
  otherSide: Placement;
  /** The craft without its battery, and the battery alone, in place: for the worked steps. */
  frame: MassProperties;
  pack: MassProperties;
  /** Front left motor from the middle [m]. */
  motor: { x: number; y: number };
}

export function compute(values: PlacementValues): PlacementResult {
  const { lie, side, forward, gap, fullThrust, torquePerThrust, wheelbase, armAngle, propellerHeight } = values;
  const craft = craftOf(values);
  const battery = { pack: packOf(values), lie, side, forward, gap };
  return {
    ...comparePlacements({ craft, battery, fullThrust, torquePerThrust }),
    frame: massProperties(craftParts(craft).parts),
    pack: massProperties([placedBattery(battery, craft)]),
    motor: fourMotors({ wheelbase, armAngle, height: propellerHeight })[0].position,
  };
}
