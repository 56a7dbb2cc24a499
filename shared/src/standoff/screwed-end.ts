import { requireFinite, requireNotNegative } from '../require.ts';
import { standoffSection } from './round-standoff.ts';

/** The flat face of a standoff, pressed on its plate by one screw in the middle. */
export interface ScrewedEnd {
  outerDiameter: number;
  bore: number;
  /** Bending moment at this end [N·m]. */
  moment: number;
  /** Along the standoff, tension positive [N]. */
  axial: number;
}

const requireLoad = ({ moment, axial }: ScrewedEnd): void => {
  requireNotNegative(moment, { parameter: 'moment', quantity: 'moment at the end', kind: 'moment' });
  requireFinite(axial, { parameter: 'axial', quantity: 'force along the standoff', kind: 'force' });
};

/**
 * Preload that just keeps the face of the standoff closed all round. With less, one rim lifts.
 * $$F_0 = N + \frac{M c A}{I}$$
 * @param end - sizes and loads
 * @returns preload; nothing or less means that the face stays closed without any [N]
 * @validity face and plate flat, pressure straight-lined over the ring
 * @throws InputError when a number is out of range
 * @derivation pressure at the lifting rim (F₀-N)/A - Mc/I falls to nothing
 */
export function closingPreload(end: ScrewedEnd): number {
  requireLoad(end);
  const { area, vertical } = standoffSection(end);
  return end.axial + (end.moment * vertical.extremeFibre * area) / vertical.secondMomentOfArea;
}

/**
 * Tension that the moment and the pull put on the screw once the face has lifted.
 * $$T = N + \frac{M}{r},\quad r = \tfrac14(D+d)$$
 * @param end - sizes and loads
 * @returns tension, nothing where the standoff is pressed on harder than it rocks [N]
 * @validity face lifted, so that the preload no longer counts; contact in the middle of the ring's width, which lies
 * between the rim (a tenth less tension or so) and a crushed edge (more)
 * @throws InputError when a number is out of range
 * @derivation moments about the contact: T r = M + N r
 */
export function screwTension(end: ScrewedEnd): number {
  requireLoad(end);
  standoffSection(end);
  return Math.max(0, end.axial + (4 * end.moment) / (end.outerDiameter + end.bore));
}
