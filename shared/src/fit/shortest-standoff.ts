import { requireBetween, requireNotNegative } from '../require.ts';
import { CATALOGUE_LENGTHS, shortestThatClears } from '../standoff/index.ts';
import { place, type FitBody } from './body.ts';
import type { FreeMargin } from './margins.ts';
import type { PlacedItem } from './parts.ts';
import { sideGap } from './side-gap.ts';
import { topPlateInHit, type BodyHit } from './top-plate-in-hit.ts';
import type { Arrangement, PlanPoint } from './types.ts';

/** What hangs over the parts, and the hit that the body has to stand; without a hit, only the stack counts. */
export interface HeightCase {
  /** Screw ends, strap or pad under the top plate [m]. */
  hanging: number;
  /** How far soft mounts let the parts rise [m]. */
  rise: number;
  hit?: BodyHit;
}

export interface LengthSold {
  /** Between the plates [m]. */
  needed: number;
  /** Shortest sold at or above it; undefined where none is long enough [m]. */
  sold: number | undefined;
}

export interface ShortestStandoff {
  /** The part that stands highest, and its top [m]. */
  tallest: { name: string; top: number };
  /** Parts, what hangs over them, air and rise, nothing else moving. */
  byStack: LengthSold;
  /** With the dip of the top plate in the hit on top of that. */
  bySway: LengthSold;
  /** Which of the two asks for the longer one sold. */
  governs: 'stack' | 'sway';
  /** In the hit, on the length that sway asks for, or the longest sold; undefined without a hit. */
  inHit: { length: number; sway: number; dip: number; folds: boolean; side: FreeMargin | undefined } | undefined;
  /** Longest sold on which no standoff reaches a part sideways; undefined where even the shortest does [m]. */
  longest: number | undefined;
}

const LONGEST = CATALOGUE_LENGTHS.at(-1)!;
const sold = (needed: number) =>
  needed > LONGEST + 1e-9 ? undefined : shortestThatClears({ height: needed, clearance: 0, movement: 0 }).length;

/** Largest need of any part: its top, and how far the plate comes down over its corners. */
function needWithDip(items: readonly PlacedItem[], over: number, dipAt: (point: PlanPoint) => number) {
  let [need, dip] = [0, 0];
  for (const { parts } of items)
    for (const { role, box } of parts) {
      if (role === 'wires') continue;
      for (const x of [box.x0, box.x1])
        for (const y of [box.y0, box.y1]) {
          const down = Math.max(0, dipAt({ x, y }));
          if (box.z1 + over + down > need) [need, dip] = [box.z1 + over + down, down];
        }
    }
  return { need, dip };
}

/**
 * Shortest standoff over an arrangement: by the height of its parts, and by the dip of the top plate in a nose-first hit,
 * which itself grows with the length. Also the longest on which the swaying standoffs stay clear of the parts.
 * $$L_1 \ge h + h_t + c + r,\qquad L_2 \ge h + h_t + c + r + w(L_2)$$
 * @param body - standoff diameter and clearance in height
 * @param arrangement - standoffs and parts
 * @param heights - what hangs, rise on the mounts, the hit
 * @returns needed and sold length by stack and by sway, sway and dip, longest that clears sideways [m]
 * @validity as topPlateInHit; the lengths sold are common practice
 * @throws InputError when a number is out of range, there is no part, or the standoffs leave the top plate free to move
 * @derivation heights on one line add; the least fixed point of L = h + w(L) among the lengths sold
 */
export function shortestStandoff(body: FitBody, arrangement: Arrangement, heights: HeightCase): ShortestStandoff {
  const { items, columns, names } = place(body, arrangement);
  const { hanging, rise, hit } = heights;
  requireNotNegative(hanging, { parameter: 'hanging', quantity: 'height of what hangs', kind: 'length' });
  requireNotNegative(rise, { parameter: 'rise', quantity: 'rise on soft mounts', kind: 'length' });
  requireBetween(items.length, 1, 100, { parameter: 'items', quantity: 'number of parts', kind: 'count' });
  const tallest = items.reduce((best, item) => (item.top > best.top ? item : best));
  const over = hanging + rise + body.clearance.height;
  const needed = tallest.top + over;
  const byStack = { needed, sold: sold(needed) };
  const base = { tallest: { name: tallest.item.name, top: tallest.top }, byStack };
  if (!hit) return { ...base, bySway: byStack, governs: 'stack', inHit: undefined, longest: LONGEST };
  const at = (length: number) => {
    const { heads, sway, dipAt, folds } = topPlateInHit(hit, columns, length);
    const side = sideGap(items, columns, names, { heads, length, radius: body.standoffDiameter / 2 });
    return { length, sway, folds, side, ...needWithDip(items, over, dipAt) };
  };
  let found = at(byStack.sold ?? LONGEST);
  for (const longer of CATALOGUE_LENGTHS.filter((length) => length > found.length)) {
    if (found.length >= found.need - 1e-9) break;
    found = at(longer);
  }
  const { need, ...inHit } = found;
  const clears = found.length >= need - 1e-9;
  const free = CATALOGUE_LENGTHS.findLast((length) => {
    const { side } = length === found.length ? found : at(length);
    return !side || side.gap > 0;
  });
  const bySway = { needed: need, sold: clears ? found.length : undefined };
  return {
    ...base,
    bySway,
    governs: byStack.sold === undefined || bySway.sold === byStack.sold ? 'stack' : 'sway',
    inHit,
    longest: free,
  };
}
