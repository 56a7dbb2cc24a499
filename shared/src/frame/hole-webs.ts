import type { FrameOutline } from '../outline/index.ts';

/** Less plate than this between two holes does not survive the drill; common practice, no source [m]. */
export const LEAST_WEB = 1e-3;

/** Two holes in one plate with too little between them. */
export interface ThinWeb {
  between: readonly [string, string];
  /** Plate left; below nothing where the holes run into each other [m]. */
  web: number;
}

/**
 * Pairs of holes in the main plate with too little plate between them.
 * $$w = \lvert p_i - p_j\rvert - \tfrac12(d_i + d_j) < 1\ \text{mm}$$
 * @param outline - outline of the frame
 * @returns each pair of kinds once, at its thinnest, the thinnest first [m]
 * @validity holes of arm screws, standoffs and boards; cutouts are not in an outline
 * @derivation distance of two circles
 */
export function thinWebs(outline: FrameOutline): ThinWeb[] {
  const holes = [
    ...outline.arms.flatMap(({ rootScrews }) =>
      rootScrews.map((screw, i) => ({ name: i === 0 ? 'inner arm screw' : 'outer arm screw', ...screw })),
    ),
    ...outline.holes,
  ];
  const found = new Map<string, ThinWeb>();
  holes.forEach((one, i) =>
    holes.slice(0, i).forEach((other) => {
      const web = Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y) - (one.diameter + other.diameter) / 2;
      const key = `${other.name} ${one.name}`;
      if (web < LEAST_WEB - 1e-9 && web < (found.get(key)?.web ?? Infinity))
        found.set(key, { between: [other.name, one.name], web });
    }),
  );
  return [...found.values()].sort((a, b) => a.web - b.web);
}
