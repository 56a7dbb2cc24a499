import { requireNotNegative } from '../require.ts';
import { requireThickness } from './rigidity.ts';

/**
 * Radius that a force on a small spot counts with: below half the thickness the plate spreads it by itself.
 * $$r' = \sqrt{1.6r^2+t^2}-0.675t\quad\text{where } r < 0.5t,\ \text{else } r$$
 * @param radius - of the spot: half a screw head or a washer [m]
 * @param thickness - of the plate [m]
 * @returns radius for the moment of a centre load [m]
 * @validity thin plate, spot well inside it
 * @throws InputError when a number is out of range
 * @source young-2002-roark, § 11.1, after Westergaard
 */
export function loadSpot(radius: number, thickness: number): number {
  requireNotNegative(radius, { parameter: 'spotRadius', quantity: 'radius of the load', kind: 'length' });
  requireThickness(thickness);
  return radius < 0.5 * thickness ? Math.sqrt(1.6 * radius ** 2 + thickness ** 2) - 0.675 * thickness : radius;
}
