import { requireNotNegative, requirePositive } from '../require.ts';

/**
 * Largest bending moment in a pin between two outer plates that holds a middle one.
 * $$M = \frac{P}{2}\Bigl(\frac{b}{4}+\frac{a}{3}\Bigr)$$
 * @param pin - force on the pin [N], thickness of the middle part b and of each outer plate a [m]
 * @returns moment at the middle of the pin [N·m]
 * @validity no gaps; pressure even in the middle part and falling off linearly in the outer ones
 * @throws InputError when a number is out of range
 * @source bhandari-2010-machine, Example 4.5
 */
export function pinBendingMoment(pin: { force: number; middle: number; outer: number }): number {
  requireNotNegative(pin.force, { parameter: 'force', quantity: 'force on the pin', kind: 'force' });
  requirePositive(pin.middle, { parameter: 'middle', quantity: 'thickness of the middle part', kind: 'length' });
  requirePositive(pin.outer, { parameter: 'outer', quantity: 'thickness of an outer plate', kind: 'length' });
  return (pin.force / 2) * (pin.middle / 4 + pin.outer / 3);
}
