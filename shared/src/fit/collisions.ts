import { edgeMargin, place, type FitBody } from './body.ts';
import { stationLabel, stations } from './column-names.ts';
import { collides, contactOfItems, contactWithColumn, escape, TOUCHING, type Contact } from './contact.ts';
import type { Part, Role } from './parts.ts';
import { plateEdges, type PlateEdge } from './plate-outline.ts';
import type { Arrangement, PlanPoint } from './types.ts';

export type Direction = 'forward' | 'rearward' | 'left' | 'right' | 'to either side' | 'up';

export interface Collision {
  kind: 'part' | 'standoff' | 'edge';
  /** What has to move. */
  mover: string;
  /** What it is too near to. */
  against: string;
  /** Which part of each comes nearest. */
  moverPart: Role;
  againstPart: Role;
  /** Distance now; negative is how deep they overlap [m]. */
  gap: number;
  /** Shortest single move that clears it [m]. */
  move: number;
  direction: Direction;
}

/** The shortest of the ways out; along the frame before across, either side where both are as far. */
function wayOut(contact: Contact): Pick<Collision, 'move' | 'direction'> {
  const [left, right] = [escape(contact.y, 1), escape(contact.y, -1)];
  const sideways: Direction = Math.abs(left - right) < TOUCHING ? 'to either side' : left < right ? 'left' : 'right';
  const ways: [number, Direction][] = [
    [escape(contact.x, 1), 'forward'],
    [escape(contact.x, -1), 'rearward'],
    [Math.min(left, right), sideways],
    ...(contact.z.length > 0 ? ([[escape(contact.z, 1), 'up']] as [number, Direction][]) : []),
  ];
  const [move, direction] = ways.reduce((best, way) => (way[0] < best[0] - TOUCHING ? way : best));
  return { move, direction };
}

/** An upright line as a part. */
const pointAt = ({ x, y }: PlanPoint): Part => ({
  role: 'body',
  box: { x0: x, x1: x, y0: y, y1: y, z0: 0, z1: 1 },
});

/** Outermost point of a part across an edge; wires may leave the plate. */
export const reachOf = (parts: readonly Part[], { nx, ny }: Pick<PlateEdge, 'nx' | 'ny'>): number =>
  Math.max(
    ...parts
      .filter(({ role }) => role !== 'wires')
      .map(({ box }) => (nx > 0 ? nx * box.x1 : nx * box.x0) + (ny > 0 ? ny * box.y1 : ny * box.y0)),
  );

/** Past an edge: `inside` is how far within it the outermost point must stay, `reach` n·p of that point. */
function pastEdge(mover: string, edge: PlateEdge, reach: number, inside: number): Collision[] {
  const over = reach - edge.d + inside;
  if (over <= TOUCHING) return [];
  const [alongX, alongY] = [Math.abs(edge.nx), Math.abs(edge.ny)];
  const along = alongX >= alongY;
  const direction = along ? (edge.nx > 0 ? 'rearward' : 'forward') : edge.ny > 0 ? 'right' : 'left';
  const move = over / (along ? alongX : alongY);
  const parts = { moverPart: 'body', againstPart: 'body' } as const;
  return [{ kind: 'edge', mover, against: edge.name, ...parts, gap: edge.d - reach, move, direction }];
}

/**
 * Everything that collides in an arrangement: part against part, part against standoff, part or standoff past the edge
 * of the plate. Each is named with the shortest single move that clears it.
 * $$g_x < c,\ g_y < c,\ g_z < 0;\qquad \operatorname{dist}(\text{box}, \text{axis}) < r + c;\qquad n\cdot p > d - c$$
 * @param body - plate, standoff diameter, clearances
 * @param arrangement - standoffs and parts
 * @returns collisions: parts, standoffs, edges in that order [m]
 * @validity upright boxes along the frame, standoffs round from plate to plate; between two parts
 * the larger of the gaps along and across counts; a move may end in another collision
 * @throws InputError when a number is out of range, a name stands twice, or a screw does not pass its pattern
 * @source arvo-1990-boxes, box against disc
 */
export function findCollisions(body: FitBody, arrangement: Arrangement): readonly Collision[] {
  const { items, columns, names } = place(body, arrangement);
  const { clearance, standoffDiameter, plate } = body;
  const radius = standoffDiameter / 2;
  const edges = plateEdges(plate);
  const posts = stations(columns);
  const against = (kind: Collision['kind'], mover: string, other: string, contact: Contact): Collision[] =>
    collides(contact)
      ? [
          {
            kind,
            mover,
            against: other,
            moverPart: contact.role,
            againstPart: contact.otherRole,
            gap: contact.gap,
            ...wayOut(contact),
          },
        ]
      : [];
  return [
    ...items.flatMap(({ item, parts }, j) =>
      items
        .slice(0, j)
        .flatMap((other) =>
          against('part', item.name, other.item.name, contactOfItems(parts, other.parts, clearance.items)),
        ),
    ),
    ...items.flatMap(({ item, parts }) =>
      posts.flatMap((group) => {
        const each = group.map((k) => ({ k, ...contactWithColumn(parts, columns[k]!, radius, clearance.columns) }));
        const hit = each.filter(collides);
        const nearest = hit.reduce((least, contact) => (contact.gap < least.gap ? contact : least), hit[0] ?? each[0]!);
        // The way out has to clear every standoff of the station, not only the one that is met first.
        const all = { x: each.flatMap(({ x }) => x), y: each.flatMap(({ y }) => y), z: [] };
        return against(
          'standoff',
          item.name,
          stationLabel(
            names,
            hit.map(({ k }) => k),
          ),
          { ...nearest, ...all },
        );
      }),
    ),
    // Axis of one against a disc of twice the radius round the other.
    ...columns.flatMap((at, k) =>
      columns.slice(0, k).flatMap((other, l) => {
        const contact = contactWithColumn([pointAt(at)], other, standoffDiameter, 0);
        return against('standoff', names[k]!, names[l]!, contact);
      }),
    ),
    ...items.flatMap(({ item, parts }) =>
      edges.flatMap((edge) =>
        pastEdge(item.name, edge, reachOf(parts, edge), edgeMargin(item.overhang, clearance.edge)),
      ),
    ),
    ...columns.flatMap((at, k) =>
      edges.flatMap((edge) => pastEdge(names[k]!, edge, edge.nx * at.x + edge.ny * at.y + radius, clearance.edge)),
    ),
  ];
}
