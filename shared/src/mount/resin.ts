import { LAMINATING_EPOXY } from '../material/adhesive.ts';
import { requireBetween, requireNotNegative } from '../require.ts';

/** Fibre volume fractions that a way of working reaches [-]. willberg-2023-lectures, lecture on fibre and matrix. */
export const FIBRE_FRACTIONS = { handLaid: 0.4, pressed: 0.6, ceiling: 0.7 } as const;

/** Of cured laminating epoxy [kg/m³]. willberg-2023-lectures, lecture on fibre and matrix. */
export const RESIN_DENSITY = LAMINATING_EPOXY.density.typical;

export interface FibreAndResinParts {
  /** Volume fraction of fibre [-]. */
  fibreFraction: number;
  /** [kg/m³] */
  fibreDensity: number;
  /** [kg/m³] */
  resinDensity: number;
}

function requireParts({ fibreFraction, fibreDensity, resinDensity }: FibreAndResinParts): void {
  requireBetween(fibreFraction, 0.01, 0.91, {
    parameter: 'fibreFraction',
    quantity: 'fibre volume fraction',
    kind: 'percent',
  });
  requireBetween(fibreDensity, 100, 3e4, {
    parameter: 'fibreDensity',
    quantity: 'density of the fibre',
    kind: 'density',
  });
  requireBetween(resinDensity, 100, 3e4, {
    parameter: 'resinDensity',
    quantity: 'density of the resin',
    kind: 'density',
  });
}

/**
 * Resin that fills the room between fibres.
 * $$m_r = m_f\,\frac{\rho_r(1-\varphi)}{\rho_f\,\varphi}$$
 * @param fibreMass - [kg]
 * @param parts - fibre volume fraction and densities
 * @returns mass of resin in the part [kg]
 * @validity no voids; what stays in the cup and on the brush comes on top
 * @throws InputError when a number is out of range
 * @source willberg-2023-lectures, lecture on fibre and matrix, amount of matrix
 */
export function resinMass(fibreMass: number, parts: FibreAndResinParts): number {
  requireParts(parts);
  requireNotNegative(fibreMass, { parameter: 'fibreMass', quantity: 'mass of the fibre', kind: 'mass' });
  const { fibreFraction, fibreDensity, resinDensity } = parts;
  return (fibreMass * resinDensity * (1 - fibreFraction)) / (fibreDensity * fibreFraction);
}

/**
 * Density of fibre and resin together.
 * $$\rho = \varphi\rho_f+(1-\varphi)\rho_r$$
 * @param parts - fibre volume fraction and densities
 * @returns density [kg/m³]
 * @validity no voids
 * @throws InputError when a number is out of range
 * @source willberg-2023-lectures, lecture on fibre and matrix, density
 */
export function mixtureDensity(parts: FibreAndResinParts): number {
  requireParts(parts);
  return parts.fibreFraction * parts.fibreDensity + (1 - parts.fibreFraction) * parts.resinDensity;
}

/**
 * Share of the mass that is resin.
 * $$w_r = \frac{(1-\varphi)\rho_r}{\rho}$$
 * @param parts - fibre volume fraction and densities
 * @returns mass fraction of resin [-]
 * @validity no voids
 * @throws InputError when a number is out of range
 * @derivation mass of resin in a unit of volume over all mass in it
 */
export function resinMassFraction(parts: FibreAndResinParts): number {
  return ((1 - parts.fibreFraction) * parts.resinDensity) / mixtureDensity(parts);
}

/**
 * Thickness of a cured ply from the mass of its fibre.
 * $$t = \frac{m_A}{\rho_f\,\varphi}$$
 * @param ply - fibre mass per area [kg/m²], density of the fibre [kg/m³], fibre volume fraction [-]
 * @returns thickness [m]
 * @validity no voids
 * @throws InputError when a number is out of range
 * @derivation volume of fibre in a unit of area over its share
 */
export function curedPlyThickness(ply: { arealMass: number; fibreDensity: number; fibreFraction: number }): number {
  requireBetween(ply.arealMass, 1e-4, 100, { parameter: 'arealMass', quantity: 'fibre mass per area' });
  requireParts({ ...ply, resinDensity: RESIN_DENSITY });
  return ply.arealMass / (ply.fibreDensity * ply.fibreFraction);
}
