import { firstPlyFailure, type FirstPlyFailure } from './first-ply.ts';
import { laminateStiffness } from './stiffness.ts';
import type { Ply } from './ply.ts';

/** First ply failure with its factors turned into stress. */
export interface LaminateStrength extends FirstPlyFailure {
  /** Load over thickness, or outer-fibre stress as a bending test would report it [Pa]. */
  stress: number;
}

/**
 * Stress along x at which the first ply of a stack reaches its limit.
 * $$\sigma = R\,\frac{N_x}{h}$$
 * @param plies - with strengths
 * @param sense - tension or compression
 * @param edges - as in inPlaneConstants
 * @returns stress over the whole thickness, both criteria
 * @validity as firstPlyFailure; no buckling
 * @throws InputError when a ply has no strengths or a number is out of range
 * @derivation load is proportional, so the factor R of firstPlyFailure scales a load of one newton per metre
 */
export function inPlaneStrength(
  plies: readonly Ply[],
  sense: 'tension' | 'compression',
  edges: 'free' | 'held' = 'free',
): LaminateStrength {
  const { thickness } = laminateStiffness(plies);
  const sign = sense === 'tension' ? 1 : -1;
  const failure = firstPlyFailure(plies, { forces: [sign, 0, 0], moments: [0, 0, 0], edges });
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
  const [up, down] = ([1, -1] as const).map((sign) =>
    firstPlyFailure(plies, { forces: [0, 0, 0], moments: [sign, 0, 0] }),
  ) as [FirstPlyFailure, FirstPlyFailure];
  const weaker = up.factor <= down.factor ? up : down;
  return { ...weaker, stress: (6 * weaker.factor) / thickness ** 2 };
}
