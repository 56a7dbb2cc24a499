import { InputError } from '../error.ts';
import { requireFinite, requirePositive } from '../require.ts';

export interface Fastener {
  /** [m] */
  x: number;
  /** [m] */
  y: number;
  /** Weight in sharing, 1 where not given: its stress area over that of the others [-]. */
  weight?: number;
}

export interface GroupLoad {
  /** Force in the plane of the group [N]. */
  force: { x: number; y: number };
  /** Point that the force goes through [m]. */
  at: { x: number; y: number };
}

/**
 * How a force in the plane of a screw group is shared: equally as a force, and by distance from the centroid as a
 * moment.
 * $$F_i = \frac{w_i}{\sum w}V + \frac{M\,w_i\,r_i}{\sum w r^2}$$
 * @param fasteners - positions and weights
 * @param load - force and a point on its line
 * @returns force on the group's parts at each fastener [N]
 * @validity stiff parts, equal fits; friction left out
 * @throws InputError when there are fewer than two distinct positions or a number is out of range
 * @source shigley-2011-design, Example 8-7
 */
export function fastenerGroup(
  fasteners: readonly Fastener[],
  load: GroupLoad,
): { x: number; y: number; total: number }[] {
  const coordinate = (value: number): void =>
    requireFinite(value, { parameter: 'fasteners', quantity: 'position of a screw', kind: 'length' });
  const items = fasteners.map(({ x, y, weight = 1 }) => {
    coordinate(x);
    coordinate(y);
    requirePositive(weight, { parameter: 'fasteners', quantity: 'weight of a screw', kind: 'ratio' });
    return { x, y, weight };
  });
  for (const value of [load.force.x, load.force.y])
    requireFinite(value, { parameter: 'force', quantity: 'force on the group', kind: 'force' });
  for (const value of [load.at.x, load.at.y])
    requireFinite(value, { parameter: 'at', quantity: 'point of the force', kind: 'length' });
  const weights = items.reduce((sum, item) => sum + item.weight, 0);
  const centre = (axis: 'x' | 'y'): number => items.reduce((sum, item) => sum + item.weight * item[axis], 0) / weights;
  const [cx, cy] = [centre('x'), centre('y')];
  const polar = items.reduce((sum, item) => sum + item.weight * ((item.x - cx) ** 2 + (item.y - cy) ** 2), 0);
  if (!(polar > 1e-40)) {
    throw new InputError({
      parameter: 'fasteners',
      quantity: 'screw positions',
      value: items.length,
      rule: 'must be at least two different places',
    });
  }
  const moment = (load.at.x - cx) * load.force.y - (load.at.y - cy) * load.force.x;
  return items.map((item) => {
    const x = (item.weight * load.force.x) / weights - (moment * item.weight * (item.y - cy)) / polar;
    const y = (item.weight * load.force.y) / weights + (moment * item.weight * (item.x - cx)) / polar;
    return { x, y, total: Math.hypot(x, y) };
  });
}
