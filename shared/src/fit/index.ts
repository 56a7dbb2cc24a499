/** Electronics in the body: boxes between two plates and their standoffs, what collides, how short the body may be. */
export {
  FIT_KINDS,
  HOLE_PATTERNS,
  SIDES,
  type Arrangement,
  type FitClearance,
  type FitItem,
  type FitKind,
  type HolePattern,
  type Lens,
  type PatternScrew,
  type PlanPoint,
  type PlateOutline,
  type PlateTaper,
  type Side,
  type WireRoom,
} from './types.ts';
export type { FitBody } from './body.ts';
export { tiltedBox, type TiltedBox, type TiltedExtent } from './tilted-box.ts';
export {
  patternScrew,
  patternsFor,
  PATTERN_SPACING,
  USUAL_BOARD_HOLES,
  type ScrewedPattern,
  type ScrewedPatternResult,
} from './pattern-screw.ts';
export { nutAcrossCorners, NUTS } from './nut.ts';
export { swayShortening } from './sway-shortening.ts';
export { plateCorners } from './plate-outline.ts';
export { placeItem, type Box, type Part, type PlacedItem, type Role } from './parts.ts';
export { findCollisions, type Collision, type Direction } from './collisions.ts';
export { freeMargins, type FreeMargin, type FreeMargins } from './margins.ts';
export { shortestBody, type ShortestBody } from './shortest-body.ts';
export { heightStack, type HeightStack, type StackLayer } from './height-stack.ts';
export { distanceToPath } from './side-gap.ts';
export { topPlateInHit, type BodyHit, type TopPlateInHit } from './top-plate-in-hit.ts';
export { standoffInHit, type HeightCase, type StandoffInHit } from './standoff-in-hit.ts';
export { shortestStandoff, type LengthSold, type ShortestStandoff } from './shortest-standoff.ts';
export { checkArrangement, type ArrangementCheck } from './check-arrangement.ts';
