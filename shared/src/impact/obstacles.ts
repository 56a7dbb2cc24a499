/** What a craft runs into, as a spring at the point of contact. */
export interface Obstacle {
  name: string;
  /** Obstacle and the crushed spot of the craft in series [N/m]. */
  stiffness: number;
  source: 'azambuja-2022-drops' | 'common-practice';
}

/**
 * Starting values. The first is worked back from measured drops of a hard frame on concrete; the others are guesses of the
 * trade that put the time to the peak at some milliseconds. Nobody has published contact stiffnesses of small craft.
 */
export const OBSTACLES = {
  concrete: { name: 'concrete, steel, stone', stiffness: 100e3, source: 'azambuja-2022-drops' },
  wood: { name: 'tree trunk, wooden post', stiffness: 50e3, source: 'common-practice' },
  branch: { name: 'branch, gate pole', stiffness: 20e3, source: 'common-practice' },
  grass: { name: 'grass, soft ground', stiffness: 5e3, source: 'common-practice' },
} as const satisfies Record<string, Obstacle>;
