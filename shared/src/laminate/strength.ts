import { firstPlyFailure, type FirstPlyFailure } from './first-ply.ts';
import { laminateStiffness } from './stiffness.ts';
import type { Ply } from './ply.ts';

/** First ply failure with its factors turned into stress. */
export interface LaminateStrength extends FirstPlyFailure {
  /** Load over thickness, or outer-fibre stress as a bending test would report it [Pa]. */
  stress: number;
}

const weaker = (a: FirstPlyFailure, b: FirstPlyFailure): FirstPlyFailure => (a.factor <= b.factor ? a : b);

/**
 * Stress along x, or shear stress in the plane, at which the first ply of a stack reaches its limit.
 * $$\sigma = R\,\frac{N_x}{h},\quad \tau = R\,\frac{N_{xy}}{h}$$
 * @param plies - with strengths
 * @param sense - tension, compression, or shear, of which the weaker sense counts
 * @param edges - as in inPlaneConstants
 * @returns stress over the whole thickness, both criteria
 * @validity as firstPlyFailure; no buckling
 * @throws InputError when a ply has no strengths or a number is out of range
 * @derivation load is proportional, so the factor R of firstPlyFailure scales a load of one newton per metre
 */
export function inPlaneStrength(
  plies: readonly Ply[],
  sense: 'tension' | 'compression' | 'shear',
  edges: 'free' | 'held' = 'free',
): LaminateStrength {
  const { thickness } = laminateStiffness(plies);
  const under = (x: number, shear: number): FirstPlyFailure =>
    firstPlyFailure(plies, { forces: [x, 0, shear], moments: [0, 0, 0], edges });
  const failure = sense === 'shear' ? weaker(under(0, 1), under(0, -1)) : under(sense === 'tension' ? 1 : -1, 0);
  return { ...failure, stress: failure.factor / thickness };
}

/**
 * Bending stress at which the first ply of a strip reaches its limit, as a bending test reports it.
 * $$\sigma_f = R\,\frac{6 M_x}{h^2}$$
 * @param plies - with strengths
 * @returns outer-fibre stress of the equal solid strip, both criteria; the weaker side counts
 * @validity as firstPlyFailure; the strip is free to twist and to curl across
 * @throws InputError when a ply has no strengths or a number is out of range
 * @derivation as inPlaneStrength with a moment of one newton, both ways, because an unsymmetric stack differs
 */
export function flexuralStrength(plies: readonly Ply[]): LaminateStrength {
  const { thickness } = laminateStiffness(plies);
  const bent = (moment: number): FirstPlyFailure =>
    firstPlyFailure(plies, { forces: [0, 0, 0], moments: [moment, 0, 0] });
  const failure = weaker(bent(1), bent(-1));
  return { ...failure, stress: (6 * failure.factor) / thickness ** 2 };
}
