import type { FrameThread } from '../fastener/index.ts';

/** A place in the plan: x forward, y to the left, from the middle of the four motors [m]. */
export interface PlanPoint {
  x: number;
  y: number;
}

export const FIT_KINDS = ['board', 'camera', 'transmitter', 'receiver', 'capacitor', 'antenna', 'other'] as const;
export type FitKind = (typeof FIT_KINDS)[number];

/** Square hole patterns of boards, by the spacing of their holes in millimetres; common practice. */
export const HOLE_PATTERNS = ['20x20', '25.5x25.5', '30.5x30.5'] as const;
export type HolePattern = (typeof HOLE_PATTERNS)[number];

export const SIDES = ['front', 'rear', 'left', 'right'] as const;
export type Side = (typeof SIDES)[number];

/** Room that plugs and wires need beside a part, over its whole height. */
export interface WireRoom {
  side: Side;
  /** From the face of the part [m]. */
  reach: number;
  /** Along that side, in its middle; the whole side where not given [m]. */
  width?: number;
}

/** The screws through a board's four holes. */
export interface PatternScrew {
  thread: FrameThread;
  /** Hole in the board, or in the soft mount that sits in it [m]. */
  hole: number;
  /** Widest part on the board, head or nut, across its corners [m]. */
  across: number;
  /** How far heads or nuts stand above the board's own height [m]. */
  height: number;
}

/** Front of a camera: a barrel ahead of its body, in the middle of the front face. */
export interface Lens {
  /** Ahead of the body, along the line of sight [m]. */
  reach: number;
  diameter: number;
}

/** One part of the electronics as a box. Plain data, SI: it stands in the frame record as it is. */
export interface FitItem {
  /** What collisions call it, unique in its arrangement: `flight stack`. */
  name: string;
  kind: FitKind;
  /** Fore and aft, before any tilt [m]. */
  length: number;
  /** Across [m]. */
  width: number;
  /** Upright, before any tilt, soft mounts left out [m]. */
  height: number;
  /** Middle of the box, forward [m]. */
  x: number;
  /** Middle of the box, to the left [m]. */
  y: number;
  /** Lowest point above the bottom plate, as tilted [m]. */
  z: number;
  /** Nose up, of a camera [rad]. */
  tilt?: number;
  lens?: Lens;
  pattern?: HolePattern;
  screw?: PatternScrew;
  wires?: readonly WireRoom[];
  /** How far it is meant to stand past the edge of the plate: an antenna, a lens [m]. */
  overhang?: number;
  /** No top plate over it, as over many a camera: then its height asks nothing of the standoffs. */
  openAbove?: boolean;
  /** [kg] */
  mass: number;
}

/** One way to fill a body: where its standoffs stand and where its electronics sit. */
export interface Arrangement {
  name: string;
  /** For whom it is, in a sentence. */
  suits?: string;
  standoffs: readonly PlanPoint[];
  items: readonly FitItem[];
}

/** An end of the plate that narrows on both sides. */
export interface PlateTaper {
  /** Width at the very end [m]. */
  width: number;
  /** Over which it narrows [m]. */
  length: number;
}

/** Outline of the plate from above: a rectangle, its ends narrowed where stated. */
export interface PlateOutline {
  /** Fore and aft [m]. */
  length: number;
  /** Across, where it is widest [m]. */
  width: number;
  /** Middle of the plate ahead of the middle of the motors; 0 where not given [m]. */
  x?: number;
  nose?: PlateTaper;
  tail?: PlateTaper;
}

/** Air that has to stay, nothing moving [m]. */
export interface FitClearance {
  /** From a part to a standoff. */
  columns: number;
  /** From part to part. */
  items: number;
  /** From a part inwards to the edge of the plate. */
  edge: number;
  /** Over the tallest part. */
  height: number;
}
