/** Where the motors stand, how near the propellers come to each other and to the body. */
export {
  motorLayout,
  type LayoutShape,
  type MotorLayout,
  type MotorLayoutInput,
  type PlanPoint,
} from './motor-layout.ts';
export { CLOSE_GAP, spacingWarnings } from './spacing-warnings.ts';
export { discOverlap, overlapPowerFactor } from './overlap.ts';
export { armFreeLength } from './arm-length.ts';
export { bodyClearance, taperedOutline, type BodyClearance } from './body-clearance.ts';
export { gapFromSpacing, ringGap } from './ring.ts';
export { COPPER_RESISTIVITY, wireGauge, type Conductor } from './wire-gauge.ts';
