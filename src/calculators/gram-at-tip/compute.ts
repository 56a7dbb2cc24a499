import { costOfGrams, craftParts, massProperties, placedBattery, type Cost } from '@frameworthy/shared/mass';
import type { Values } from '~/island/declaration.ts';
import { craftOf, packOf } from '../craft-inputs.ts';
import type { inputs } from './inputs.ts';

export type GramValues = Values<typeof inputs>;

export interface GramResult {
  /** Where the reader puts the grams, half as far out, and in the middle. */
  here: Cost;
  halfway: Cost;
  middle: Cost;
  /** Of arms and motors in the roll inertia [-]. */
  spokes: number;
  rollInertia: number;
  /** Front left motor [m]. */
  motor: { x: number; y: number };
}

/** Costs are ratios: thrust and torque cancel, so any will do. */
const ANY = { fullThrust: 1, torquePerThrust: 0.01 };

export function compute(values: GramValues): GramResult {
  const craft = craftOf(values);
  const { parts: dry, motors } = craftParts(craft);
  const battery = placedBattery({ ...values, pack: packOf(values) }, craft);
  const parts = [...dry, battery];
  const cost = (reach: number) => costOfGrams({ parts, motors, ...ANY, mass: values.added, reach });
  const whole = massProperties(parts);
  const core = massProperties(parts.filter((part) => part === battery || part === dry[0]));
  const apart = core.mass * (core.centre.z - whole.centre.z) ** 2 + core.inertia.xx;
  return {
    here: cost(values.reach),
    halfway: cost(values.reach / 2),
    middle: cost(0),
    spokes: 1 - apart / whole.inertia.xx,
    rollInertia: whole.inertia.xx,
    motor: motors[0].position,
  };
}
