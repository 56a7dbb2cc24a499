import { requirePlate } from './require-fit.ts';
import type { PlanPoint, PlateOutline } from './types.ts';

/** A straight edge: points with n·p ≤ d are on the plate's side of it. */
export interface PlateEdge {
  name: string;
  nx: number;
  ny: number;
  d: number;
}

/**
 * Corners of the plate, from the front left anticlockwise as seen from above with the nose to the right.
 * $$x = \pm\tfrac{L}{2},\quad y = \pm\tfrac{w}{2}$$
 * @param plate - length, width, narrowed ends [m]
 * @returns corners [m]
 * @validity symmetric plate, straight edges, no cutouts
 * @throws InputError when a number is out of range or the ends are longer than the plate
 * @derivation coordinates of a rectangle, its ends drawn in
 */
export function plateCorners(plate: PlateOutline): readonly PlanPoint[] {
  requirePlate(plate);
  const { length, width, nose, tail } = plate;
  const middle = plate.x ?? 0;
  const [front, rear, half] = [middle + length / 2, middle - length / 2, width / 2];
  const left = [
    { x: front, y: (nose?.width ?? width) / 2 },
    ...(nose ? [{ x: front - nose.length, y: half }] : []),
    ...(tail ? [{ x: rear + tail.length, y: half }] : []),
    { x: rear, y: (tail?.width ?? width) / 2 },
  ];
  return [
    ...left,
    ...left
      .slice()
      .reverse()
      .map(({ x, y }) => ({ x, y: -y })),
  ];
}

/** Straight edges of a plate that passed requirePlate. */
export function plateEdges(plate: PlateOutline): readonly PlateEdge[] {
  const { length, width, nose, tail } = plate;
  const middle = plate.x ?? 0;
  const sides = [
    { name: 'left', sign: 1 },
    { name: 'right', sign: -1 },
  ] as const;
  const tapered = (end: 'front' | 'rear', sign: 1 | -1, taper: { width: number; length: number } | undefined) => {
    if (!taper || taper.width === width) return [];
    const slope = (width - taper.width) / 2 / taper.length;
    const scale = Math.hypot(1, slope);
    // y + slope (x - end) ≤ half the width at the end, and its mirror images.
    const nx = (sign * slope) / scale;
    const d = taper.width / 2 / scale + nx * (middle + (sign * length) / 2);
    return sides.map((side) => ({ name: `${end} ${side.name} edge`, nx, ny: side.sign / scale, d }));
  };
  return [
    { name: 'front edge', nx: 1, ny: 0, d: middle + length / 2 },
    { name: 'rear edge', nx: -1, ny: 0, d: length / 2 - middle },
    ...sides.map(({ name, sign }) => ({ name: `${name} edge`, nx: 0, ny: sign, d: width / 2 })),
    ...tapered('front', 1, nose),
    ...tapered('rear', -1, tail),
  ];
}
