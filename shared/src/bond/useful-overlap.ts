import { requireBetween } from '../require.ts';

/**
 * Overlap beyond which the peak shear no longer falls.
 * $$L_u = 5/\lambda$$
 * @param lambda - rate of load transfer [1/m]
 * @returns overlap [m]
 * @validity elastic adhesive; longer overlaps still help against creep, poor spots and yielding
 * @throws InputError when the rate is not positive or not physical
 * @source willberg-2023-lectures, seminar Aufgabe 3: limit overlap
 */
export function usefulOverlap(lambda: number): number {
  requireBetween(lambda, 1e-9, 1e14, { parameter: 'lambda', quantity: 'rate of load transfer' });
  return 5 / lambda;
}
