import type { InertiaTensor } from './inertia-tensor.ts';
import type { Orientation } from './rotation.ts';
import type { Vector } from './vector.ts';

/** A rigid part: mass, and inertia about its own centre of mass in its own axes. */
export interface Body {
  /** [kg] */
  mass: number;
  /** [kg·m²] */
  inertia: InertiaTensor;
}

/** A part in its place in the frame. */
export interface Placed {
  body: Body;
  /** Of its centre of mass [m]. */
  position: Vector;
  /** How it is turned; not turned where not given [rad]. */
  orientation?: Orientation;
}
