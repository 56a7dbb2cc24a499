/** Plates: bending between supports and about a screw, the tongue of an arm, webs beside a cutout, two plates as one. */
export { plateRigidity, type PlateMaterial } from './rigidity.ts';
export { rectangularPlate, type PlateCoefficients, type PlateEdge } from './rectangular-plate.ts';
export type { PlateLoad } from './plate-series.ts';
export { circularPlate } from './circular-plate.ts';
export { loadSpot } from './load-spot.ts';
export { loadedPlate, type LoadedPlate, type LoadedPlateResult } from './loaded-plate.ts';
export { twoPlates, type PlateLink, type PlateStrip, type TwoPlates, type TwoPlatesRigidity } from './two-plates.ts';
export { tongue, type Tongue, type TonguePlate, type TongueResult } from './tongue.ts';
export type { PointLoad } from './tongue-bending.ts';
export { plateBendingHoleFactor, type DrilledStrip } from './hole-in-bending.ts';
export { webs, type CutPlate, type CutPlateLoad, type Web } from './web.ts';
export { leastWeb, type LeastWeb } from './least-web.ts';
