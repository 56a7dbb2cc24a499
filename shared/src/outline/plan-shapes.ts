import type { PlanPoint } from '../layout/motor-layout.ts';
import { piecesInside, sidesOf } from '../polygon.ts';
import { armCorners } from './arm-shape.ts';
import { boxFromAbove, plateCorners, type DrawingLayer, type FlatShape } from './flat-shape.ts';
import type { FrameOutline } from './frame-outline.ts';
import { requireOutline } from './require-outline.ts';

const polygon = (layer: DrawingLayer, name: string, points: readonly PlanPoint[]): FlatShape & { kind: 'polygon' } => ({
  kind: 'polygon',
  layer,
  name,
  points,
});
const circle = (layer: DrawingLayer, name: string, centre: PlanPoint, diameter: number): FlatShape => ({
  kind: 'circle',
  layer,
  name,
  centre,
  radius: diameter / 2,
});

/** Edges of a part where something above it covers them. */
function hiddenEdges(
  name: string,
  corners: readonly PlanPoint[],
  covers: readonly (readonly PlanPoint[])[],
): FlatShape[] {
  return sidesOf(corners)
    .flatMap((side) => piecesInside(side, covers))
    .map((piece) => ({ kind: 'line', layer: 'hidden', name, ...piece }));
}

/** A circle as a polygon that lies on it. */
function round(centre: PlanPoint, diameter: number): PlanPoint[] {
  return Array.from({ length: 96 }, (_, i) => ({
    x: centre.x + (diameter / 2) * Math.cos((i * Math.PI) / 48),
    y: centre.y + (diameter / 2) * Math.sin((i * Math.PI) / 48),
  }));
}

/**
 * The frame from above as flat shapes: x to the right, front upwards. Later shapes lie on earlier ones.
 * @param outline - the frame [m]
 * @returns shapes [m]: closed polygons and circles by part, and as `hidden` the edges that a plate or motor covers
 * @validity what lies between the plates (electronics, standoffs) is drawn as if the plates were clear
 * @throws InputError when a size or place in the outline can't be drawn
 * @derivation projection along z
 */
export function planShapes(outline: FrameOutline): FlatShape[] {
  requireOutline(outline);
  const plates = outline.plates.map((plate) => ({ ...plate, corners: plateCorners(plate.shape) }));
  const above = (z: number) => plates.filter((plate) => plate.z >= z).map(({ corners }) => corners);
  const bells = outline.motors.map(({ at, bellDiameter }) => round(at, bellDiameter));
  const lowest = Math.min(...plates.map(({ z }) => z));
  const battery = outline.battery && polygon('battery', outline.battery.name, boxFromAbove(outline.battery));
  const under = outline.battery !== undefined && outline.battery.centre.z < lowest;
  return [
    ...outline.propellers.map(({ name, at, diameter }) => circle('propeller', name, at, diameter)),
    ...(battery && under ? [battery] : []),
    ...outline.arms.map((arm) => polygon('arm', arm.name, armCorners(arm))),
    ...plates.map(({ name, corners }) => polygon('plate', name, corners)),
    ...outline.motors.map(({ name, at, bellDiameter }) => circle('hardware', name, at, bellDiameter)),
    ...outline.arms.flatMap((arm) => hiddenEdges(arm.name, armCorners(arm), [...above(arm.z), ...bells])),
    ...plates.flatMap(({ name, corners, z, thickness }) => hiddenEdges(name, corners, above(z + thickness))),
    ...(battery && under ? hiddenEdges(battery.name, battery.points, above(lowest)) : []),
    ...outline.electronics.map((box) => polygon('electronics', box.name, boxFromAbove(box))),
    ...outline.standoffs.map(({ at, diameter }) => circle('hardware', 'standoff', at, diameter)),
    ...outline.arms.flatMap(({ name, rootScrews }) =>
      rootScrews.map(({ at, diameter }) => circle('hardware', `root screw, ${name}`, at, diameter)),
    ),
    ...outline.holes.map(({ name, at, diameter }) => circle('hardware', name, at, diameter)),
    ...(battery && !under ? [battery] : []),
  ];
}
