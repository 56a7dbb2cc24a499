import { requireBetween } from '../require.ts';

const ratio = (value: number, high: number): void =>
  requireBetween(value, 0, high, { parameter: 'ratio', quantity: 'hole over width', kind: 'ratio' });

/**
 * Stress beside a hole in a wide sheet under tension, over the tension far away.
 * $$\frac{\sigma}{\sigma_\infty} = \tfrac12(2+q^2+3q^4),\quad q = a/r$$
 * @param q - hole radius over distance from the hole's centre [-]
 * @returns stress ratio [-]
 * @validity isotropic wide sheet, on the line across the load
 * @throws InputError when q is outside 0..1
 * @source pilkey-2008-peterson, eq. 4.7
 */
export function kirschStress(q: number): number {
  ratio(q, 1);
  return (2 + q ** 2 + 3 * q ** 4) / 2;
}

/**
 * Peak over net stress at a central hole in a strip under tension.
 * $$K_n = 3 - 3.13x + 3.66x^2 - 1.53x^3,\quad x = d/w$$
 * @param x - hole over width [-]
 * @returns factor on the net-section stress [-]
 * @validity isotropic strip
 * @throws InputError when x is outside 0..1
 * @source young-2002-roark, Table 17.1, central hole in a strip, axial tension
 */
export function stripHoleFactor(x: number): number {
  ratio(x, 1);
  return 3 - 3.13 * x + 3.66 * x ** 2 - 1.53 * x ** 3;
}

/**
 * The same by a short form.
 * $$K_n = 2 + (1-x)^3$$
 * @param x - hole over width [-]
 * @returns factor on the net-section stress [-]
 * @validity isotropic strip; low by 1.6 % at x = 0.5
 * @throws InputError when x is outside 0..1
 * @source heywood-1952-photoelasticity, short form
 */
export function heywoodFactor(x: number): number {
  ratio(x, 1);
  return 2 + (1 - x) ** 3;
}

/**
 * Stress at a hole in a strip over that in a wide sheet, both on the gross section.
 * $$\frac{K}{K_\infty} = \frac{2+(1-x)^3}{3(1-x)}$$
 * @param x - hole over width [-]
 * @returns factor [-]
 * @validity up to a hole of half the width, isotropic; used for carbon for want of better
 * @throws InputError when x is outside 0..0.9
 * @source tan-1988-finite, isotropic finite-width correction
 */
export function finiteWidthFactor(x: number): number {
  ratio(x, 0.9);
  return heywoodFactor(x) / (3 * (1 - x));
}
