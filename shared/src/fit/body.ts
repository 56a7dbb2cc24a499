import { InputError } from '../error.ts';
import { columnNames } from './column-names.ts';
import { placeItem, type PlacedItem } from './parts.ts';
import { requireClearance, requireFitPlace, requireFitSize, requirePlate } from './require-fit.ts';
import type { Arrangement, FitClearance, PlanPoint, PlateOutline } from './types.ts';

/** What an arrangement is fitted into. */
export interface FitBody {
  plate: PlateOutline;
  /** Outside [m]. */
  standoffDiameter: number;
  clearance: FitClearance;
}

/** Items and standoffs of an arrangement, checked and in place. */
export interface Placed {
  items: readonly PlacedItem[];
  columns: readonly PlanPoint[];
  /** Of the columns. */
  names: readonly string[];
}

/** Checks a body and an arrangement, and puts the parts in their places. */
export function place(body: FitBody, { standoffs, items }: Arrangement): Placed {
  requirePlate(body.plate);
  requireClearance(body.clearance);
  requireFitSize(body.standoffDiameter, 'standoffDiameter', 'standoff diameter');
  const lists = [
    ['standoffs', standoffs],
    ['items', items],
  ] as const;
  for (const [parameter, list] of lists)
    if (!Array.isArray(list) || list.length > 100)
      throw new InputError({
        parameter,
        quantity: parameter,
        value: list?.length,
        rule: 'must be a list of at most',
        limit: 100,
      });
  for (const { x, y } of standoffs) {
    requireFitPlace(x, 'standoffs', 'place of a standoff');
    requireFitPlace(y, 'standoffs', 'place of a standoff');
  }
  const twice = items.find(({ name }, i) => items.findIndex((other) => other.name === name) !== i);
  if (twice)
    throw new InputError({ parameter: 'name', quantity: 'name of a part', value: twice.name, rule: 'stands twice' });
  return { items: items.map(placeItem), columns: standoffs, names: columnNames(standoffs) };
}

/** How far inside the edge a part must stay; below nothing where it is meant to stand past it. */
export const edgeMargin = (overhang: number | undefined, edge: number): number => (overhang ? -overhang : edge);
