import { requirePositive } from '../require.ts';

/**
 * Mass of a metre of a section.
 * $$m' = \rho A$$
 * @param area - cross-section [m²]
 * @param density - of the material [kg/m³]
 * @returns mass per length [kg/m]
 * @validity uniform density
 * @throws InputError when an input is not positive
 * @derivation definition of density
 */
export function massPerLength(area: number, density: number): number {
  requirePositive(area, { parameter: 'area', quantity: 'cross-section area', kind: 'area' });
  requirePositive(density, { parameter: 'density', quantity: 'density', kind: 'density' });
  return area * density;
}
