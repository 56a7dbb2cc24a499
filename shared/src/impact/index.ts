/** Hits and drops: peak force from energy and stiffness, pulses, and the speed that a part survives. */
export { dropFactor, fallSpeed, type Drop } from './drop.ts';
export { movingMassImpact, type Blow, type MovingMass } from './moving-mass.ts';
export { springsInSeries } from './springs-in-series.ts';
export { effectiveMass, type OffCentreBlow, type Turn } from './effective-mass.ts';
export { effectiveMassAt, type PointBlow } from './effective-mass-at.ts';
export { tipStrike, type Strike, type StrikeDirection, type TipStrikeGiven } from './tip-strike.ts';
export { flatDrop, survivableHeight, type FlatDrop, type Supports } from './flat-drop.ts';
export { OBSTACLES, type Obstacle } from './obstacles.ts';
export { halfSinePeakForce, halfSineSpeedChange, sawToothSpeedChange, type ContactTime, type Pulse } from './pulse.ts';
export { survivableSpeed, type LoadAgainstLimit } from './survivable-speed.ts';
export { MEASURED_OVER_LINEAR, peakForceBand } from './peak-force-band.ts';
