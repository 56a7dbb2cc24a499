import { place, type FitBody } from './body.ts';
import { moversOf, separation, type Mover } from './movers.ts';
import type { Arrangement } from './types.ts';

export interface ShortestBody {
  /** Of the plate [m]. */
  length: number;
  /** The same parts in the same order, moved together where needed, on a plate whose middle is the old one's. */
  arrangement: Arrangement;
  /** What stands in one line from edge to edge and so decides the length, rear first. */
  decidedBy: readonly string[];
}

/**
 * Shortest plate on which an arrangement fits, its parts and standoffs moved together fore and aft in the order in which
 * they stand, nothing moved sideways. The longest chain of parts from edge to edge decides it.
 * $$u_j = \max\bigl(r_j,\ \max_{i<j}(u_i + s_{ij})\bigr),\quad L = \max_j (u_j + f_j)$$
 * @param body - plate, standoff diameter, clearances; the length of the plate plays no part
 * @param arrangement - standoffs and parts
 * @returns length [m], the arrangement so moved, and the chain; undefined where something reaches
 * past a side of the plate, standoffs side by side overlap, or there is nothing to fit
 * @validity the order stays as it is; the standoffs of one station move as one. Another order may be shorter
 * @throws InputError as findCollisions does
 * @source lengauer-1990-layout, one-dimensional compaction by longest paths
 */
export function shortestBody(body: FitBody, arrangement: Arrangement): ShortestBody | undefined {
  const placed = place(body, arrangement);
  const movers = moversOf(body, placed);
  if (!movers.every(({ rear, front }) => Number.isFinite(rear + front))) return undefined;
  const { plate } = body;
  const apart = movers.map((second, j) => movers.slice(0, j).map((first) => separation(first, second, body, placed)));
  const earliest: number[] = [];
  const from: (number | undefined)[] = [];
  movers.forEach(({ rear }, j) => {
    earliest[j] = rear;
    apart[j]!.forEach((s, i) => {
      if (earliest[i]! + s > earliest[j]! + 1e-12) {
        earliest[j] = earliest[i]! + s;
        from[j] = i;
      }
    });
  });
  const ends = movers.map(({ front }, j) => earliest[j]! + front);
  const tapers = (plate.nose?.length ?? 0) + (plate.tail?.length ?? 0);
  const length = Math.max(tapers, ...ends);
  if (length < 1e-4) return undefined;
  const latest: number[] = movers.map(({ front }) => length - front);
  for (let j = movers.length - 1; j >= 0; j--)
    apart[j]!.forEach((s, i) => (latest[i] = Math.min(latest[i]!, latest[j]! - s)));
  // Each stays as near to its old place as the others allow.
  const middle = plate.x ?? 0;
  const at: number[] = [];
  movers.forEach(({ x, rear }, j) => {
    const least = Math.max(rear, ...apart[j]!.map((s, i) => at[i]! + s));
    at[j] = Math.max(least, Math.min(latest[j]!, x - middle + length / 2));
  });
  const chain: string[] = [];
  for (let j: number | undefined = ends.indexOf(Math.max(...ends)); j !== undefined && j >= 0; j = from[j])
    chain.unshift(movers[j]!.name);
  return {
    length,
    arrangement: moved(
      arrangement,
      movers,
      at.map((u) => u - length / 2 + middle),
    ),
    decidedBy: tapers >= length ? ['the narrowing ends'] : chain,
  };
}

function moved(arrangement: Arrangement, movers: readonly Mover[], xs: readonly number[]): Arrangement {
  const standoffs = [...arrangement.standoffs];
  const items = new Map<string, number>();
  movers.forEach(({ name, columns }, j) => {
    for (const k of columns) standoffs[k] = { ...standoffs[k]!, x: xs[j]! };
    if (columns.length === 0) items.set(name, xs[j]!);
  });
  return { ...arrangement, standoffs, items: arrangement.items.map((item) => ({ ...item, x: items.get(item.name)! })) };
}
