import { InputError } from '../error.ts';
import { polygonMoments } from '../mass/polygon.ts';
import { distanceToOutline, isInside } from '../polygon.ts';
import { requireBetween } from '../require.ts';
import { plateCorners } from './flat-shape.ts';
import type { OutlinePlate, OutlineScrew } from './frame-outline.ts';

/**
 * Area of a plate less the holes that are drilled in it.
 * $$A = A_\text{outline} - \sum \tfrac{\pi}{4} d^2$$
 * @param plate - the plate [m]
 * @param holes - places and diameters; those beside the plate don't count [m]
 * @returns area [m²]
 * @validity holes that don't cut each other or the edge
 * @throws InputError when the outline has fewer than three corners, or the holes leave nothing
 * @derivation area of a polygon less circles
 */
export function plateArea(plate: OutlinePlate, holes: readonly OutlineScrew[]): number {
  const corners = plateCorners(plate.shape);
  const whole = polygonMoments(corners).area;
  const drilled = holes
    .filter(({ at }) => isInside(corners, at))
    .reduce((sum, { diameter }) => sum + (Math.PI / 4) * diameter ** 2, 0);
  if (drilled >= whole)
    throw new InputError({
      parameter: 'holes',
      quantity: 'area of the holes',
      value: drilled,
      rule: 'must be less than that of the plate',
      kind: 'area',
    });
  return whole - drilled;
}

/**
 * Least plate between the edge of a hole and the edge of the plate.
 * @param plate - the plate [m]
 * @param holes - places and diameters [m]
 * @returns least distance from hole edge to plate edge [m]; negative where a hole breaks out or lies beside the plate
 * @validity outer edge alone: cutouts and neighbouring holes are not looked at
 * @throws InputError when there is no hole
 * @derivation distance of a point from the sides of a polygon
 */
export function leastEdgeDistance(plate: OutlinePlate, holes: readonly OutlineScrew[]): number {
  requireBetween(holes.length, 1, 1000, { parameter: 'holes', quantity: 'number of holes', kind: 'count' });
  const corners = plateCorners(plate.shape);
  return Math.min(
    ...holes.map(({ at, diameter }) => {
      const nearest = distanceToOutline(corners, at);
      return (isInside(corners, at) ? nearest : -nearest) - diameter / 2;
    }),
  );
}
