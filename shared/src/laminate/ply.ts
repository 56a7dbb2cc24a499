import { InputError } from '../error.ts';
import { requireBelow, requireBetween, requireFinite, requirePositive } from '../require.ts';

/** Strengths of one ply in its own axes, all positive. */
export interface PlyStrengths {
  /** Along the fibre, tension Xt [Pa]. */
  alongTension: number;
  /** Along the fibre, compression Xc [Pa]. */
  alongCompression: number;
  /** Across the fibre, tension Yt [Pa]. */
  acrossTension: number;
  /** Across the fibre, compression Yc [Pa]. */
  acrossCompression: number;
  /** In-plane shear S [Pa]. */
  shear: number;
}

/** Elastic constants of one ply in its own axes: 1 along the fibre, 2 across. A fabric counts as one ply. */
export interface PlyMaterial {
  /** E1 [Pa] */
  modulusAlong: number;
  /** E2 [Pa] */
  modulusAcross: number;
  /** G12 [Pa] */
  shearModulus: number;
  /** ν12: contraction across under load along [-]. */
  poissonRatio: number;
  /** Needed for failure only. */
  strengths?: PlyStrengths;
}

export interface Ply {
  material: PlyMaterial;
  /** From the x axis of the part to the fibre, counter-clockwise seen from +z [rad]. */
  angle: number;
  /** [m] */
  thickness: number;
}

/**
 * Refuses a ply that cannot exist.
 * @throws InputError when a modulus is not positive or Poisson's ratio would give energy for nothing
 */
export function requirePlyMaterial({
  modulusAlong,
  modulusAcross,
  shearModulus,
  poissonRatio,
  strengths,
}: PlyMaterial): void {
  requirePositive(modulusAlong, { parameter: 'modulusAlong', quantity: 'modulus along the fibre', kind: 'modulus' });
  requirePositive(modulusAcross, { parameter: 'modulusAcross', quantity: 'modulus across the fibre', kind: 'modulus' });
  requirePositive(shearModulus, { parameter: 'shearModulus', quantity: 'shear modulus', kind: 'modulus' });
  const poisson = { parameter: 'poissonRatio', quantity: 'Poisson’s ratio', kind: 'ratio' } as const;
  requireFinite(poissonRatio, poisson);
  // |ν12| < √(E1/E2): otherwise some load would release energy.
  requireBelow(
    Math.abs(poissonRatio),
    Math.sqrt(modulusAlong / modulusAcross),
    'must be smaller than the root of the ratio of the moduli',
    poisson,
  );
  if (strengths) requireStrengths(strengths);
}

/**
 * Refuses strengths that are not positive.
 * @throws InputError
 */
export function requireStrengths(strengths: PlyStrengths): void {
  const names = {
    alongTension: 'tensile strength along the fibre',
    alongCompression: 'compressive strength along the fibre',
    acrossTension: 'tensile strength across the fibre',
    acrossCompression: 'compressive strength across the fibre',
    shear: 'shear strength of the ply',
  } as const;
  for (const [parameter, quantity] of Object.entries(names)) {
    requirePositive(strengths[parameter as keyof PlyStrengths], { parameter, quantity, kind: 'stress' });
  }
}

/** More plies than any plate of a small airframe. */
const MOST_PLIES = 1000;

/**
 * Refuses a stack that cannot exist.
 * @throws InputError when there is no ply, or one of them is impossible
 */
export function requirePlies(plies: readonly Ply[]): void {
  const subject = { parameter: 'plies', quantity: 'number of plies', kind: 'count' } as const;
  if (!Array.isArray(plies) || plies.length === 0) {
    throw new InputError({ ...subject, value: Array.isArray(plies) ? 0 : plies, rule: 'must be at least one' });
  }
  requireBetween(plies.length, 1, MOST_PLIES, subject);
  for (const material of new Set(plies.map((ply) => ply.material))) requirePlyMaterial(material);
  for (const ply of plies) {
    requirePositive(ply.thickness, { parameter: 'thickness', quantity: 'thickness of a ply', kind: 'length' });
    requireFinite(ply.angle, { parameter: 'angle', quantity: 'angle of a ply', kind: 'angle' });
  }
}
