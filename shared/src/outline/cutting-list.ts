import { armAxis } from './arm-shape.ts';
import type { FrameOutline } from './frame-outline.ts';
import { requireOutline } from './require-outline.ts';

/** What is alike in name and size. */
export interface Alike {
  /** `arm`; of holes what goes through them: `root screw`, `standoff screw`, `screw of flight controller`. */
  name: string;
  /** Length of an arm from end to end, diameter of a hole as drilled [m]. */
  size: number;
  /** Holes: places in the plan. A place is drilled through every part that lies there. */
  count: number;
}

function alike(parts: readonly { name: string; size: number }[]): Alike[] {
  const found = new Map<string, Alike>();
  for (const { name, size } of parts) {
    const key = `${name} ${Math.round(size * 1e6)}`;
    found.set(key, { name, size, count: (found.get(key)?.count ?? 0) + 1 });
  }
  return [...found.values()];
}

/**
 * What a cutter must be told of a frame beside its lines: to what length arms are cut, and which holes there are.
 * @param outline - the frame [m]
 * @returns arms and holes, alike ones together, each with size [m] and count; holes of the roots first
 * @validity sizes that differ by less than a micron are one; holes that the outline lacks, as those of the motors, are not told
 * @throws InputError when a size or place in the outline can't be drawn
 * @derivation counted over the outline
 */
export function cuttingList(outline: FrameOutline): { arms: Alike[]; holes: Alike[] } {
  requireOutline(outline);
  const { arms, holes } = outline;
  return {
    arms: alike(arms.map((arm) => ({ name: 'arm', size: armAxis(arm).length }))),
    holes: alike([
      ...arms.flatMap(({ rootScrews }) => rootScrews.map(({ diameter }) => ({ name: 'root screw', size: diameter }))),
      ...holes.map(({ name, diameter }) => ({ name, size: diameter })),
    ]),
  };
}
