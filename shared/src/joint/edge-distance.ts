import type { Warning } from '../error.ts';
import { requirePositive } from '../require.ts';

/** Least distances in hole diameters for a carbon laminate, and for a part of metal. */
export const LEAST_DISTANCES = { end: 3, width: 5, pitch: 4, side: 2.5, metalEnd: 2 } as const;

export interface HoleDistances {
  diameter: number;
  /** From the centre of the hole to the end of the part [m]. */
  end?: number;
  /** Of the strip or tube that the hole is in [m]. */
  width?: number;
  /** To the next hole, centre to centre [m]. */
  pitch?: number;
}

/**
 * Rules for distances round a hole in a carbon laminate: end 3 d, width 5 d, pitch 4 d.
 * $$e \ge 3d,\quad w \ge 5d,\quad p \ge 4d$$
 * @param hole - diameter and the distances that apply [m]
 * @returns a warning for each rule that is broken
 * @validity laminate of 50 % fibres along, 40 % at ±45°, 10 % across; a nearly unidirectional wall needs more
 * @throws InputError when a length is not positive
 * @source willberg-2023-lectures, after figures 22.2-22.4
 */
export function edgeDistanceWarnings({ diameter, end, width, pitch }: HoleDistances): Warning[] {
  requirePositive(diameter, { parameter: 'diameter', quantity: 'hole diameter', kind: 'length' });
  const short = (
    value: number | undefined,
    least: number,
    parameter: string,
    code: string,
    message: string,
  ): Warning[] => {
    if (value === undefined) return [];
    requirePositive(value, { parameter, quantity: parameter, kind: 'length' });
    return value < least * diameter * (1 - 1e-9) ? [{ code, message }] : [];
  };
  return [
    ...short(
      end,
      LEAST_DISTANCES.end,
      'end',
      'edge-distance-short',
      'The hole is nearer to the end than three hole diameters: the end may shear or split out.',
    ),
    ...short(
      width,
      LEAST_DISTANCES.width,
      'width',
      'width-short',
      'The part is narrower than five hole diameters: little is left beside the hole.',
    ),
    ...short(
      pitch,
      LEAST_DISTANCES.pitch,
      'pitch',
      'pitch-short',
      'The holes are nearer to each other than four hole diameters: they share the wall between them.',
    ),
  ];
}
