import type { PlanPoint } from '../layout/motor-layout.ts';
import { plateCorners } from './flat-shape.ts';
import type { FrameOutline } from './frame-outline.ts';
import { extentOf } from './overall-size.ts';
import { requireOutline } from './require-outline.ts';
import { sideShapes } from './side-shapes.ts';

export type DimensionName =
  | 'wheelbase'
  | 'tip gap'
  | 'arm length'
  | 'screw spacing'
  | 'body length'
  | 'body width'
  | 'standoff length'
  | 'total height';

/** A length to show in a view. */
export interface OutlineDimension {
  name: DimensionName;
  from: PlanPoint;
  to: PlanPoint;
  /** Between the two points; a tip gap is negative where the circles overlap [m]. */
  value: number;
}

const distance = (a: PlanPoint, b: PlanPoint): number => Math.hypot(b.x - a.x, b.y - a.y);

const between = (name: DimensionName, from: PlanPoint, to: PlanPoint): OutlineDimension => ({
  name,
  from,
  to,
  value: distance(from, to),
});

const pairs = <T>(list: readonly T[]): [T, T][] => list.flatMap((a, i) => list.slice(i + 1).map((b): [T, T] => [a, b]));

/** Ends of the gap between two propeller circles, on the line between their axes. */
function gap([a, b]: [FrameOutline['propellers'][number], FrameOutline['propellers'][number]]): OutlineDimension {
  const spacing = distance(a.at, b.at);
  const on = (radius: number, from: PlanPoint, to: PlanPoint): PlanPoint => ({
    x: from.x + ((to.x - from.x) * radius) / spacing,
    y: from.y + ((to.y - from.y) * radius) / spacing,
  });
  return {
    name: 'tip gap',
    from: on(a.diameter / 2, a.at, b.at),
    to: on(b.diameter / 2, b.at, a.at),
    value: spacing - (a.diameter + b.diameter) / 2,
  };
}

/** Length and width of all plates together, each measured where corners are that have it. */
function bodyDimensions(corners: readonly PlanPoint[]): OutlineDimension[] {
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

/**
 * The lengths that a plan of the frame should show.
 * @param outline - the frame [m]
 * @returns end points and values [m] of wheelbase, least tip gap, free arm length, root screw spacing, body length and width
 * @validity a length whose parts are missing is left out; arm and screws are those of the first arm
 * @throws InputError when a size or place in the outline can't be drawn
 * @derivation distances between points of the outline
 */
export function planDimensions(outline: FrameOutline): OutlineDimension[] {
  requireOutline(outline);
  const apart = pairs(outline.motors)
    .filter(([a, b]) => distance(a.at, b.at) > 0)
    .sort(([a, b], [c, d]) => distance(c.at, d.at) - distance(a.at, b.at))[0];
  const gaps = pairs(outline.propellers)
    .filter(([a, b]) => distance(a.at, b.at) > 0)
    .map(gap)
    .sort((a, b) => a.value - b.value);
  const arm = outline.arms[0];
  const [inner, outer] = [arm?.rootScrews[0]?.at, arm?.rootScrews.at(-1)?.at];
  const motor =
    arm && [...outline.motors].sort((a, b) => distance(a.at, arm.outerEnd) - distance(b.at, arm.outerEnd))[0];
  const corners = outline.plates.flatMap(({ shape }) => plateCorners(shape));
  return [
    ...(apart ? [between('wheelbase', apart[0].at, apart[1].at)] : []),
    ...gaps.slice(0, 1),
    ...(outer && motor ? [between('arm length', outer, motor.at)] : []),
    ...(inner && outer && inner !== outer ? [between('screw spacing', inner, outer)] : []),
    ...(corners.length > 0 ? bodyDimensions(corners) : []),
  ];
}

/**
 * The lengths that a side view of the frame should show.
 * @param outline - the frame [m]
 * @returns end points and values [m] of standoff length and total height
 * @validity the standoff is the foremost one
 * @throws InputError when a size or place in the outline can't be drawn
 * @derivation distances between points of the outline
 */
export function sideDimensions(outline: FrameOutline): OutlineDimension[] {
  const { left, bottom, top } = extentOf(sideShapes(outline));
  const standoff = [...outline.standoffs].sort((a, b) => b.at.y - a.at.y)[0];
  return [
    ...(standoff
      ? [
          between(
            'standoff length',
            { x: standoff.at.y, y: standoff.z },
            { x: standoff.at.y, y: standoff.z + standoff.length },
          ),
        ]
      : []),
    between('total height', { x: left, y: bottom }, { x: left, y: top }),
  ];
}
