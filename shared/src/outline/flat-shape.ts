import type { PlanPoint } from '../layout/motor-layout.ts';
import type { OutlineBox, PlateShape } from './frame-outline.ts';

/** What a shape belongs to; `hidden` is an edge that something covers. */
export type DrawingLayer = 'plate' | 'arm' | 'propeller' | 'hardware' | 'electronics' | 'battery' | 'hidden';

/** A shape in a view: x to the right of the paper, y up [m]. */
export type FlatShape = { layer: DrawingLayer; name: string } & (
  | { kind: 'polygon'; points: readonly PlanPoint[] }
  | { kind: 'circle'; centre: PlanPoint; radius: number }
  | { kind: 'line'; from: PlanPoint; to: PlanPoint }
);

/** Rectangle from two opposite corners. */
export function rectangle(left: number, bottom: number, right: number, top: number): PlanPoint[] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

/** Corners of a plate, in order. */
export function plateCorners(shape: PlateShape): readonly PlanPoint[] {
  if (shape.kind === 'polygon') return shape.corners;
  const { centre, length, width, chamfer } = shape;
  const [w, l, c] = [width / 2, length / 2, chamfer];
  const right = [
    { x: w - c, y: -l },
    { x: w, y: c - l },
    { x: w, y: l - c },
    { x: w - c, y: l },
  ];
  const all = [...right, ...right.map(({ x, y }) => ({ x: -x, y: -y }))];
  return all.map(({ x, y }) => ({ x: centre.x + x, y: centre.y + y }));
}

/** Corners of a box as seen from the right: y to the right of the paper, z up. */
export function boxFromTheRight({ centre, size, tilt = 0 }: OutlineBox): PlanPoint[] {
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  return rectangle(-size.y / 2, -size.z / 2, size.y / 2, size.z / 2).map(({ x, y }) => ({
    x: centre.y + x * c - y * s,
    y: centre.z + x * s + y * c,
  }));
}

/** Corners of a box as seen from above. */
export function boxFromAbove({ centre, size, tilt = 0 }: OutlineBox): PlanPoint[] {
  const halfDepth = (size.y * Math.abs(Math.cos(tilt)) + size.z * Math.abs(Math.sin(tilt))) / 2;
  return rectangle(centre.x - size.x / 2, centre.y - halfDepth, centre.x + size.x / 2, centre.y + halfDepth);
}

/** Points of a shape that its extent can be taken from. */
export function extentPoints(shape: FlatShape): readonly PlanPoint[] {
  if (shape.kind === 'polygon') return shape.points;
  if (shape.kind === 'line') return [shape.from, shape.to];
  const { centre, radius } = shape;
  return [
    { x: centre.x - radius, y: centre.y - radius },
    { x: centre.x + radius, y: centre.y + radius },
  ];
}
