import { requireFinite } from '../require.ts';
import type { Vector3 } from './matrix.ts';
import { requireStrengths, type PlyStrengths } from './ply.ts';

export type FailureMode = 'fibre tension' | 'fibre compression' | 'splitting' | 'crushing across' | 'shear';

export interface PlyFailure {
  /** Factor on the load at which the ply reaches its limit; a very large one where there is no load [-]. */
  factor: number;
  mode: FailureMode;
}

/** Stands for `never`: nothing returns Infinity. */
const NEVER = 1e12;

const requireStress = (stress: Vector3): void => {
  for (const value of stress)
    requireFinite(value, { parameter: 'plyStress', quantity: 'stress in the ply', kind: 'stress' });
};

/**
 * Factor on the load at which one stress of a ply reaches its own strength.
 * $$R=\min\Bigl(\frac{X_{t,c}}{|\sigma_1|},\frac{Y_{t,c}}{|\sigma_2|},\frac{S}{|\tau_{12}|}\Bigr)$$
 * @param plyStress - σ1, σ2, τ12 [Pa]
 * @param strengths - of the ply [Pa]
 * @returns factor and mode
 * @validity each stress on its own; proportional load
 * @throws InputError when a number is out of range
 * @source jones-1999-composite, § 2.9, maximum stress; kaw-2006-composites, § 2.8
 */
export function maximumStress(plyStress: Vector3, strengths: PlyStrengths): PlyFailure {
  requireStress(plyStress);
  requireStrengths(strengths);
  return leastFactor(plyStress, strengths);
}

/** As maximumStress, for values already checked: a stack asks for hundreds of points. */
export function leastFactor([along, across, shear]: Vector3, strengths: PlyStrengths): PlyFailure {
  const modes: PlyFailure[] = [
    along >= 0
      ? { mode: 'fibre tension', factor: strengths.alongTension / Math.abs(along) }
      : { mode: 'fibre compression', factor: strengths.alongCompression / Math.abs(along) },
    across >= 0
      ? { mode: 'splitting', factor: strengths.acrossTension / Math.abs(across) }
      : { mode: 'crushing across', factor: strengths.acrossCompression / Math.abs(across) },
    { mode: 'shear', factor: strengths.shear / Math.abs(shear) },
  ];
  const first = modes.reduce((least, mode) => (mode.factor < least.factor ? mode : least));
  return { ...first, factor: Math.min(first.factor, NEVER) };
}

/**
 * Factor on the load at which the stresses of a ply together reach the Tsai-Wu limit.
 * $$F_1\sigma_1+F_2\sigma_2+F_{11}\sigma_1^2+F_{22}\sigma_2^2+F_{66}\tau_{12}^2-\sqrt{F_{11}F_{22}}\,\sigma_1\sigma_2=1$$
 * @param plyStress - σ1, σ2, τ12 [Pa]
 * @param strengths - of the ply [Pa]
 * @returns factor, the positive root of the quadratic in it; it names no mode [-]
 * @validity proportional load; interaction term F12 = −½√(F11 F22)
 * @throws InputError when a number is out of range
 * @source tsai-1971-general; kaw-2006-composites, § 2.8
 */
export function tsaiWu(plyStress: Vector3, strengths: PlyStrengths): number {
  requireStress(plyStress);
  requireStrengths(strengths);
  return interactionFactor(plyStress, strengths);
}

/** As tsaiWu, for values already checked. */
export function interactionFactor([along, across, shear]: Vector3, strengths: PlyStrengths): number {
  const { alongTension: xt, alongCompression: xc, acrossTension: yt, acrossCompression: yc, shear: s } = strengths;
  const [f11, f22] = [1 / (xt * xc), 1 / (yt * yc)];
  const linear = (1 / xt - 1 / xc) * along + (1 / yt - 1 / yc) * across;
  const square = f11 * along ** 2 + f22 * across ** 2 + (shear / s) ** 2 - Math.sqrt(f11 * f22) * along * across;
  // 2/(b + √(b² + 4a)) is the root of a R² + b R = 1 without the loss of digits of the usual form.
  const root = Math.sqrt(linear ** 2 + 4 * square);
  if (linear + root > 2 / NEVER) return 2 / (linear + root);
  return NEVER;
}
