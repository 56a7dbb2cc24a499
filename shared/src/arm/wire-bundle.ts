import { InputError } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';

const MOST = 7;

/**
 * Bore that takes a bundle of equal round wires side by side.
 * $$D = d\,\Bigl(1+\frac{1}{\sin(\pi/n)}\Bigr)\ \text{for } n = 2\ldots6,\quad D_3 = d\,\Bigl(1+\tfrac{2}{\sqrt3}\Bigr),\quad D_7 = 3d$$
 * @param count - wires [-]
 * @param wireDiameter - over the insulation [m]
 * @returns smallest bore [m]; nothing left over for pulling them through
 * @validity one to seven wires, straight and hard
 * @throws InputError when the count is not a whole number from 1 to 7 or the diameter is not positive
 * @source kravitz-1967-packing, cylinders in a cylinder
 * @derivation n centres on a ring of radius r stand 2r sin(π/n) apart, which is d at the closest; the bore is 2r + d. For
 * three, 2r is 2d/√3. The seventh wire fills the middle of six
 */
export function bundleDiameter(count: number, wireDiameter: number): number {
  const subject = { parameter: 'wireCount', quantity: 'number of wires', kind: 'count' } as const;
  requireBetween(count, 1, MOST, subject);
  if (!Number.isInteger(count)) throw new InputError({ ...subject, value: count, rule: 'must be a whole number' });
  requirePositive(wireDiameter, { parameter: 'wireDiameter', quantity: 'wire diameter', kind: 'length' });
  if (count === 1) return wireDiameter;
  return wireDiameter * (1 + 1 / Math.sin(Math.PI / Math.min(count, 6)));
}
