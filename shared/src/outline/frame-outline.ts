import type { PlanPoint } from '../layout/motor-layout.ts';

/**
 * The shape of a frame as far as a drawing needs it. Plain data in SI, safe to keep as JSON.
 *
 * Axes: x to the right, y forward, z up. The plan looks down on x and y; the side view looks at y and z from the right.
 * Origin: x and y in the middle of the motors, z at the underside of the lowest body plate.
 * `name` is what a reader sees at the part: `motor, front right`, `main plate`, `flight controller`.
 */
export interface FrameOutline {
  /** What the drawing is of: `Dunnock, revision D`. */
  name: string;
  motors: readonly OutlineMotor[];
  propellers: readonly OutlinePropeller[];
  arms: readonly OutlineArm[];
  /** From the lowest to the highest. */
  plates: readonly OutlinePlate[];
  standoffs: readonly OutlineStandoff[];
  /** Boards, camera, transmitter and whatever else sits between the plates. */
  electronics: readonly OutlineBox[];
  battery?: OutlineBox;
  /** Holes in arms and plates other than those of root screws: board patterns, standoff screws, motor patterns. */
  holes: readonly OutlineHole[];
}

/** A motor: a cylinder over its mounting face. */
export interface OutlineMotor {
  name: string;
  at: PlanPoint;
  /** Of the bell, outside [m]. */
  bellDiameter: number;
  /** Of the mounting face above the origin [m]. */
  z: number;
  /** From the mounting face to where the propeller seats [m]. */
  height: number;
}

/** A propeller as the disc that its tips run round. */
export interface OutlinePropeller {
  name: string;
  at: PlanPoint;
  /** [m] */
  diameter: number;
  /** Of the disc above the origin [m]. */
  z: number;
}

/** A tube, or a strip cut from plate whose width runs straight from root to tip. */
export type ArmSection =
  | { kind: 'tube'; outerDiameter: number; wall: number }
  | { kind: 'strip'; rootWidth: number; tipWidth: number; thickness: number };

/** A straight arm. */
export interface OutlineArm {
  name: string;
  section: ArmSection;
  /** End inside the body. */
  innerEnd: PlanPoint;
  /** End beyond or at the motor. */
  outerEnd: PlanPoint;
  /** Of the middle of the section above the origin [m]. */
  z: number;
  /** Inner one first. */
  rootScrews: readonly OutlineScrew[];
}

export interface OutlineScrew {
  at: PlanPoint;
  /** Of the hole [m]. */
  diameter: number;
}

/** `polygon`: corners in order. `chamfered`: a rectangle whose four corners are cut at 45°, `chamfer` off each side. */
export type PlateShape =
  | { kind: 'polygon'; corners: readonly PlanPoint[] }
  | { kind: 'chamfered'; centre: PlanPoint; length: number; width: number; chamfer: number };

/** A flat body plate. Length is fore and aft, width from side to side. */
export interface OutlinePlate {
  name: string;
  shape: PlateShape;
  /** Of its underside above the origin [m]. */
  z: number;
  /** [m] */
  thickness: number;
}

/** A round post between two plates. */
export interface OutlineStandoff {
  at: PlanPoint;
  /** Outside [m]. */
  diameter: number;
  /** Of its foot above the origin [m]. */
  z: number;
  /** [m] */
  length: number;
}

/** A box, upright but for a tilt of its nose. */
export interface OutlineBox {
  name: string;
  /** Middle of the box; z above the origin [m]. */
  centre: { x: number; y: number; z: number };
  /** Untilted: x from side to side, y fore and aft, z high [m]. */
  size: { x: number; y: number; z: number };
  /** Nose up, about the axis from side to side through the centre [rad]; none where not given. */
  tilt?: number;
}

export interface OutlineHole {
  name: string;
  at: PlanPoint;
  /** [m] */
  diameter: number;
}
