import { InputError } from '../error.ts';
import type { Arrangement } from '../fit/index.ts';
import type { FrameRecord } from './record.ts';

/**
 * The arrangement of the electronics that a record uses.
 * @param record - a record
 * @returns the arrangement whose name is the current one
 * @validity names are unique
 * @throws InputError where the record has none of that name
 * @derivation look-up
 */
export function currentArrangement({ electronics: { current, arrangements } }: FrameRecord): Arrangement {
  const found = arrangements.find(({ name }) => name === current);
  if (found) return found;
  throw new InputError({
    parameter: 'electronics.current',
    quantity: 'arrangement in use',
    value: current,
    rule: 'must be one of the arrangements by name',
  });
}

/**
 * The smallest air gap that a moving top plate and its standoffs have to the electronics.
 * $$g = \min(\ell - (z_i + h_i),\; \operatorname{dist}(\text{standoff}_j, \text{box}_i) - \tfrac{D}{2})$$
 * @param record - a record
 * @returns gap; nothing or less where something touches already; the standoff's length where the body is empty [m]
 * @validity boxes that lie along the frame, a camera's tilt left out
 * @throws InputError where the arrangement in use is not there
 * @derivation heights above the main plate, and distance of a point from a rectangle
 */
export function electronicsGap(record: FrameRecord): number {
  const { standoffs, items } = currentArrangement(record);
  const { length, outerDiameter } = record.body.standoff;
  return items.reduce((least, item) => {
    const above = length - (item.z + item.height);
    const beside = standoffs.map(({ x, y }) =>
      Math.hypot(
        Math.max(0, Math.abs(x - item.x) - item.length / 2),
        Math.max(0, Math.abs(y - item.y) - item.width / 2),
      ),
    );
    return Math.min(least, above, ...beside.map((distance) => distance - outerDiameter / 2));
  }, length);
}

/**
 * Side of the largest board: what the top plate moves over.
 * @param record - a record
 * @returns longest side of the boards, or 0 where there is none [m]
 * @validity boards stand over the middle
 * @throws InputError where the arrangement in use is not there
 * @derivation largest of their sides
 */
export function boardSide(record: FrameRecord): number {
  const boards = currentArrangement(record).items.filter(({ kind }) => kind === 'board');
  return Math.max(0, ...boards.map(({ length, width }) => Math.max(length, width)));
}
