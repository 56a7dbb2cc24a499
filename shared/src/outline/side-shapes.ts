import { armAxis, armSize } from './arm-shape.ts';
import {
  boxFromTheRight,
  extentPoints,
  plateCorners,
  rectangle,
  type DrawingLayer,
  type FlatShape,
} from './flat-shape.ts';
import type { FrameOutline } from './frame-outline.ts';
import { requireOutline } from './require-outline.ts';

const box = (layer: DrawingLayer, name: string, corners: readonly [number, number, number, number]): FlatShape => ({
  kind: 'polygon',
  layer,
  name,
  points: rectangle(...corners),
});

/** Of shapes that cover each other exactly, as left and right do, the first. */
function distinct(shapes: readonly FlatShape[]): FlatShape[] {
  const seen = new Set<string>();
  return shapes.filter((shape) => {
    const key =
      shape.layer +
      extentPoints(shape)
        .map(({ x, y }) => `${x.toFixed(7)},${y.toFixed(7)}`)
        .join(' ');
    return !seen.has(key) && seen.add(key);
  });
}

/**
 * The frame from the right as flat shapes: front to the right, up upwards. Later shapes lie on earlier ones.
 * @param outline - the frame [m]
 * @returns shapes [m]; x on the paper is forward, y on the paper is height over the underside of the lowest plate
 * @validity parts of equal outline behind each other are drawn once, under the name of the right one
 * @throws InputError when a size or place in the outline can't be drawn
 * @derivation projection along x; the end of a tube that comes towards the viewer shows as wide as its circle does
 */
export function sideShapes(outline: FrameOutline): FlatShape[] {
  requireOutline(outline);
  const nearFirst = <T extends { at: { x: number } }>(parts: readonly T[]): T[] =>
    [...parts].sort((a, b) => b.at.x - a.at.x);
  return distinct([
    ...nearFirst(outline.propellers).map(({ name, at, diameter, z }): FlatShape => ({
      kind: 'line',
      layer: 'propeller',
      name,
      from: { x: at.y - diameter / 2, y: z },
      to: { x: at.y + diameter / 2, y: z },
    })),
    ...(outline.battery
      ? [
          {
            kind: 'polygon',
            layer: 'battery',
            name: outline.battery.name,
            points: boxFromTheRight(outline.battery),
          } as const,
        ]
      : []),
    ...outline.electronics.map((part): FlatShape => ({
      kind: 'polygon',
      layer: 'electronics',
      name: part.name,
      points: boxFromTheRight(part),
    })),
    ...nearFirst(outline.standoffs).map(({ at, diameter, z, length }) =>
      box('hardware', 'standoff', [at.y - diameter / 2, z, at.y + diameter / 2, z + length]),
    ),
    ...[...outline.arms]
      .sort((a, b) => b.outerEnd.x - a.outerEnd.x)
      .map((arm) => {
        const { inner, outer, height } = armSize(arm.section);
        const { along } = armAxis(arm);
        const reach = (width: number) => (Math.abs(along.x) * width) / 2;
        const ends = [
          [arm.innerEnd.y, reach(inner)],
          [arm.outerEnd.y, reach(outer)],
        ] as const;
        return box('arm', arm.name, [
          Math.min(...ends.map(([y, half]) => y - half)),
          arm.z - height / 2,
          Math.max(...ends.map(([y, half]) => y + half)),
          arm.z + height / 2,
        ]);
      }),
    ...outline.plates.map(({ name, shape, z, thickness }) => {
      const ys = plateCorners(shape).map(({ y }) => y);
      return box('plate', name, [Math.min(...ys), z, Math.max(...ys), z + thickness]);
    }),
    ...nearFirst(outline.motors).map(({ name, at, bellDiameter, z, height }) =>
      box('hardware', name, [at.y - bellDiameter / 2, z, at.y + bellDiameter / 2, z + height]),
    ),
  ]);
}
