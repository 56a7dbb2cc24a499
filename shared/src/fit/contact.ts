import type { Box, Part, Role } from './parts.ts';
import type { PlanPoint } from './types.ts';

/** Less than this is rounding, not a collision [m]. */
export const TOUCHING = 1e-9;

/** Open interval of displacements along one axis that collide. */
export type Blocked = readonly [from: number, to: number];

/** What blocks an item along each axis, and the least distance now; negative is how deep they overlap. */
export interface Contact {
  x: readonly Blocked[];
  y: readonly Blocked[];
  /** Empty where lifting is no way out. */
  z: readonly Blocked[];
  gap: number;
  /** Which part of each comes that near. */
  role: Role;
  otherRole: Role;
}

export interface ContactOfItems extends Contact {
  /** Whether any two of their boxes overlap in height. */
  sharesHeight: boolean;
}

const spanOf = (p: Box, q: Box, axis: 'x' | 'y' | 'z', air: number): Blocked => [
  q[`${axis}0`] - air - p[`${axis}1`],
  q[`${axis}1`] + air - p[`${axis}0`],
];
const has = ([from, to]: Blocked, at = 0) => from < at - TOUCHING && to > at + TOUCHING;
const apart = ([from, to]: Blocked) => Math.max(from, -to);

/** Item against item: air in plan, none needed upright. Room for wires is air already, and wires may cross. */
export function contactOfItems(mover: readonly Part[], other: readonly Part[], air: number): ContactOfItems {
  const found = { x: [] as Blocked[], y: [] as Blocked[], z: [] as Blocked[] };
  let gap = Infinity;
  let roles: Pick<Contact, 'role' | 'otherRole'> = { role: 'body', otherRole: 'body' };
  let sharesHeight = false;
  for (const p of mover)
    for (const q of other) {
      const wires = p.role === 'wires' || q.role === 'wires';
      if (p.role === 'wires' && q.role === 'wires') continue;
      const plan = wires ? 0 : air;
      const x = spanOf(p.box, q.box, 'x', plan);
      const y = spanOf(p.box, q.box, 'y', plan);
      const z = spanOf(p.box, q.box, 'z', 0);
      if (has(y) && has(z)) found.x.push(x);
      if (has(x) && has(z)) found.y.push(y);
      if (has(x) && has(y)) found.z.push(z);
      const here = Math.max(apart(x) + plan, apart(y) + plan, apart(z));
      if (here < gap) [gap, roles] = [here, { role: p.role, otherRole: q.role }];
      sharesHeight ||= has(z);
    }
  return { ...found, ...roles, gap, sharesHeight };
}

/** How far an upright cylinder of radius `reach` beside a span, `off` from it sideways, reaches along it. */
export const discReach = (reach: number, off: number): number =>
  off <= 0 ? reach : off >= reach ? 0 : Math.sqrt((reach - off) * (reach + off));

/** Distance from a point to a box in plan, 0 within. */
const planDistance = (box: Box, at: PlanPoint) =>
  Math.hypot(Math.max(box.x0 - at.x, at.x - box.x1, 0), Math.max(box.y0 - at.y, at.y - box.y1, 0));

/** Item against a standoff, which stands from plate to plate. */
export function contactWithColumn(mover: readonly Part[], at: PlanPoint, radius: number, air: number): Contact {
  const found = { x: [] as Blocked[], y: [] as Blocked[] };
  let gap = Infinity;
  let nearest: Role = 'body';
  for (const { role, box } of mover) {
    const reach = radius + (role === 'wires' ? 0 : air);
    const offX = Math.max(box.x0 - at.x, at.x - box.x1);
    const offY = Math.max(box.y0 - at.y, at.y - box.y1);
    if (offY < reach) {
      const along = discReach(reach, offY);
      found.x.push([at.x - along - box.x1, at.x + along - box.x0]);
    }
    if (offX < reach) {
      const along = discReach(reach, offX);
      found.y.push([at.y - along - box.y1, at.y + along - box.y0]);
    }
    const distance = planDistance(box, at);
    const here = distance > 0 ? distance - radius : Math.max(offX, offY) - radius;
    if (here < gap) [gap, nearest] = [here, role];
  }
  return { ...found, z: [], gap, role: nearest, otherRole: 'body' };
}

/** Whether anything collides as it stands. */
export const collides = (contact: Contact): boolean => contact.x.some((blocked) => has(blocked));

/** Shortest displacement to one side along an axis after which nothing blocks. */
export function escape(blocked: readonly Blocked[], sign: 1 | -1): number {
  let at = 0;
  for (let i = 0; i <= blocked.length; i++) {
    const hit = blocked.find((span) => has(span, at));
    if (!hit) break;
    at = sign > 0 ? hit[1] : hit[0];
  }
  return Math.abs(at);
}
