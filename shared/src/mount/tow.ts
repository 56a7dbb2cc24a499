import { STANDARD_FIBRE } from '../material/fibre.ts';
import { requireBetween, requirePositive } from '../require.ts';

/** Standard-modulus carbon fibre. carbon-fibre-data-sheet: density, strength, modulus, filament diameter. */
export const STANDARD_CARBON_FIBRE = {
  /** [kg/m³] */
  density: STANDARD_FIBRE.density.typical,
  /** [Pa] */
  tensileStrength: STANDARD_FIBRE.tensileStrength.typical,
  /** [Pa] */
  youngsModulus: STANDARD_FIBRE.youngsModulus.typical,
  /** [m] */
  filamentDiameter: 7e-6,
} as const;

/** Mass per length of tows by thousands of filaments [kg/m]. carbon-fibre-data-sheet. */
export const TOWS = { '1K': 66e-6, '3K': 198e-6, '6K': 396e-6, '12K': 800e-6 } as const;
export type TowName = keyof typeof TOWS;

/**
 * Area of the fibres of a tow from its mass.
 * $$A_f = \frac{T_t}{\rho_f}$$
 * @param tow - mass per length T_t [kg/m], density of the fibre [kg/m³]
 * @returns area of fibre alone, without resin or air [m²]
 * @validity any tow; sizing weighs about one per cent and is counted as fibre
 * @throws InputError when a number is out of range
 * @derivation mass per length is density times area
 */
export function fibreArea({ linearDensity, density }: { linearDensity: number; density: number }): number {
  requireBetween(linearDensity, 1e-7, 1, {
    parameter: 'linearDensity',
    quantity: 'mass per length of the tow',
    kind: 'linearDensity',
  });
  requireBetween(density, 100, 3e4, { parameter: 'density', quantity: 'density of the fibre', kind: 'density' });
  return linearDensity / density;
}

/**
 * Area of the fibres of a tow from their number.
 * $$A_f = N\,\tfrac{\pi}{4}d_f^2$$
 * @param tow - number of filaments, filament diameter [m]
 * @returns area of fibre alone [m²]
 * @validity round filaments; about two per cent above the area by mass, because the diameter is a rounded figure
 * @throws InputError when a number is out of range
 * @derivation area of N circles
 */
export function filamentArea({ filaments, diameter }: { filaments: number; diameter: number }): number {
  requireBetween(filaments, 1, 1e7, { parameter: 'filaments', quantity: 'number of filaments', kind: 'count' });
  requireBetween(diameter, 1e-7, 1e-3, { parameter: 'diameter', quantity: 'filament diameter', kind: 'length' });
  return (filaments * Math.PI * diameter ** 2) / 4;
}

/**
 * Breaking load of a straight tow with all filaments pulling alike.
 * $$F = A_f\,\sigma_f$$
 * @param tow - area of fibre [m²], strength of the fibre [Pa]
 * @returns force [N]
 * @validity an upper bound: what hands lay and edges bend reaches a part of it
 * @throws InputError when a number is not positive
 * @derivation stress times area
 */
export function towBreakingLoad({ area, tensileStrength }: { area: number; tensileStrength: number }): number {
  requirePositive(area, { parameter: 'area', quantity: 'area of fibre', kind: 'area' });
  requirePositive(tensileStrength, { parameter: 'tensileStrength', quantity: 'fibre strength', kind: 'stress' });
  return area * tensileStrength;
}

/**
 * How many tows fill a section.
 * $$n = \frac{A\,\rho_f\,\varphi}{T_t}$$
 * @param section - area [m²], fibre volume fraction [-], tow [kg/m], density of the fibre [kg/m³]
 * @returns number of tows, not rounded [-]
 * @validity resin and fibre only, no voids
 * @throws InputError when a number is out of range
 * @source willberg-2023-lectures, lecture on fibre and matrix, number of rovings
 */
export function towsInSection(section: {
  area: number;
  fibreFraction: number;
  linearDensity: number;
  density: number;
}): number {
  requireBetween(section.area, 1e-12, 100, { parameter: 'area', quantity: 'area of the section', kind: 'area' });
  requireBetween(section.fibreFraction, 0.01, 0.91, {
    parameter: 'fibreFraction',
    quantity: 'fibre volume fraction',
    kind: 'percent',
  });
  return (section.area * section.fibreFraction) / fibreArea(section);
}
