import { requireBetween } from '../require.ts';
import { CATALOGUE_LENGTHS } from '../standoff/index.ts';
import { place, type FitBody } from './body.ts';
import { airOver, placedInHit, type HeightCase, type StandoffInHit } from './standoff-in-hit.ts';
import type { Arrangement } from './types.ts';

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
  inHit: StandoffInHit | undefined;
  /** Each length sold in the hit; empty without one. */
  lengths: readonly StandoffInHit[];
  /** Longest sold on which no standoff reaches a part sideways; undefined where even the shortest does [m]. */
  longest: number | undefined;
}

const LONGEST = CATALOGUE_LENGTHS.at(-1)!;
const sold = (needed: number) => CATALOGUE_LENGTHS.find((length) => length >= needed - 1e-9);

/**
 * Shortest standoff over an arrangement: by the height of its parts, and by the dip of the top plate in a nose-first hit,
 * which itself grows with the length. Also the longest on which the swaying standoffs stay clear of the parts.
 * $$L_1 \ge h + h_t + c + r,\qquad L_2 \ge h + h_t + c + r + w(L_2)$$
 * @param body - standoff diameter and clearance in height
 * @param arrangement - standoffs and parts
 * @param heights - what hangs, rise on the mounts, the hit
 * @returns needed and sold length by stack and by sway, sway and dip, longest that clears sideways [m]
 * @validity as topPlateInHit; the lengths sold are common practice
 * @throws InputError when a number is out of range, there is no part under the top plate, or the standoffs leave the top plate free to move
 * @derivation heights on one line add; the least fixed point of L = h + w(L) among the lengths sold
 */
export function shortestStandoff(body: FitBody, arrangement: Arrangement, heights: HeightCase): ShortestStandoff {
  const placed = place(body, arrangement);
  const covered = placed.items.filter(({ item }) => !item.openAbove);
  const { hit } = heights;
  requireBetween(covered.length, 1, 100, {
    parameter: 'items',
    quantity: 'number of parts under the top plate',
    kind: 'count',
  });
  const tallest = covered.reduce((best, item) => (item.top > best.top ? item : best));
  const needed = tallest.top + airOver(body, heights);
  const byStack = { needed, sold: sold(needed) };
  const base = { tallest: { name: tallest.item.name, top: tallest.top }, byStack };
  if (!hit) return { ...base, bySway: byStack, governs: 'stack', inHit: undefined, lengths: [], longest: LONGEST };
  const lengths = CATALOGUE_LENGTHS.map((length) => placedInHit(body, placed, heights, hit, length));
  const clearing = lengths.find(({ length, needed: least }) => length >= least - 1e-9);
  const inHit = clearing ?? lengths.at(-1)!;
  const bySway = { needed: inHit.needed, sold: clearing?.length };
  return {
    ...base,
    bySway,
    governs: byStack.sold === undefined || bySway.sold === byStack.sold ? 'stack' : 'sway',
    inHit,
    lengths,
    longest: lengths.filter(({ side }) => !side || side.gap > 0).at(-1)?.length,
  };
}
