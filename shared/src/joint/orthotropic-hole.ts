import { requireBetween, requirePositive } from '../require.ts';

export interface Orthotropic {
  /** Along the load [Pa]. */
  modulusX: number;
  /** Across the load [Pa]. */
  modulusY: number;
  /** [Pa] */
  shearModulus: number;
  /** Contraction across under load along [-]. */
  poissonRatio: number;
}

/**
 * Elastic stress factor at a hole in a wide orthotropic sheet, load along x.
 * $$K = 1 + \sqrt{2\Bigl(\sqrt{E_x/E_y} - \nu_{xy}\Bigr) + E_x/G_{xy}}$$
 * @param sheet - elastic constants in the axes of the load
 * @returns factor at the edge of the hole [-]
 * @validity elastic; carbon does not break at this stress, see notchedStrengthRatio
 * @throws InputError when a constant is out of range
 * @source lekhnitskii-1968-plates, circular hole in an orthotropic plate
 */
export function orthotropicHoleFactor({ modulusX, modulusY, shearModulus, poissonRatio }: Orthotropic): number {
  requirePositive(modulusX, { parameter: 'modulusX', quantity: 'modulus along the load', kind: 'modulus' });
  requirePositive(modulusY, { parameter: 'modulusY', quantity: 'modulus across the load', kind: 'modulus' });
  requirePositive(shearModulus, { parameter: 'shearModulus', quantity: 'shear modulus', kind: 'modulus' });
  // Beyond sqrt(Ex/Ey) the compliance would not be positive definite: no such material.
  const largest = Math.sqrt(modulusX / modulusY);
  requireBetween(poissonRatio, -largest, largest, {
    parameter: 'poissonRatio',
    quantity: 'Poisson’s ratio',
    kind: 'ratio',
  });
  return 1 + Math.sqrt(2 * (largest - poissonRatio) + modulusX / shearModulus);
}
