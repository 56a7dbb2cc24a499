/** Motor mounts: a plate glued on a tube, tow wrapped over it, the motor's screws, and how long resin takes. */
export { tangentBondWidth, tangentGap, type TangentBond, type TangentBondGiven } from './tangent-bond.ts';
export { mountBondStress, type BondStrength, type BondStress, type MountLoad, type Tipping } from './bond-stress.ts';
export { MOUNT_CASES, mountLoads, unbalanceForce, type MountCase, type MountLoadsGiven } from './mount-loads.ts';

export {
  fibreArea,
  filamentArea,
  STANDARD_CARBON_FIBRE,
  towBreakingLoad,
  TOWS,
  towsInSection,
  type TowName,
} from './tow.ts';
export { bentFibreShare, capstanRatio, loopStressFactor, strapStress, type Loop } from './loop.ts';
export { wrapPath, type WrapPath, type WrapPathGiven } from './wrap-path.ts';
export { wrapPull, wrapStrength, WRAP_STIFFNESS_RATIO, type WrapBand, type WrapStrength } from './wrap-strength.ts';

export {
  curedPlyThickness,
  FIBRE_FRACTIONS,
  mixtureDensity,
  RESIN_DENSITY,
  resinMass,
  resinMassFraction,
  type FibreAndResinParts,
} from './resin.ts';
export {
  activationEnergy,
  arrheniusFactor,
  cureWarnings,
  LARGE_POT,
  RATE_PER_TEN,
  RULE_REACH,
  STATED_POT,
  timeAtTemperature,
} from './cure.ts';

export { MOTOR_PATTERNS, type MotorPattern, type MotorPatternName } from './motor-pattern.ts';
export { motorScrewPlaces, motorScrewShare, type MotorScrewsGiven, type ScrewShare } from './motor-screws.ts';
export {
  motorScrewFit,
  SCREW_LENGTHS,
  WINDING_ROOM,
  type MotorScrewFit,
  type MotorScrewLength,
} from './screw-length.ts';
export { screwMass, STEEL_SCREW_DENSITY, type ScrewMass } from './screw-mass.ts';
