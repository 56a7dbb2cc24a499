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
