import { TIGHTENING_SCATTER } from '../joint/index.ts';
import { requireBetween } from '../require.ts';

/** Share of the yield stress that a preload aims at, and share of it that later settling may take. */
export const PRELOAD_AIM = 0.65;
export const RELAXATION = 0.05;

/**
 * Preload that a screw is usually tightened to, with the largest and the least that it may turn out.
 * $$P = 0.65\,\sigma_y A_t,\quad P_{max} = 1.25\,P,\quad P_{min} = \frac{0.75\,P}{1.05}$$
 * @param screw - stress area [m²], yield or proof stress [Pa]
 * @returns nominal, largest and least preload [N]
 * @validity torque wrench, metal parts; carbon under a head creeps more than the five per cent
 * @throws InputError when a number is out of range
 * @source chambers-1995-tm106943, Table I
 */
export function preloadBand(screw: { stressArea: number; yieldStrength: number }): {
  nominal: number;
  largest: number;
  least: number;
} {
  requireBetween(screw.stressArea, 1e-9, 1, { parameter: 'stressArea', quantity: 'stress area', kind: 'area' });
  requireBetween(screw.yieldStrength, 1e5, 1e10, {
    parameter: 'yieldStrength',
    quantity: 'yield strength',
    kind: 'stress',
  });
  const nominal = PRELOAD_AIM * screw.yieldStrength * screw.stressArea;
  return {
    nominal,
    largest: nominal * (1 + TIGHTENING_SCATTER),
    least: (nominal * (1 - TIGHTENING_SCATTER)) / (1 + RELAXATION),
  };
}
