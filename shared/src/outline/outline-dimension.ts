import type { PlanPoint } from '../layout/motor-layout.ts';

export type DimensionName =
  | 'wheelbase'
  | 'tip gap'
  | 'arm length'
  | 'screw spacing'
  | 'body length'
  | 'body width'
  | 'standoffs along'
  | 'standoffs across'
  | 'tongue width'
  | 'standoff length'
  | 'total height'
  | `thickness of ${string}`;

/** A length to show in a view. */
export interface OutlineDimension {
  name: DimensionName;
  from: PlanPoint;
  to: PlanPoint;
  /** Between the two points; a tip gap is negative where the circles overlap [m]. */
  value: number;
}

export const distance = (a: PlanPoint, b: PlanPoint): number => Math.hypot(b.x - a.x, b.y - a.y);

export const between = (name: DimensionName, from: PlanPoint, to: PlanPoint): OutlineDimension => ({
  name,
  from,
  to,
  value: distance(from, to),
});
