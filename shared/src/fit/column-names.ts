import type { PlanPoint } from './types.ts';

const SAME = 1e-6;

/** Standoffs that share a station fore and aft, foremost first, as indices. */
export function stations(columns: readonly PlanPoint[]): readonly (readonly number[])[] {
  const order = columns.map((_, i) => i).sort((a, b) => columns[b]!.x - columns[a]!.x);
  const groups: number[][] = [];
  for (const i of order) {
    const last = groups.at(-1);
    if (last && columns[last[0]!]!.x - columns[i]!.x < SAME) last.push(i);
    else groups.push([i]);
  }
  return groups;
}

function stationName(i: number, count: number): string {
  if (count === 1) return '';
  if (i === 0) return 'front ';
  if (i === count - 1) return 'rear ';
  return count === 3 ? 'middle ' : `${['second', 'third', 'fourth'][i - 1] ?? `${i + 1}th`} `;
}

/** What collisions call each standoff: `front left standoff`. */
export function columnNames(columns: readonly PlanPoint[]): readonly string[] {
  const groups = stations(columns);
  const names = columns.map(() => '');
  groups.forEach((group, station) => {
    for (const i of group) {
      const { y } = columns[i]!;
      // The outermost of a side has the plain name; others of the same side are inner ones.
      const inner = group.some((j) => columns[j]!.y * y > 0 && Math.abs(columns[j]!.y) > Math.abs(y) + SAME);
      const side = Math.abs(y) < SAME ? 'centre' : `${inner ? 'inner ' : ''}${y > 0 ? 'left' : 'right'}`;
      names[i] = `${stationName(station, groups.length)}${side} standoff`;
    }
  });
  return names;
}

/** One name for standoffs of a station: `front standoffs`, or its own where there is one. */
export function stationLabel(names: readonly string[], group: readonly number[]): string {
  const first = names[group[0] ?? -1] ?? '';
  return group.length > 1 ? first.replace(/(inner )?(left|right|centre) standoff$/, 'standoffs') : first;
}
