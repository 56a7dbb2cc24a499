import { InputError } from '../error.ts';
import type { FrameThread } from './thread-limits.ts';

export type HoleSeries = 'fine' | 'medium' | 'coarse';

const row = (fine: number, medium: number, coarse: number): Record<HoleSeries, number> => ({
  fine: fine * 1e-3,
  medium: medium * 1e-3,
  coarse: coarse * 1e-3,
});

/** Clearance holes [m], recalled from the table of iso-1979-273. */
export const CLEARANCE_HOLES: Readonly<Record<FrameThread, Readonly<Record<HoleSeries, number>>>> = {
  M2: row(2.2, 2.4, 2.6),
  'M2.5': row(2.7, 2.9, 3.1),
  M3: row(3.2, 3.4, 3.6),
  M4: row(4.3, 4.5, 4.8),
};

/**
 * Diameter of a clearance hole.
 * @param screw - thread
 * @param series - fine, medium or coarse
 * @returns diameter [m]
 * @validity ISO 273; a frame's arm roots are usually drilled tighter than its fine series
 * @throws InputError when the thread or series is not in the table
 * @source iso-1979-273, table of clearance holes
 */
export function clearanceHole(screw: FrameThread, series: HoleSeries): number {
  const diameter = CLEARANCE_HOLES[screw]?.[series];
  if (diameter === undefined) {
    throw new InputError({
      parameter: 'series',
      quantity: 'clearance hole',
      value: `${String(screw)} ${String(series)}`,
      rule: 'must be one of the table',
    });
  }
  return diameter;
}
