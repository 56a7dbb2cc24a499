import { requireBetween } from '../require.ts';

const requirePoissonRatio = (value: number): void =>
  requireBetween(value, -0.9, 0.9, { parameter: 'poissonRatio', quantity: 'Poisson’s ratio', kind: 'ratio' });

/**
 * Timoshenko shear coefficient of a round tube of any wall; a bore ratio of 0 is the solid bar, near 1 the thin tube.
 * $$\kappa = \frac{6(1+\nu)(1+m^2)^2}{(7+6\nu)(1+m^2)^2 + (20+12\nu)m^2}$$
 * @param boreRatio - inner over outer radius m [-]
 * @param poissonRatio - Poisson's ratio [-]
 * @returns shear coefficient [-]
 * @validity isotropic wall; a carbon tube differs, but shear is a small part of its deflection
 * @throws InputError when a ratio is out of range
 * @source cowper-1966-shear, table of coefficients
 */
export function roundShearCoefficient(boreRatio: number, poissonRatio: number): number {
  requireBetween(boreRatio, 0, 1, { parameter: 'boreRatio', quantity: 'bore ratio', kind: 'ratio' });
  requirePoissonRatio(poissonRatio);
  const square = (1 + boreRatio ** 2) ** 2;
  return (
    (6 * (1 + poissonRatio) * square) / ((7 + 6 * poissonRatio) * square + (20 + 12 * poissonRatio) * boreRatio ** 2)
  );
}

/**
 * Timoshenko shear coefficient of a solid rectangle.
 * $$\kappa = \frac{10(1+\nu)}{12+11\nu}$$
 * @param poissonRatio - Poisson's ratio [-]
 * @returns shear coefficient [-]
 * @validity isotropic material
 * @throws InputError when the ratio is out of range
 * @source cowper-1966-shear, table of coefficients
 */
export function rectangleShearCoefficient(poissonRatio: number): number {
  requirePoissonRatio(poissonRatio);
  return (10 * (1 + poissonRatio)) / (12 + 11 * poissonRatio);
}
