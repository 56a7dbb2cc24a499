import { InputError } from '../error.ts';
import {
  findCollisions,
  freeMargins,
  placeItem,
  type Arrangement,
  type Collision,
  type FitBody,
  type PlacedItem,
} from '../fit/index.ts';
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

/** Puts the parts in their places; what cannot be is named by its path in the record, as a door would name it. */
function placeItems(record: FrameRecord, arrangement: Arrangement): PlacedItem[] {
  const at = `electronics.arrangements.${record.electronics.arrangements.indexOf(arrangement)}.items`;
  return arrangement.items.map((item, i) => {
    try {
      if (arrangement.items.findIndex(({ name }) => name === item.name) < i)
        throw new InputError({
          parameter: 'name',
          quantity: `name “${item.name}”`,
          value: item.name,
          rule: 'is another part’s already: collisions are told by names',
        });
      return placeItem(item);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const place = arrangement.name === record.electronics.current ? '' : `, in “${arrangement.name}”`;
      throw new InputError({
        ...error,
        parameter: `${at}.${i}.${error.parameter}`,
        quantity: `${error.quantity}${place}`,
      });
    }
  });
}

/** Air that the sheet asks for between parts, to standoffs and to the edge; common practice, no source. */
export const FIT_CLEARANCE = { columns: 0.5e-3, items: 0, edge: 0.5e-3, height: 0 } as const;

/** The main plate with its standoffs, as arrangements are fitted into it. */
export function fitBody({ body }: FrameRecord): FitBody {
  const end = { width: body.end, length: body.length / 2 };
  return {
    plate: { length: body.length, width: body.width, ...(body.end < body.width ? { nose: end, tail: end } : {}) },
    standoffDiameter: body.standoff.outerDiameter,
    clearance: FIT_CLEARANCE,
  };
}

/**
 * The smallest air gap that a moving top plate and its standoffs have to the electronics.
 * $$g = \min(\ell - z_{i,top},\; \operatorname{dist}(\text{standoff}_j, \text{box}_i) - \tfrac{D}{2})$$
 * @param record - a record
 * @returns gap; nothing or less where something touches already; the standoff's length where the body is empty [m]
 * @validity boxes as freeMargins takes them; parts with no plate above them count beside standoffs alone
 * @throws InputError where the arrangement in use is not there or a part cannot be
 * @derivation tops above the main plate, and freeMargins
 */
export function electronicsGap(record: FrameRecord): number {
  const arrangement = currentArrangement(record);
  const { length } = record.body.standoff;
  const above = placeItems(record, arrangement)
    .filter(({ item }) => !item.openAbove)
    .map(({ top }) => length - top);
  const beside = freeMargins(fitBody(record), arrangement).toStandoffs?.gap ?? length;
  return Math.min(length, beside, ...above);
}

/** One arrangement of a record, held against its body. */
export interface ArrangementFit {
  name: string;
  collisions: readonly Collision[];
  /** Parts that reach the top plate, and by how much [m]. */
  tooTall: readonly { name: string; by: number }[];
}

/**
 * Whether each arrangement of a record fits its body.
 * @param record - a valid record
 * @returns for each arrangement its collisions in plan, and parts that are too tall for the standoffs
 * @validity as findCollisions
 * @throws InputError where a part cannot be
 * @derivation findCollisions, and tops against the length of the standoffs
 */
export function frameFit(record: FrameRecord): ArrangementFit[] {
  const body = fitBody(record);
  const { length } = record.body.standoff;
  return record.electronics.arrangements.map((arrangement) => ({
    name: arrangement.name,
    // Before the collisions: an error there names no field.
    tooTall: placeItems(record, arrangement)
      .filter(({ item }) => !item.openAbove)
      .map(({ item, top }) => ({ name: item.name, by: top - length }))
      .filter(({ by }) => by > 0),
    collisions: findCollisions(body, arrangement),
  }));
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
