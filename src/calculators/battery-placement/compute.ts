import {
  comparePlacements,
  massProperties,
  placedBattery,
  type Comparison,
  type MassProperties,
} from '@frameworthy/shared/mass';
import type { Values } from '~/island/declaration.ts';
import { craftOf, packOf } from '../craft-inputs.ts';
import type { inputs } from './inputs.ts';

export type PlacementValues = Values<typeof inputs>;

export interface PlacementResult extends Comparison {
  /** The battery alone, in place: for the worked steps. */
  pack: MassProperties;
  /** Front left motor from the middle [m]. */
  motor: { x: number; y: number };
}

export function compute(values: PlacementValues): PlacementResult {
  const { lie, side, forward, gap, fullThrust, torquePerThrust } = values;
  const craft = craftOf(values);
  const battery = { pack: packOf(values), lie, side, forward, gap };
  const comparison = comparePlacements({ craft, battery, fullThrust, torquePerThrust });
  return {
    ...comparison,
    pack: massProperties([placedBattery(battery, craft)]),
    motor: comparison.motors[0]!.position,
  };
}
