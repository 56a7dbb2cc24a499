import { requireDuctile, type DuctileAdhesive } from './elastic-plastic.ts';
import { requireLength } from '../require-physical.ts';
import { requireBetween } from '../require.ts';

export interface BalancedDoubleLap {
  adhesive: DuctileAdhesive;
  /** Modulus times thickness of the inner sheet, equal to that of both outer sheets together [N/m]. */
  stiffness: number;
  /** Overlap [m]. */
  overlap: number;
}

export interface PlasticLap {
  /** Load per width of the whole joint at which the adhesive breaks [N/m]. */
  strength: number;
  /** Length that has yielded at each end [m]. */
  plasticLength: number;
  /** Whether the adhesive has yielded from end to end. */
  yieldedThrough: boolean;
}

/** Root of a rising function between 0 and `top`, by halving. */
function rootBelow(top: number, rising: (x: number) => number): number {
  let low = 0;
  let high = top;
  for (let i = 0; i < 200 && low < high; i += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Strength of a balanced double lap of any overlap with an adhesive that yields.
 * $$\tfrac12(\lambda l_p)^2+\lambda l_p\tanh\lambda\left(\tfrac L2-l_p\right)=\frac{\gamma_p}{\gamma_e},\quad
 * P = 2\tau_p\left[2l_p+\tfrac2\lambda\tanh\lambda\left(\tfrac L2-l_p\right)\right]$$
 * @param given - adhesive, stiffness of the inner sheet [N/m] and overlap [m]
 * @returns strength per width [N/m], yielded length at each end [m], and whether all of it has yielded
 * @validity inner sheet as stiff as both outer ones together; no peel
 * @throws InputError for values that are not physical
 * @source hart-smith-1973-doublelap, elastic-plastic double lap
 */
export function balancedDoubleLapStrength({ adhesive, stiffness, overlap }: BalancedDoubleLap): PlasticLap {
  requireDuctile(adhesive);
  requireBetween(stiffness, 1e-3, 1e15, {
    parameter: 'stiffness',
    quantity: 'stiffness of the inner sheet',
    kind: 'stiffness',
  });
  requireLength(overlap, { parameter: 'overlap', quantity: 'overlap' });
  const { shearModulus, thickness, yieldShear, plasticRatio } = adhesive;
  const lambda = Math.sqrt((4 * shearModulus) / (thickness * stiffness));
  const half = overlap / 2;
  if ((lambda * half) ** 2 / 2 <= plasticRatio) {
    return { strength: 2 * yieldShear * overlap, plasticLength: half, yieldedThrough: true };
  }
  const strain = (length: number): number =>
    (lambda * length) ** 2 / 2 + lambda * length * Math.tanh(lambda * (half - length));
  const plasticLength = rootBelow(half, (length) => strain(length) - plasticRatio);
  const elastic = (2 / lambda) * Math.tanh(lambda * (half - plasticLength));
  return { strength: 2 * yieldShear * (2 * plasticLength + elastic), plasticLength, yieldedThrough: false };
}
