import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';
import { PATTERN_SPACING, patternScrew } from './pattern-screw.ts';
import { requireFitPlace, requireFitSize } from './require-fit.ts';
import { tiltedBox } from './tilted-box.ts';
import { FIT_KINDS, SIDES, type FitItem, type WireRoom } from './types.ts';

/** An upright box, along the frame. */
export interface Box {
  x0: number;
  x1: number;
  y0: number;
  y1: number;
  z0: number;
  z1: number;
}

/** Body, lens, a nut on it, or the room for its wires. */
export type Role = 'body' | 'lens' | 'screw' | 'wires';

/** One box of an item. */
export interface Part {
  role: Role;
  box: Box;
}

/** The boxes that stand for one item. */
export interface PlacedItem {
  item: FitItem;
  parts: readonly Part[];
  /** Above the bottom plate [m]. */
  top: number;
}

const along = (from: number, to: number, width: number | undefined): readonly [number, number] => {
  const [middle, half] = [(from + to) / 2, Math.min(width ?? Infinity, to - from) / 2];
  return [middle - half, middle + half];
};

/** Room beside one side of a box. */
function beside(box: Box, { side, reach, width }: WireRoom): Box {
  const [x0, x1] = along(box.x0, box.x1, width);
  const [y0, y1] = along(box.y0, box.y1, width);
  if (side === 'front') return { ...box, y0, y1, x0: box.x1, x1: box.x1 + reach };
  if (side === 'rear') return { ...box, y0, y1, x0: box.x0 - reach, x1: box.x0 };
  if (side === 'left') return { ...box, x0, x1, y0: box.y1, y1: box.y1 + reach };
  return { ...box, x0, x1, y0: box.y0 - reach, y1: box.y0 };
}

/**
 * Refuses a part that no body holds, or whose screws do not pass its pattern.
 * @throws InputError when a number or a name is out of range.
 */
function requireItem(item: FitItem): void {
  const of = (what: string) => `${what} of ${item.name}`;
  if (typeof item.name !== 'string' || item.name.trim() === '')
    throw new InputError({
      parameter: 'name',
      quantity: 'name of a part',
      value: item.name,
      rule: 'must not be empty',
    });
  if (!FIT_KINDS.includes(item.kind))
    throw new InputError({
      parameter: 'kind',
      quantity: of('kind'),
      value: item.kind,
      rule: 'must be one of those listed',
    });
  requireFitSize(item.length, 'length', of('length'));
  requireFitSize(item.width, 'width', of('width'));
  requireFitSize(item.height, 'height', of('height'));
  requireFitPlace(item.x, 'x', of('place'));
  requireFitPlace(item.y, 'y', of('place'));
  requireBetween(item.z, 0, 1, { parameter: 'z', quantity: of('height above the plate'), kind: 'length' });
  requireBetween(item.mass, 0, 100, { parameter: 'mass', quantity: of('mass'), kind: 'mass' });
  requireBetween(item.overhang ?? 0, 0, 1, { parameter: 'overhang', quantity: of('overhang'), kind: 'length' });
  for (const { side, reach, width: wide } of item.wires ?? []) {
    if (!SIDES.includes(side))
      throw new InputError({
        parameter: 'wires',
        quantity: of('side of the wires'),
        value: side,
        rule: 'must be one of those listed',
      });
    requireBetween(reach, 0, 1, { parameter: 'wires', quantity: of('room for wires'), kind: 'length' });
    if (wide !== undefined) requireFitSize(wide, 'wires', of('room for wires'));
  }
  if (item.pattern && item.screw)
    patternScrew({ ...item.screw, pattern: item.pattern, boardSide: Math.min(item.length, item.width) });
}

/**
 * Boxes that stand for an item, in their places: its body as tilted, its lens, its heads or nuts, the room for its wires.
 * $$x = x_m \pm \tfrac{l'}{2},\quad y = y_m \pm \tfrac{w}{2},\quad z = z_0 \ldots z_0 + h'$$
 * @param item - the part [m]
 * @returns boxes, and the highest point above the bottom plate [m]
 * @validity a lying cylinder takes the room of its box; a nut that of a square
 * @throws InputError when a number or a name is out of range, or its screws do not pass its pattern
 * @derivation sides of upright boxes; see tiltedBox and patternScrew
 */
export function placeItem(item: FitItem): PlacedItem {
  requireItem(item);
  const { x, y, z, width } = item;
  const turned = tiltedBox({
    length: item.length,
    height: item.height,
    tilt: item.tilt ?? 0,
    ...(item.lens ? { lens: item.lens } : {}),
  });
  const half = turned.planLength / 2;
  const body: Box = {
    x0: x - half,
    x1: x + half,
    y0: y - width / 2,
    y1: y + width / 2,
    z0: z,
    z1: z + turned.height,
  };
  const parts: Part[] = [{ role: 'body', box: body }];
  if (turned.lens && item.lens) {
    const radius = item.lens.diameter / 2;
    const { rear, front, bottom, top } = turned.lens;
    const box = { x0: x + rear, x1: x + front, y0: y - radius, y1: y + radius, z0: z + bottom, z1: z + top };
    parts.push({ role: 'lens', box });
  }
  if (item.pattern && item.screw) {
    const [at, radius] = [PATTERN_SPACING[item.pattern] / 2, item.screw.across / 2];
    const z1 = body.z1 + item.screw.height;
    for (const [sx, sy] of [
      [1, 1],
      [1, -1],
      [-1, -1],
      [-1, 1],
    ] as const) {
      const [cx, cy] = [x + sx * at, y + sy * at];
      const box = { x0: cx - radius, x1: cx + radius, y0: cy - radius, y1: cy + radius, z0: z, z1 };
      parts.push({ role: 'screw', box });
    }
  }
  const top = Math.max(...parts.map(({ box }) => box.z1));
  for (const room of item.wires ?? []) if (room.reach > 0) parts.push({ role: 'wires', box: beside(body, room) });
  return { item, parts, top };
}
