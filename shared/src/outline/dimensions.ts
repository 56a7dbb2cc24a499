import type { PlanPoint } from '../layout/motor-layout.ts';
import { bodyDimensions, standoffSpacings, tongueWidth } from './body-dimensions.ts';
import { plateCorners } from './flat-shape.ts';
import type { FrameOutline } from './frame-outline.ts';
import { between, distance, type OutlineDimension } from './outline-dimension.ts';
import { extentOf } from './overall-size.ts';
import { requireOutline } from './require-outline.ts';
import { sideShapes } from './side-shapes.ts';

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

/**
 * The lengths that a plan of the frame should show.
 * @param outline - the frame [m]
 * @returns end points and values [m] of wheelbase, least tip gap, free length of an arm, spacing of
 *   its root screws, length and width of the body, spacings of the standoffs, width of the tongues
 * @validity a length whose parts are missing is left out; arm and screws are those of the first arm, the tongue is that of
 *   the last; standoffs are told only where four stand in a rectangle, a tongue only where its end stands out whole
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
  return [
    ...(apart ? [between('wheelbase', apart[0].at, apart[1].at)] : []),
    ...gaps.slice(0, 1),
    ...(outer && motor ? [between('arm length', outer, motor.at)] : []),
    ...(inner && outer && inner !== outer ? [between('screw spacing', inner, outer)] : []),
    ...bodyDimensions(outline),
    ...standoffSpacings(outline),
    ...tongueWidth(outline),
  ];
}

/**
 * The lengths that a side view of the frame should show.
 * @param outline - the frame [m]
 * @returns end points and values [m] of standoff length, total height and the thickness of each plate
 * @validity the standoff is the foremost one; thicknesses stand at the rear end of a plate and, of every second one, at the
 *   front end
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
    ...outline.plates.map(({ name, shape, z, thickness }, i) => {
      const ys = plateCorners(shape).map(({ y }) => y);
      const x = i % 2 === 0 ? Math.min(...ys) : Math.max(...ys);
      return between(`thickness of ${name}`, { x, y: z }, { x, y: z + thickness });
    }),
  ];
}
