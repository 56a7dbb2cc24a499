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
  const at = (mass: number): HoverState => {
    // The same top speed of rotation in thinner air gives less thrust, in proportion.
    const reserve = hoverReserve({
      mass,
      rotors: values.rotors,
      fullThrust: (values.fullThrust * density) / SEA_LEVEL,
    });
    const rotor = hoverPower({
      thrust: reserve.hoverThrust,
      diameter: values.propellerDiameter,
      density,
      figureOfMerit: values.figureOfMerit,
    });
    return { reserve, rotor, batteryPower: (values.rotors * rotor.power) / values.driveEfficiency };
  };
  return { ...at(values.mass), airDensity: density, heavier: at(values.mass + values.addedMass) };
}
