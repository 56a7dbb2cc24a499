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
