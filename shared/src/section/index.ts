/** Cross-sections: round tube, bar, plate strip, with or without a hole. */
export type { BendingPlane, Plane, Section } from './section.ts';
export { requireTube, roundTubeSection, solidRoundSection, type RoundTube } from './round-tube.ts';
export { drilledTubeSection, type DrilledTube } from './drilled-tube.ts';
export { slottedTubeSection, type SlottedTube } from './slotted-tube.ts';
export { openTubeTorsion, openWallTorsionConstant, type OpenTubeTorsion } from './open-tube.ts';
export { drilledRectangleSection, solidRectangleSection, type Rectangle } from './rectangle.ts';
export { rectangleTorsionConstant, rectangleTorsionModulus } from './rectangle-torsion.ts';
export { roundEndedSection } from './round-ended-strip.ts';
export { rectangleShearCoefficient, roundShearCoefficient } from './shear-coefficient.ts';
export { sleeveSection } from './sleeve.ts';
export { massPerLength } from './mass-per-length.ts';
export { tubePeakShearStress } from './tube-shear.ts';
export { thinClosedTorsionConstant, type ThinClosedTube } from './thin-closed-tube.ts';
