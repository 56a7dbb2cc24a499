import { InputError } from '@frameworthy/shared';
import {
  hoverPower,
  hoverReserve,
  STANDARD_AIR,
  standardAtmosphere,
  type HoverPower,
  type HoverReserve,
} from '@frameworthy/shared/rotor';
import type { Values } from '~/island/declaration.ts';
import type { inputs } from './inputs.ts';

export type HoverValues = Values<typeof inputs>;

interface HoverState {
  rotor: HoverPower;
  reserve: HoverReserve;
  /** Out of the battery, all rotors together [W]. */
  batteryPower: number;
}

export interface HoverResult extends HoverState {
  airDensity: number;
  /** With the added mass on board. */
  heavier: HoverState;
}

const SEA_LEVEL = STANDARD_AIR.pressure / (STANDARD_AIR.gasConstant * STANDARD_AIR.temperature);

export function compute(values: HoverValues): HoverResult {
  const { density } = standardAtmosphere(values.altitude);
  // The same top speed of rotation in thinner air gives less thrust, in proportion.
  const thinner = density / SEA_LEVEL;
  const at = (mass: number): HoverState => {
    const reserve = hoverReserve({ mass, rotors: values.rotors, fullThrust: values.fullThrust * thinner });
    const rotor = hoverPower({
      thrust: reserve.hoverThrust,
      diameter: values.propellerDiameter,
      density,
      figureOfMerit: values.figureOfMerit,
    });
    return { reserve, rotor, batteryPower: (values.rotors * rotor.power) / values.driveEfficiency };
  };
  const own = blaming(
    () => at(values.mass),
    // In the reader's terms: on a stand near sea level.
    ({ limit = 0 }) => ({ value: values.fullThrust, limit: limit / thinner }),
  );
  const heavier = blaming(
    () => at(values.mass + values.addedMass),
    () => ({
      parameter: 'addedMass',
      quantity: 'mass added',
      value: values.addedMass,
      rule: 'is more than the motors can lift besides: it must be below',
      limit: values.mass * (own.reserve.thrustToWeight - 1),
      kind: 'mass',
    }),
  );
  return { ...own, airDensity: density, heavier };
}

/** An aircraft that cannot lift itself, said at the field and in the numbers that the reader typed. */
function blaming(state: () => HoverState, said: (error: InputError) => Partial<InputError>): HoverState {
  try {
    return state();
  } catch (error) {
    if (error instanceof InputError && error.parameter === 'fullThrust')
      throw new InputError({ ...error, ...said(error) });
    throw error;
  }
}
