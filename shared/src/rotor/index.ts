/** Propellers in hover and in flight, the air they work in, and what weight costs. */
export { hoverPower, type HoverPower, type HoverRotor } from './hover-power.ts';
export { hoverReserve, type HoverReserve, type HoverReserveInput } from './hover-reserve.ts';
export { hoverPowerRatio } from './added-mass.ts';
export { standardAtmosphere, STANDARD_AIR, type Air } from './atmosphere.ts';
export {
  figureOfMerit,
  propellerForThrust,
  staticPropeller,
  thrustAndPower,
  type PropellerCoefficients,
  type PropellerConstants,
  type StaticPropeller,
} from './coefficients.ts';
export { discInFlight, type DiscInFlight, type DiscInFlightResult } from './actuator-disc.ts';
export { incoherentLevelRise } from './noise.ts';
