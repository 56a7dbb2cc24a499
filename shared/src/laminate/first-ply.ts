import { InputError } from '../error.ts';
import type { Ply } from './ply.ts';
import { interactionFactor, leastFactor, type FailureMode } from './ply-failure.ts';
import { laminateResponse, type LaminateLoad } from './ply-stress.ts';

export interface FirstPlyFailure {
  /** Factor on the load by the maximum stress criterion [-]. */
  maximumStress: number;
  /** Factor on the load by Tsai-Wu [-]. */
  tsaiWu: number;
  /** The lower of both: the one to design with [-]. */
  factor: number;
  /** Mode by maximum stress. */
  mode: FailureMode;
  /** Ply of the maximum stress factor, counted from z = −h/2, from 0. */
  ply: number;
}

/**
 * Factor on a load at which the first ply of a stack reaches its limit, by two criteria side by side.
 * @param plies - with strengths, from z = −h/2 upwards
 * @param load - forces and moments per width
 * @returns both factors, the lower of them, and the ply and mode that maximum stress names
 * @validity first ply only: a stack often carries more after a cross ply has cracked; no hole, no heat, no fatigue
 * @throws InputError when a ply has no strengths or a number is out of range
 * @source kaw-2006-composites, § 5.3, first ply failure
 */
export function firstPlyFailure(plies: readonly Ply[], load: LaminateLoad): FirstPlyFailure {
  const { points } = laminateResponse(plies, load);
  // Both limits are convex and stress is linear through a ply: its faces decide.
  const found = points
    .filter(({ at }) => at !== 'middle')
    .map((point) => {
      const { strengths } = plies[point.ply]!.material;
      if (!strengths) {
        throw new InputError({
          parameter: 'strengths',
          quantity: 'strengths of a ply',
          value: undefined,
          rule: 'must be given',
        });
      }
      const { factor, mode } = leastFactor(point.plyStress, strengths);
      return { factor, mode, ply: point.ply, tsaiWu: interactionFactor(point.plyStress, strengths) };
    });
  const first = found.reduce((least, point) => (point.factor < least.factor ? point : least));
  const interaction = Math.min(...found.map((point) => point.tsaiWu));
  return {
    maximumStress: first.factor,
    tsaiWu: interaction,
    factor: Math.min(first.factor, interaction),
    mode: first.mode,
    ply: first.ply,
  };
}
