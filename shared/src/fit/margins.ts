import { place, type FitBody } from './body.ts';
import { reachOf } from './collisions.ts';
import { contactOfItems, contactWithColumn } from './contact.ts';
import { plateEdges } from './plate-outline.ts';
import type { Arrangement } from './types.ts';

/** The nearest two of a kind. */
export interface FreeMargin {
  /** Between them, clearance not taken off; negative is how deep they overlap [m]. */
  gap: number;
  of: string;
  to: string;
}

/** Undefined where there is no such pair. */
export interface FreeMargins {
  toStandoffs: FreeMargin | undefined;
  /** In plan, of parts that share a height. */
  betweenParts: FreeMargin | undefined;
  /** From parts not meant to stand past it. */
  toEdge: FreeMargin | undefined;
}

const nearest = (margins: readonly FreeMargin[]): FreeMargin | undefined =>
  margins.reduce<FreeMargin | undefined>((best, margin) => (best && best.gap <= margin.gap ? best : margin), undefined);

/**
 * Air that an arrangement leaves: the nearest part and standoff, the nearest two parts, the part nearest to the edge.
 * $$g = \min_{i,j}\,\operatorname{dist}(i, j)$$
 * @param body - plate and standoff diameter
 * @param arrangement - standoffs and parts
 * @returns least gap of each kind, and between which [m]
 * @validity as findCollisions; room for wires counts as part of its item against standoffs and other parts
 * @throws InputError as findCollisions does
 * @derivation distances of boxes, discs and straight edges, least over all pairs
 */
export function freeMargins(body: FitBody, arrangement: Arrangement): FreeMargins {
  const { items, columns, names } = place(body, arrangement);
  const edges = plateEdges(body.plate);
  return {
    toStandoffs: nearest(
      items.flatMap(({ item, parts }) =>
        columns.map((at, k) => {
          const { gap } = contactWithColumn(parts, at, body.standoffDiameter / 2, 0);
          return { gap, of: item.name, to: names[k]! };
        }),
      ),
    ),
    betweenParts: nearest(
      items.flatMap(({ item, parts }, j) =>
        items.slice(0, j).flatMap((other) => {
          const { gap, sharesHeight } = contactOfItems(parts, other.parts, 0);
          return sharesHeight ? [{ gap, of: item.name, to: other.item.name }] : [];
        }),
      ),
    ),
    toEdge: nearest(
      items
        .filter(({ item }) => !item.overhang)
        .flatMap(({ item, parts }) =>
          edges.map((edge) => ({ gap: edge.d - reachOf(parts, edge), of: item.name, to: edge.name })),
        ),
    ),
  };
}
