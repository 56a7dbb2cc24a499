/** Screws, holes and clamps at the root of an arm. */
export { twoScrewRoot, type RootReactions, type TwoScrewRoot } from './two-screw-root.ts';
export { tubeRoot, type RootStrengths, type TubeRoot, type TubeRootResult } from './tube-root.ts';
export { type HoleMode, type HoleUse } from './hole-uses.ts';
export { bearingStress, netSectionStress, shearOutStress } from './loaded-hole.ts';
export { edgeDistanceWarnings, LEAST_DISTANCES, type HoleDistances } from './edge-distance.ts';
export { armPlay, type ArmPlay, type ArmPlayInput } from './arm-play.ts';
export { rootStiffness, screwStiffness, type ScrewedPair } from './root-stiffness.ts';

export { COARSE_THREADS, pitchDiameter, stressArea, type Thread, type ThreadName } from './thread.ts';
export { PROPERTY_CLASSES, type PropertyClass, type PropertyClassName } from './property-class.ts';
export { screwStrength, screwUse, type ScrewLoad, type ScrewStrength } from './screw-use.ts';
export { fastenerGroup, type Fastener, type GroupLoad } from './fastener-group.ts';
export { pinBendingMoment } from './pin-bending.ts';

export {
  preloadFromTorque,
  TIGHTENING_SCATTER,
  torqueCoefficient,
  torqueFromPreload,
  USUAL_TORQUE_COEFFICIENT,
  type Preload,
  type Tightening,
} from './preload.ts';
export { slipForce } from './clamp-friction.ts';
export { RING_PINCH, ringClosing, ringPinch, type RingPinch } from './ring-pinch.ts';
export { clampLimit, clampUse, type Clamp, type ClampLimit } from './clamp-torque.ts';

export { finiteWidthFactor, heywoodFactor, kirschStress, stripHoleFactor } from './hole-factor.ts';
export { tubeHoleAxialFactor, tubeHoleBendingFactor, type TubeHole } from './tube-hole-factor.ts';
export { orthotropicHoleFactor, type Orthotropic } from './orthotropic-hole.ts';
export { CHARACTERISTIC_LENGTHS, meanStressRatio, notchedStrengthRatio, type Notch } from './notched-strength.ts';
