import { requireNotNegative } from '../require.ts';
import { place, type FitBody, type Placed } from './body.ts';
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

export interface StandoffInHit {
  /** Of the standoffs [m]. */
  length: number;
  /** Parts, what hangs over them, air, rise and dip [m]. */
  needed: number;
  /** How far the top plate comes down over the part that decides it [m]. */
  dip: number;
  /** Largest movement of a head in plan [m]. */
  sway: number;
  folds: boolean;
  /** Nearest that a standoff comes to a part; undefined without standoffs. */
  side: FreeMargin | undefined;
}

/** Largest need of any part: its top, and how far the plate comes down over its corners. */
function needWithDip(items: readonly PlacedItem[], over: number, dipAt: (point: PlanPoint) => number) {
  let [need, dip] = [0, 0];
  for (const { item, parts } of items)
    for (const { role, box } of parts) {
      if (role === 'wires' || item.openAbove) continue;
      for (const x of [box.x0, box.x1])
        for (const y of [box.y0, box.y1]) {
          const down = Math.max(0, dipAt({ x, y }));
          if (box.z1 + over + down > need) [need, dip] = [box.z1 + over + down, down];
        }
    }
  return { need, dip };
}

/** Air over the tallest part that has to be there before anything dips. */
export function airOver(body: FitBody, { hanging, rise }: HeightCase): number {
  requireNotNegative(hanging, { parameter: 'hanging', quantity: 'height of what hangs', kind: 'length' });
  requireNotNegative(rise, { parameter: 'rise', quantity: 'rise on soft mounts', kind: 'length' });
  return hanging + rise + body.clearance.height;
}

/** As standoffInHit, of an arrangement that is already in place. */
export function placedInHit(
  body: FitBody,
  placed: Placed,
  heights: HeightCase,
  hit: BodyHit,
  length: number,
): StandoffInHit {
  const { items, columns, names } = placed;
  const { heads, sway, dipAt, folds } = topPlateInHit(hit, columns, length);
  const side = sideGap(items, columns, names, { heads, length, radius: body.standoffDiameter / 2 });
  const { need, dip } = needWithDip(items, airOver(body, heights), dipAt);
  return { length, needed: need, dip, sway, folds, side };
}

/**
 * One length of standoff in a nose-first hit: what has to lie between the plates, and how near the swaying standoffs come
 * to the parts.
 * $$h + h_t + c + r + w(L),\qquad \min_t\operatorname{dist}(p_i + t\,s\,\delta_i,\ \text{box}) - r_s$$
 * @param body - standoff diameter and clearance in height
 * @param arrangement - standoffs and parts
 * @param heights - what hangs, rise on the mounts
 * @param hit - the hit
 * @param length - of the standoffs [m]
 * @returns needed height, dip, sway, nearest standoff to part [m]
 * @validity as topPlateInHit; wires give way
 * @throws InputError when a number is out of range, or the standoffs leave the top plate free to move
 * @derivation at a share of its height an elastic S has moved by 3s² - 2s³ of its head, a hinged link by s: the larger
 * counts
 */
export function standoffInHit(
  body: FitBody,
  arrangement: Arrangement,
  heights: HeightCase,
  hit: BodyHit,
  length: number,
): StandoffInHit {
  return placedInHit(body, place(body, arrangement), heights, hit, length);
}
