/** Screws in tapped holes and through plates: threads, holes, seats, tightening. */
export { screwedJoint, type Limiter, type ScrewedJoint, type ScrewedJointResult } from './tightening-limit.ts';
export {
  majorLimits,
  pitchTolerance,
  tappedHole,
  THREAD_LIMITS,
  type FrameThread,
  type ThreadLimits,
} from './thread-limits.ts';
export {
  engagementFor,
  LOST_TURNS,
  strippingForce,
  threadShearArea,
  type TappedHole,
  type ThreadShearArea,
} from './thread-shear.ts';
export { cautiousPullOut, insertHold, insertPullOut, insertThreadArea, type Insert } from './pull-out.ts';
export { PRELOAD_AIM, preloadBand, RELAXATION } from './preload-band.ts';
export { CLEARANCE_HOLES, clearanceHole, type HoleSeries } from './clearance-hole.ts';
export { flangeArea, SEAT_DIAMETERS, seatArea, seatPressure, type PressNut, type Seat } from './head-bearing.ts';
export { frustumStiffness, jointLoadFactor, parallelShare, separationForce, type Frustum } from './load-factor.ts';
export { SCREW_MATERIALS, type ScrewMaterial } from './screw-material.ts';
