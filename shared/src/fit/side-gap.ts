import type { FreeMargin } from './margins.ts';
import type { PlacedItem } from './parts.ts';
import type { PlanPoint } from './types.ts';

/** Distance from a point to a rectangle in plan, 0 within. */
type Rectangle = Readonly<Record<'x0' | 'x1' | 'y0' | 'y1', number>>;
const toRectangle = (box: Rectangle, { x, y }: PlanPoint) =>
  Math.hypot(Math.max(box.x0 - x, x - box.x1, 0), Math.max(box.y0 - y, y - box.y1, 0));

function toSegment(point: PlanPoint, from: PlanPoint, by: PlanPoint): number {
  const square = by.x ** 2 + by.y ** 2;
  const share = square === 0 ? 0 : ((point.x - from.x) * by.x + (point.y - from.y) * by.y) / square;
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(from.x + t * by.x - point.x, from.y + t * by.y - point.y);
}

function crosses(box: Rectangle, from: PlanPoint, by: PlanPoint): boolean {
  let [enter, leave] = [0, 1];
  for (const axis of ['x', 'y'] as const) {
    const [low, high] = [box[`${axis}0`] - from[axis], box[`${axis}1`] - from[axis]];
    if (by[axis] === 0) {
      if (low > 0 || high < 0) return false;
      continue;
    }
    const [a, b] = [low / by[axis], high / by[axis]];
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  return enter <= leave;
}

/**
 * Least distance between a rectangle and the straight path of a point.
 * $$\min_{0\le t\le1}\operatorname{dist}(p + t\,d,\ R)$$
 * @param box - rectangle in plan [m]
 * @param from - start of the path [m]
 * @param by - movement [m]
 * @returns distance, 0 where the path meets the rectangle [m]
 * @validity any
 * @derivation of two convex shapes apart, a corner of one or an end of the other is nearest
 */
export function distanceToPath(box: Rectangle, from: PlanPoint, by: PlanPoint): number {
  if (crosses(box, from, by)) return 0;
  const corners = [box.x0, box.x1].flatMap((x) => [box.y0, box.y1].map((y) => toSegment({ x, y }, from, by)));
  return Math.min(toRectangle(box, from), toRectangle(box, { x: from.x + by.x, y: from.y + by.y }), ...corners);
}

/**
 * Nearest that a standoff comes to a part while its head moves. At a share s of the height an S has moved by 3s² - 2s³ of
 * its head, a standoff hinged at both ends by s: the larger of the two counts. Room for wires gives way.
 */
export function sideGap(
  items: readonly PlacedItem[],
  columns: readonly PlanPoint[],
  names: readonly string[],
  motion: { heads: readonly PlanPoint[]; length: number; radius: number },
): FreeMargin | undefined {
  let nearest: FreeMargin | undefined;
  for (const { item, parts } of items)
    for (const { role, box } of parts) {
      if (role === 'wires') continue;
      const s = Math.min(1, box.z1 / motion.length);
      const share = Math.max(s, s * s * (3 - 2 * s));
      columns.forEach((at, k) => {
        const head = motion.heads[k]!;
        // It cannot come nearer than its distance at rest less all of its way.
        const least = toRectangle(box, at) - share * Math.hypot(head.x, head.y) - motion.radius;
        if (nearest && least >= nearest.gap) return;
        const gap = distanceToPath(box, at, { x: head.x * share, y: head.y * share }) - motion.radius;
        if (!nearest || gap < nearest.gap) nearest = { gap, of: item.name, to: names[k]! };
      });
    }
  return nearest;
}
