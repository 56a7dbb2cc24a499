import { requireBetween } from '../require.ts';

const reach = (q: number): void =>
  requireBetween(q, 0, 1, { parameter: 'q', quantity: 'hole radius over distance', kind: 'ratio' });

/**
 * Stress beside a hole in a wide sheet under two stresses at right angles, on the line across the first, over the first.
 * $$\frac{\sigma}{\sigma_1} = \tfrac12(1+\rho)(1+q^2) + \tfrac12(1-\rho)(1+3q^4),\quad \rho=\frac{\sigma_2}{\sigma_1},\; q=\frac ar$$
 * @param q - hole radius over distance from the hole's centre [-]
 * @param ratio - second stress over first: 0 plain tension, 1 equal both ways, −1 pure shear seen at 45° [-]
 * @returns stress ratio, at the edge 3 − ρ [-]
 * @validity isotropic wide sheet
 * @throws InputError when q is outside 0..1 or the ratio outside −1..1
 * @source pilkey-2008-peterson, eq. 4.7, and the same turned by a right angle
 */
export function biaxialHoleStress(q: number, ratio: number): number {
  reach(q);
  requireBetween(ratio, -1, 1, { parameter: 'ratio', quantity: 'second stress over first', kind: 'ratio' });
  return ((1 + ratio) * (1 + q ** 2) + (1 - ratio) * (1 + 3 * q ** 4)) / 2;
}

/**
 * Stress beside a hole at the neutral axis of a part in bending, over the stress that the whole part has there.
 * $$\frac{\sigma}{M r/I} = 1 + \frac{K-1}{2}\,q^6,\quad q = \frac ar$$
 * @param q - hole radius over distance from the neutral axis [-]
 * @param holeFactor - K of the material in plain tension, 3 for an isotropic sheet [-]
 * @returns stress ratio, at the edge (K + 1)/2: two for an isotropic sheet [-]
 * @validity hole small in its part. At the edge of the hole exact for any orthotropic sheet; the decay with the sixth power
 * is the isotropic one
 * @throws InputError when q is outside 0..1 or the factor outside 1..10
 * @derivation far stress A y. With U = A y³/6 the tractions on the circle are cancelled by Lekhnitskii's potentials
 * Φ₁ = -Φ₂ = (A a²/8)/((μ₁-μ₂) ζ²); their hoop stress on the line across is A a (n/2) with n = -i(μ₁+μ₂) = K - 1. In the
 * isotropic sheet the terms in r⁻³ cancel on that line and A a⁶/r⁵ remains
 */
export function bendingHoleStress(q: number, holeFactor = 3): number {
  reach(q);
  requireBetween(holeFactor, 1, 10, { parameter: 'holeFactor', quantity: 'hole factor', kind: 'ratio' });
  return 1 + ((holeFactor - 1) / 2) * q ** 6;
}
