import { InputError } from '../error.ts';
import { requireBetween, requireNotNegative, requirePositive } from '../require.ts';
import type { AreaMoments } from './polygon.ts';

/**
 * Second moment of an area about another parallel axis.
 * $$I = I_C + A\,(d_2^2 - d_1^2) \quad\text{from an axis at } d_1 \text{ from the centroid to one at } d_2$$
 * @param transfer - second moment about the first axis [m⁴], area [m²], distances of both axes from the centroid [m]
 * @returns second moment about the second axis [m⁴]
 * @validity both axes in the plane of the area and parallel
 * @throws InputError when a value is out of range, or the second moment is smaller than the area at that distance allows
 * @source pytel-2012-mechanics, Appendix A, parallel-axis theorem
 */
export function transferAreaMoment(transfer: { secondMoment: number; area: number; from: number; to: number }): number {
  const { secondMoment, area, from, to } = transfer;
  const subject = { parameter: 'secondMoment', quantity: 'second moment of area', kind: 'secondMomentOfArea' } as const;
  requireNotNegative(secondMoment, subject);
  requirePositive(area, { parameter: 'area', quantity: 'area', kind: 'area' });
  requireBetween(from, 0, 100, { parameter: 'from', quantity: 'distance of the first axis', kind: 'length' });
  requireBetween(to, 0, 100, { parameter: 'to', quantity: 'distance of the second axis', kind: 'length' });
  const least = area * from ** 2;
  if (secondMoment < least) {
    throw new InputError({
      ...subject,
      value: secondMoment,
      rule: 'must be at least the area times its distance squared',
      limit: least,
    });
  }
  return secondMoment + area * (to ** 2 - from ** 2);
}

/**
 * An area with cutouts: the cutouts are taken away about a common point, then all is moved to the common centroid.
 * $$A=A_0-\sum A_i,\quad \bar x=\frac{A_0\bar x_0-\sum A_i\bar x_i}{A},\quad I=\sum\pm\left(I_i+A_i d_i^2\right)$$
 * @param outer - moments of the outline
 * @param cutouts - moments of what is cut out of it
 * @returns moments of what is left, about its own centroid
 * @validity cutouts lie inside the outline and do not overlap
 * @throws InputError when the cutouts leave nothing
 * @source pytel-2012-mechanics, Appendix A, composite areas
 */
export function subtractAreas(outer: AreaMoments, cutouts: readonly AreaMoments[]): AreaMoments {
  const parts = [{ part: outer, sign: 1 }, ...cutouts.map((part) => ({ part, sign: -1 }))];
  const sum = (of: (part: AreaMoments) => number) =>
    parts.reduce((total, { part, sign }) => total + sign * of(part), 0);
  const area = sum((part) => part.area);
  const nothing = new InputError({
    parameter: 'cutouts',
    quantity: 'cutouts',
    value: 'given',
    rule: 'must leave some of the plate',
  });
  if (!(area > 1e-9 * outer.area)) throw nothing;
  // About the outline's centroid, not the origin, so that a plate far away keeps its digits.
  const dx = (part: AreaMoments) => part.centroid.x - outer.centroid.x;
  const dy = (part: AreaMoments) => part.centroid.y - outer.centroid.y;
  const u = sum((part) => part.area * dx(part)) / area;
  const v = sum((part) => part.area * dy(part)) / area;
  const aboutX = sum((part) => part.aboutX + part.area * dy(part) ** 2) - area * v * v;
  const aboutY = sum((part) => part.aboutY + part.area * dx(part) ** 2) - area * u * u;
  if (aboutX < 0 || aboutY < 0) throw nothing;
  const product = sum((part) => part.product + part.area * dx(part) * dy(part)) - area * u * v;
  return { area, centroid: { x: outer.centroid.x + u, y: outer.centroid.y + v }, aboutX, aboutY, product };
}
