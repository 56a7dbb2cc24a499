import { edgeMargin, type FitBody, type Placed } from './body.ts';
import { stationLabel, stations } from './column-names.ts';
import { discReach } from './contact.ts';
import { endSetback } from './end-setback.ts';
import type { Box, Part } from './parts.ts';

/** Something that moves fore and aft as one: a part, or the standoffs of one station. */
export interface Mover {
  name: string;
  x: number;
  /** Boxes of a part; none for standoffs. */
  parts: readonly Part[];
  /** Standoffs of a station, as indices. */
  columns: readonly number[];
  /** Least distance from its own x to the rear and the front end of the plate. */
  rear: number;
  front: number;
}

const overlapsIn = (p: Box, q: Box, axis: 'y' | 'z', air: number) =>
  Math.min(p[`${axis}1`], q[`${axis}1`]) + air - Math.max(p[`${axis}0`], q[`${axis}0`]) > 1e-9;

/** Least distance fore and aft between two movers so that the second stands wholly ahead of the first. */
export function separation(first: Mover, second: Mover, body: FitBody, { columns }: Placed): number {
  const { clearance, standoffDiameter } = body;
  let least = -Infinity;
  const keep = (value: number) => (least = Math.max(least, value));
  const beside = (mover: Mover, other: Mover, sign: 1 | -1) => {
    for (const k of other.columns)
      for (const { role, box } of mover.parts) {
        const off = Math.max(box.y0 - columns[k]!.y, columns[k]!.y - box.y1);
        const reach = standoffDiameter / 2 + (role === 'wires' ? 0 : clearance.columns);
        if (off < reach - 1e-12) keep((sign > 0 ? box.x1 - mover.x : mover.x - box.x0) + discReach(reach, off));
      }
  };
  for (const p of first.parts)
    for (const q of second.parts) {
      if (p.role === 'wires' && q.role === 'wires') continue;
      const air = p.role === 'wires' || q.role === 'wires' ? 0 : clearance.items;
      if (overlapsIn(p.box, q.box, 'y', air) && overlapsIn(p.box, q.box, 'z', 0))
        keep(p.box.x1 - first.x + air + second.x - q.box.x0);
    }
  beside(first, second, 1);
  beside(second, first, -1);
  for (const k of first.columns)
    for (const l of second.columns) {
      const off = Math.abs(columns[k]!.y - columns[l]!.y);
      if (off < standoffDiameter - 1e-12) keep(discReach(standoffDiameter, off));
    }
  return least;
}

/** Parts and stations of standoffs in the order in which they stand, rear first. */
export function moversOf(body: FitBody, placed: Placed): Mover[] {
  const { plate, clearance, standoffDiameter } = body;
  const radius = standoffDiameter / 2;
  const setback = (end: 'nose' | 'tail', parts: readonly { y: number; ahead: number; air: number }[]) =>
    Math.max(...parts.map(({ y, ahead, air }) => ahead + endSetback(plate, end, y, air)));
  const items = placed.items.map(({ item, parts }): Mover => {
    const solid = parts.filter(({ role }) => role !== 'wires');
    const air = edgeMargin(item.overhang, clearance.edge);
    const outermost = ({ box }: Part) => Math.max(Math.abs(box.y0), Math.abs(box.y1));
    return {
      name: item.name,
      x: item.x,
      parts,
      columns: [],
      rear: setback(
        'tail',
        solid.map((part) => ({ y: outermost(part), ahead: item.x - part.box.x0, air })),
      ),
      front: setback(
        'nose',
        solid.map((part) => ({ y: outermost(part), ahead: part.box.x1 - item.x, air })),
      ),
    };
  });
  const posts = stations(placed.columns).map((group): Mover => {
    // A post is a point that keeps its radius and the clearance to every edge; two in one place fit on no plate.
    const meet = group.some((k, n) =>
      group.slice(0, n).some((l) => Math.abs(placed.columns[k]!.y - placed.columns[l]!.y) < standoffDiameter - 1e-9),
    );
    const points = group.map((k) => ({
      y: Math.abs(placed.columns[k]!.y),
      ahead: 0,
      air: meet ? Infinity : radius + clearance.edge,
    }));
    const name = stationLabel(placed.names, group);
    const x = placed.columns[group[0]!]!.x;
    return { name, x, parts: [], columns: group, rear: setback('tail', points), front: setback('nose', points) };
  });
  return [...items, ...posts]
    .map((mover, i) => ({ mover, i }))
    .sort((a, b) => a.mover.x - b.mover.x || a.i - b.i)
    .map(({ mover }) => mover);
}
