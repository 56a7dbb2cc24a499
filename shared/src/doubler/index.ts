/** Doublers: a sleeve in the root of a tube, a pad on a plate. How long, how thick, and what the bond pays. */
export { rootMoment, type RootedArm } from './root-moment.ts';
export { leadInLength, shareReached, taperFactor, type LeadIn } from './lead-in.ts';
export { doubledTube, type DoubledTube, type DoubledTubeGiven, type Sharing } from './doubled-tube.ts';
export { requiredLength, type RequiredLength, type RequiredLengthGiven } from './required-length.ts';
export { armStress, sleeveEnd, type ArmStress } from './arm-stress.ts';
export { sleeveEndBondShear } from './bond-peak.ts';
export { tubeDoubler, type TubeDoubler } from './tube-doubler.ts';
export type { TubeDoublerGiven } from './tube-doubler-given.ts';
export { leastSleeveWall, type LeastWall } from './least-wall.ts';
export { layeredSection, type Layer, type LayeredSection } from './layered-section.ts';
export { padDoubler, type PadDoubler, type PadDoublerGiven } from './pad-doubler.ts';
