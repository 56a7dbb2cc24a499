import type { FitBody } from './body.ts';
import { findCollisions, type Collision } from './collisions.ts';
import { freeMargins, type FreeMargins } from './margins.ts';
import { shortestBody, type ShortestBody } from './shortest-body.ts';
import { shortestStandoff, type ShortestStandoff } from './shortest-standoff.ts';
import type { HeightCase } from './standoff-in-hit.ts';
import type { Arrangement } from './types.ts';

export interface ArrangementCheck {
  collisions: readonly Collision[];
  /** Undefined where something reaches past a side of the plate. */
  shortestBody: ShortestBody | undefined;
  shortestStandoff: ShortestStandoff;
  freeMargins: FreeMargins;
  /** Of all parts [kg]. */
  mass: number;
  /** Centre of mass of the parts ahead of the middle; 0 where they weigh nothing [m]. */
  balance: number;
}

/**
 * Everything about one arrangement in one body: collisions, shortest plate, shortest standoff, air left, balance. Call it
 * for each of several arrangements to compare them.
 * $$\bar x = \frac{\sum m_i x_i}{\sum m_i}$$
 * @param body - plate, standoff diameter, clearances; what hangs, rise on the mounts, the hit
 * @param arrangement - standoffs and parts
 * @returns collisions, shortest body and standoff, margins, mass and balance
 * @validity as findCollisions, shortestBody and shortestStandoff
 * @throws InputError when a number is out of range, there is no part, or the standoffs leave the top plate free to move
 * @derivation puts the other functions of this topic together
 */
export function checkArrangement(body: FitBody & HeightCase, arrangement: Arrangement): ArrangementCheck {
  const mass = arrangement.items.reduce((sum, item) => sum + item.mass, 0);
  return {
    collisions: findCollisions(body, arrangement),
    shortestBody: shortestBody(body, arrangement),
    shortestStandoff: shortestStandoff(body, arrangement, body),
    freeMargins: freeMargins(body, arrangement),
    mass,
    balance: mass > 1e-9 ? arrangement.items.reduce((sum, { mass: m, x }) => sum + m * x, 0) / mass : 0,
  };
}
