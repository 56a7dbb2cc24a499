import { requireBetween, requirePositive } from '../require.ts';
import type { ArmSegment, Layer } from './segment.ts';

export interface VariedBeam {
  /** [m] */
  length: number;
  /** Even segments that stand in for the smooth shape [-]. */
  count: number;
  /** Layers at a share of the length, 0 at the root and 1 at the tip. */
  layersAt: (share: number) => readonly Layer[];
}

/**
 * A beam whose section changes along it, as even segments, each with the section of its middle.
 * $$x_i = \frac{i+\tfrac12}{n}\,L$$
 * @param beam - length [m], number of segments [-], layers by place
 * @returns segments from the root to the tip
 * @validity slow changes of section; the error of a stiffness falls with the square of the number of segments
 * @throws InputError when the length is not positive or the number of segments is not between 1 and 1000
 * @derivation midpoint rule for the integral of M²/EI
 */
export function variedSegments({ length, count, layersAt }: VariedBeam): ArmSegment[] {
  requirePositive(length, { parameter: 'length', quantity: 'length', kind: 'length' });
  requireBetween(count, 1, 1000, { parameter: 'count', quantity: 'number of segments', kind: 'count' });
  const whole = Math.floor(count);
  return Array.from({ length: whole }, (_, i) => ({ length: length / whole, layers: layersAt((i + 0.5) / whole) }));
}
