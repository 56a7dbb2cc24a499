import { requireNotNegative } from '../require.ts';
import { requireFitSize } from './require-fit.ts';

/**
 * How far the head of a standoff comes down when it moves sideways: as an elastic S, or as a link between two hinges.
 * $$w = \max\Bigl(\frac{3\delta^2}{5L},\ L-\sqrt{L^2-\delta^2}\Bigr)$$
 * @param sway - sideways movement of the head [m]
 * @param length - of the standoff [m]
 * @returns descent, at most the length [m]
 * @validity ends that stay level; a standoff moved by its own length lies flat
 * @throws InputError when a number is out of range
 * @source awtar-2007-flexures, kinematic term of a beam with a guided end
 */
export function swayShortening(sway: number, length: number): number {
  requireFitSize(length, 'length', 'standoff length');
  requireNotNegative(sway, { parameter: 'sway', quantity: 'movement of the head', kind: 'length' });
  if (sway >= length) return length;
  return Math.min(length, Math.max((0.6 * sway ** 2) / length, length - Math.sqrt((length - sway) * (length + sway))));
}
