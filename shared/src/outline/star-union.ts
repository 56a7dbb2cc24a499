import type { PlanPoint } from '../layout/motor-layout.ts';
import { crossing, isInside, sidesOf } from '../polygon.ts';

/** Points closer than this are one [m]. */
const SAME = 1e-7;

/**
 * Outline of several polygons together, each of which can be seen whole from the origin: a body with tongues for its arms.
 * Corners come anticlockwise.
 */
export function starUnion(polygons: readonly (readonly PlanPoint[])[]): PlanPoint[] {
  const sides = polygons.map(sidesOf);
  const met = sides.flatMap((own, i) => {
    const later = sides.slice(i + 1).flat();
    return own.flatMap((side) => later.flatMap((other) => crossing(side, other)?.point ?? []));
  });
  const outer = [...polygons.flat(), ...met].filter(
    (point) => Math.hypot(point.x, point.y) > SAME && !polygons.some((corners) => isInside(corners, point)),
  );
  const turn = ({ x, y }: PlanPoint): number => Math.atan2(y, x);
  const sorted = outer.sort((a, b) => turn(a) - turn(b));
  return sorted.filter((point, i) => {
    const last = sorted.at(i - 1) as PlanPoint;
    return Math.hypot(point.x - last.x, point.y - last.y) > SAME;
  });
}
