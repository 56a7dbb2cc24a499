/** Typical values of what frames are made of, each with its spread, its worth and its source. */
export type { MaterialValue, MaterialValueKind } from './value.ts';
export type {
  Adhesive,
  CarbonPart,
  CarbonPlate,
  CarbonTube,
  Contact,
  Fibre,
  Material,
  Metal,
  Resin,
} from './material.ts';
export { PULTRUDED_TUBE, ROLL_WRAPPED_TUBE } from './carbon-tube.ts';
export { QUASI_ISOTROPIC_PLATE, WOVEN_PLATE } from './carbon-plate.ts';
export { ALUMINIUM_6061_T6, ALUMINIUM_7075_T6, STEEL, TITANIUM_6AL_4V } from './metals.ts';
export { STANDOFF_METALS, type StandoffMetal } from './standoff-metals.ts';
export { EPOXY_PASTE, LAMINATING_EPOXY } from './adhesive.ts';
export { STANDARD_FIBRE } from './fibre.ts';
export { CARBON_CLAMPED } from './contact.ts';
