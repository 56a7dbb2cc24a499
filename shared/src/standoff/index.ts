/** The body: a rigid top plate on standoffs, what a hit does to it, and how tall it has to be. */
export type { Column, ColumnBeam, EndFixity } from './column.ts';
export { columnHeadStiffness, type HeadStiffness } from './head-stiffness.ts';
export { roundStandoff, standoffSection, type RoundStandoff } from './round-standoff.ts';
export { PATTERNS, patternPositions, type Pattern, type PatternName } from './pattern.ts';
export {
  movementAt,
  plateOnColumns,
  type LoadedPlate,
  type PlateMovement,
  type PlateOnColumns,
} from './rigid-plate.ts';
export type { ColumnForces } from './column-forces.ts';
export { rigidDiaphragm, type RigidDiaphragm, type SideSpring } from './rigid-diaphragm.ts';
export { rockingBoss, type RockingBoss } from './rocking-boss.ts';
export { plateFootPullStress, plateFootStiffness, plateFootStress, type PlateFoot } from './plate-foot.ts';
export { wallStress, type LoadedWall } from './wall-stress.ts';
export { closingPreload, screwTension, type ScrewedEnd } from './screwed-end.ts';
export { bucklingStress, columnTransition, eulerLoad, type Strut } from './buckling.ts';
export { foldingForce, foldingMovement, touchSpeed, type FoldingHit, type FoldingStandoffs } from './folding.ts';
export { bodyHit, type BodyHit, type BodyHitResult } from './body-hit.ts';
export { noseHit, type NoseHit, type NoseHitResult } from './nose-hit.ts';
export { FEWEST_STANDOFFS, requireOffLine, requirePlan, spreadAcross, type Place, type TopPlate } from './plan.ts';
export { bodyLimits, type BodyStrength, type Limit, type LimitName, type LoadedBody } from './limits.ts';
export { CATALOGUE_LENGTHS, shortestThatClears, type ClearingLength, type Stack } from './catalogue.ts';
export { requireThread } from './require-thread.ts';
