import { extentPoints, type FlatShape } from './flat-shape.ts';
import type { FrameOutline } from './frame-outline.ts';
import { planShapes } from './plan-shapes.ts';
import { sideShapes } from './side-shapes.ts';

/** How much room the frame takes. */
export interface OverallSize {
  /** From side to side over the propeller circles [m]. */
  width: number;
  /** Fore and aft over the propeller circles [m]. */
  length: number;
  /** From the lowest to the highest point, battery and propellers included [m]. */
  height: number;
  /** Lowest point over the underside of the lowest plate [m]. */
  bottom: number;
  /** [m] */
  top: number;
}

/**
 * Extent of shapes, as a view must show them.
 * @param shapes - one or more shapes of a view [m]
 * @returns least and greatest x and y [m]
 * @validity at least one shape
 * @derivation extremes of corners and circles
 */
export function extentOf(shapes: readonly FlatShape[]): { left: number; right: number; bottom: number; top: number } {
  const points = shapes.flatMap(extentPoints);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/**
 * Overall size of a frame, everything in the outline counted.
 * @param outline - the frame [m]
 * @returns width, length and height [m], and where the lowest and highest points lie
 * @validity propellers count as flat discs
 * @throws InputError when a size or place in the outline can't be drawn
 * @derivation extent of the two views
 */
export function overallSize(outline: FrameOutline): OverallSize {
  const plan = extentOf(planShapes(outline));
  const { bottom, top } = extentOf(sideShapes(outline));
  return { width: plan.right - plan.left, length: plan.top - plan.bottom, height: top - bottom, bottom, top };
}
