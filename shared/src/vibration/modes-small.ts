import { take, type Space } from './modes-space.ts';
import { settle } from './modes-tridiagonal.ts';
import type { Directions } from './modes-vectors.ts';

export interface Eigenpair {
  /** ω² [rad²/s²]. */
  value: number;
  /** Of length 1 in the measure of M. */
  vector: Float64Array;
}

/** Largest error of an eigenvalue, as a share of it. */
const SETTLED = 1e-13;

/** K⁻¹ M in the rows: a small matrix with a diagonal and what stands beside it. */
export interface Small {
  rows: Directions;
  /** Row in which it begins. */
  first: number;
  diagonal: number[];
  beside: number[];
}

/** The modes as the small problem has them; none while one is still on the move, unless there is no more to come. */
export function settledModes(
  { rows, first, diagonal, beside }: Small,
  { wanted, last, memory }: { wanted: number; last: boolean; memory: Space },
): Eigenpair[] | undefined {
  const small = diagonal.length;
  const { values, vectors } = settle(diagonal, beside);
  const order = values
    .map((_, i) => i)
    .sort((i, j) => values[j]! - values[i]!)
    .slice(0, wanted);
  const unsettled = (i: number): boolean => {
    const [value, residual] = [values[i]!, Math.abs(beside[small - 1]! * vectors[(small - 1) * small + i]!)];
    let gap = value;
    for (let j = 0; j < small; j++) if (j !== i) gap = Math.min(gap, Math.abs(value - values[j]!));
    // The error is below the residual, and below its square over the gap to the next one.
    return residual > SETTLED * value && residual * residual > SETTLED * value * gap;
  };
  if (!last && order.some(unsettled)) return undefined;
  return order.map((i) => {
    const vector = take(memory, rows.size);
    for (let k = 0; k < small; k++) combine(vector, vectors[k * small + i]!, rows.x, (first + k) * rows.size);
    return { value: 1 / values[i]!, vector };
  });
}

function combine(sum: Float64Array, part: number, x: Float64Array, from: number): void {
  for (let i = 0; i < sum.length; i++) sum[i]! += part * x[from + i]!;
}
