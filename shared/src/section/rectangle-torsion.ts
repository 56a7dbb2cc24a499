import { requirePositive } from '../require.ts';

/** Sum of 1/n⁵ over odd n: (31/32) ζ(5). */
const ODD_FIFTH_POWERS = 1.0045237627951382;

/** Terms fall as exp(-nπ) at worst (a square), so that these carry every digit. */
const TERMS = [1, 3, 5, 7, 9, 11, 13] as const;

function sides(width: number, height: number): { long: number; short: number } {
  requirePositive(width, { parameter: 'width', quantity: 'width', kind: 'length' });
  requirePositive(height, { parameter: 'height', quantity: 'height', kind: 'length' });
  return { long: Math.max(width, height), short: Math.min(width, height) };
}

/**
 * Torsion constant of a solid rectangle by the Saint-Venant series, long side a, short side b.
 * $$J = \frac{a b^3}{3}\Bigl[1 - \frac{192}{\pi^5}\frac{b}{a}\sum_{n\,\text{odd}}\frac{\tanh(n\pi a/2b)}{n^5}\Bigr]$$
 * @param width - one side [m]
 * @param height - the other side [m]
 * @returns torsion constant [m⁴]
 * @validity any ratio of sides; summed as the limit of the series minus what tanh lacks of one, which falls fast
 * @throws InputError when a side is not positive
 * @source timoshenko-1970-elasticity, § 109
 */
export function rectangleTorsionConstant(width: number, height: number): number {
  const { long, short } = sides(width, height);
  const lacking = TERMS.reduce((sum, n) => sum + (1 - Math.tanh((n * Math.PI * long) / (2 * short))) / n ** 5, 0);
  const series = ODD_FIFTH_POWERS - lacking;
  return ((long * short ** 3) / 3) * (1 - ((192 / Math.PI ** 5) * short * series) / long);
}

/**
 * Torsion stress modulus of a solid rectangle: torque over the largest shear stress, which stands at the middle of the
 * long side.
 * $$W_t = \frac{J}{b\,\bigl[1 - \frac{8}{\pi^2}\sum_{n\,\text{odd}} \frac{1}{n^2\cosh(n\pi a/2b)}\bigr]}$$
 * @param width - one side [m]
 * @param height - the other side [m]
 * @returns torque over peak shear stress [m³]
 * @validity any ratio of sides
 * @throws InputError when a side is not positive
 * @source timoshenko-1970-elasticity, § 109
 */
export function rectangleTorsionModulus(width: number, height: number): number {
  const { long, short } = sides(width, height);
  const sum = TERMS.reduce((total, n) => total + 1 / (n ** 2 * Math.cosh((n * Math.PI * long) / (2 * short))), 0);
  return rectangleTorsionConstant(width, height) / (short * (1 - (8 / Math.PI ** 2) * sum));
}
