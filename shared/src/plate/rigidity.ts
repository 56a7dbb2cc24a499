import { requireBetween } from '../require.ts';
import { requireModulus } from '../require-physical.ts';

export interface PlateMaterial {
  /** [m] */
  thickness: number;
  /** In bending [Pa]. */
  youngsModulus: number;
  /** 0.3 where not given, as for a quasi-isotropic laminate [-]. */
  poissonRatio?: number;
}

export const DEFAULT_POISSON_RATIO = 0.3;

/**
 * Refuses a ratio that no plate has.
 * @throws InputError when it is not between 0 and 0.49
 */
export function requirePoissonRatio(value: number): void {
  requireBetween(value, 0, 0.49, { parameter: 'poissonRatio', quantity: 'Poisson’s ratio', kind: 'ratio' });
}

/**
 * Refuses a thickness that no plate of an airframe has.
 * @throws InputError when it is not between 10 micrometres and 1 m
 */
export function requireThickness(thickness: number): void {
  requireBetween(thickness, 1e-5, 1, { parameter: 'thickness', quantity: 'plate thickness', kind: 'length' });
}

/**
 * Bending rigidity of a plate, for each unit of its width.
 * $$D = \frac{E t^3}{12(1-\nu^2)}$$
 * @param plate - thickness, modulus, Poisson's ratio
 * @returns rigidity [N·m]
 * @validity thin plate, alike in every direction: a quasi-isotropic laminate
 * @throws InputError when a number is out of range
 * @source timoshenko-1959-plates, § 1
 */
export function plateRigidity({
  thickness,
  youngsModulus,
  poissonRatio = DEFAULT_POISSON_RATIO,
}: PlateMaterial): number {
  requireThickness(thickness);
  requireModulus(youngsModulus, { parameter: 'youngsModulus', quantity: 'Young’s modulus of the plate' });
  requirePoissonRatio(poissonRatio);
  return (youngsModulus * thickness ** 3) / (12 * (1 - poissonRatio ** 2));
}
