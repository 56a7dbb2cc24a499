/** The shape of a frame, as plain data and as flat views of it. */
export type {
  ArmSection,
  FrameOutline,
  OutlineArm,
  OutlineBox,
  OutlineHole,
  OutlineMotor,
  OutlinePlate,
  OutlinePropeller,
  OutlineScrew,
  OutlineStandoff,
  PlateShape,
} from './frame-outline.ts';
export type { DrawingLayer, FlatShape } from './flat-shape.ts';
export { planShapes } from './plan-shapes.ts';
export { sideShapes } from './side-shapes.ts';
export { planDimensions, sideDimensions } from './dimensions.ts';
export type { DimensionName, OutlineDimension } from './outline-dimension.ts';
export { cuttingList, type Alike } from './cutting-list.ts';
export { extentOf, overallSize, type OverallSize } from './overall-size.ts';
export type { FourArmFrame } from './four-arm-frame.ts';
export { fourArmOutline } from './four-arm-outline.ts';
export { innerEndGap } from './inner-end-gap.ts';
export { leastEdgeDistance, plateArea } from './plate-numbers.ts';
