import { requireBetween, requirePositive } from '../require.ts';

/**
 * Share of a propeller disc that an equal disc beside it covers.
 * $$m = \frac{2}{\pi}\Bigl(\arccos x - x\sqrt{1-x^2}\Bigr),\quad x = \frac{s}{D}$$
 * @param pair - spacing of the axes s, propeller diameter D [m]
 * @returns covered share of one disc [-]; 0 where the discs stand clear
 * @validity equal discs in parallel planes, seen along the axes
 * @throws InputError when a length is out of range
 * @source leishman-2006-helicopter, ch. 2, overlapping rotors
 */
export function discOverlap({ spacing, diameter }: { spacing: number; diameter: number }): number {
  requirePositive(diameter, { parameter: 'diameter', quantity: 'propeller diameter', kind: 'length' });
  requireBetween(spacing, 0, 1e6, { parameter: 'spacing', quantity: 'spacing of the axes', kind: 'length' });
  const x = Math.min(spacing / diameter, 1);
  return (2 / Math.PI) * (Math.acos(x) - x * Math.sqrt(1 - x * x));
}

/**
 * Induced power of rotors that share part of their air, over that of rotors apart.
 * $$\kappa = 1 + (\sqrt2-1)\,m$$
 * @param overlap - share of a disc that its neighbours cover, all together m [-]
 * @returns power ratio [-]
 * @validity equal thrust; no two neighbours cover the same place; planes close to each other. A lower bound: the lower
 * blade also cuts through the upper one's wake
 * @throws InputError when the share is outside 0..1
 * @source leishman-2006-helicopter, ch. 2, overlapping rotors
 * @derivation over the common area the loading is doubled, so the induced speed there is sqrt(2) times as high
 */
export function overlapPowerFactor(overlap: number): number {
  requireBetween(overlap, 0, 1, { parameter: 'overlap', quantity: 'overlapped share', kind: 'ratio' });
  return 1 + (Math.SQRT2 - 1) * overlap;
}
