import type { PlanPoint } from '../layout/motor-layout.ts';
import { sidesOf } from '../polygon.ts';
import { armAxis } from './arm-shape.ts';
import { plateCorners } from './flat-shape.ts';
import type { FrameOutline } from './frame-outline.ts';
import { between, type OutlineDimension } from './outline-dimension.ts';

/** What lies closer than this to a line lies on it [m]. */
const SAME = 1e-6;

/** Length and width of all plates together, each measured where corners are that have it. */
export function bodyDimensions({ plates }: FrameOutline): OutlineDimension[] {
  const corners = plates.flatMap(({ shape }) => plateCorners(shape));
  if (corners.length === 0) return [];
  const least = (of: (point: PlanPoint) => number): PlanPoint =>
    corners.reduce((best, point) => (of(point) < of(best) ? point : best));
  const [left, right] = [least(({ x }) => x), least(({ x }) => -x)];
  const [rear, front] = [least(({ y }) => y), least(({ y }) => -y)];
  const [low, aside] = [Math.min(left.y, right.y), Math.max(rear.x, front.x)];
  return [
    between('body length', { x: aside, y: rear.y }, { x: aside, y: front.y }),
    between('body width', { x: left.x, y: low }, { x: right.x, y: low }),
  ];
}

/** Spacings of four standoffs in an upright rectangle, on its left and its rear; of no other layout. */
export function standoffSpacings({ standoffs }: FrameOutline): OutlineDimension[] {
  const [xs, ys] = [standoffs.map(({ at }) => at.x), standoffs.map(({ at }) => at.y)];
  const [left, right, rear, front] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const corner = { x: left, y: rear };
  const others = [
    { x: right, y: rear },
    { x: right, y: front },
    { x: left, y: front },
  ] as const;
  const taken = [corner, ...others].every((place) =>
    standoffs.some(({ at }) => Math.hypot(at.x - place.x, at.y - place.y) < SAME),
  );
  if (standoffs.length !== 4 || !taken || right - left < SAME || front - rear < SAME) return [];
  return [between('standoffs along', corner, others[2]), between('standoffs across', corner, others[0])];
}

/** Width of the tongue along the last arm, where its end stands out of the lowest plate whole. */
export function tongueWidth({ plates, arms }: FrameOutline): OutlineDimension[] {
  const [plate, arm] = [plates[0], arms.at(-1)];
  if (!plate || !arm) return [];
  const { along } = armAxis(arm);
  const end = sidesOf(plateCorners(plate.shape)).find(({ from, to }) => {
    const middle = { x: (from.x + to.x) / 2 - arm.innerEnd.x, y: (from.y + to.y) / 2 - arm.innerEnd.y };
    return (
      middle.x * along.x + middle.y * along.y > 0 &&
      Math.abs(middle.x * along.y - middle.y * along.x) < SAME &&
      Math.abs((to.x - from.x) * along.x + (to.y - from.y) * along.y) < SAME
    );
  });
  return end ? [between('tongue width', end.from, end.to)] : [];
}
