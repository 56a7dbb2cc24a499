import { requireNotNegative } from '../require.ts';

/** Measured peak over linear prediction, drops of small frames on concrete. */
export const MEASURED_OVER_LINEAR = 1.5;

/**
 * Band in which the peak of a real hit lies.
 * $$F \ldots 1.5\,F$$
 * @param linear - peak force by the linear model [N]
 * @returns lower and upper end [N]
 * @validity until something bottoms out or yields: then the peak follows no formula
 * @throws InputError when the force is negative
 * @source azambuja-2022-drops, open drop data: medians about 1.5 times a linear spring and damper fitted to the static
 * stiffness
 */
export function peakForceBand(linear: number): { low: number; high: number } {
  requireNotNegative(linear, { parameter: 'linear', quantity: 'peak force', kind: 'force' });
  return { low: linear, high: MEASURED_OVER_LINEAR * linear };
}
