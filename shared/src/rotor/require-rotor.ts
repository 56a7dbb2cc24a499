import { requireBetween } from '../require.ts';

/** Refuses a density that no air or water has. @throws InputError when it is outside 0.01..2000 kg/m³. */
export function requireDensity(value: number): void {
  requireBetween(value, 0.01, 2000, { parameter: 'density', quantity: 'air density', kind: 'airDensity' });
}

/** Refuses a propeller smaller than a millimetre or larger than 100 m. @throws InputError when it is. */
export function requireDiameter(value: number): void {
  requireBetween(value, 1e-3, 100, { parameter: 'diameter', quantity: 'propeller diameter', kind: 'length' });
}

/** Refuses a mass outside 0.1 g to 100 t. @throws InputError when it is. */
export function requireMass(value: number, parameter: string, quantity: string): void {
  requireBetween(value, 1e-4, 1e5, { parameter, quantity, kind: 'mass' });
}
