import { requireBetween } from '../require.ts';

/** Resistivity of annealed copper at 20 °C [Ω·m]. */
export const COPPER_RESISTIVITY = 1.7241e-8;

export interface Conductor {
  /** Of the solid round wire of this gauge [m]. */
  diameter: number;
  /** [m²] */
  area: number;
  /** Of copper at 20 °C [Ω/m]. */
  resistancePerLength: number;
}

/**
 * Copper of a wire by its American gauge: what must pass through an arm, insulation not counted.
 * $$d = 0.127\,\text{mm}\cdot 92^{(36-n)/39}$$
 * @param gauge - American wire gauge n [-]
 * @returns diameter [m], area [m²], resistance per length [Ω/m]
 * @validity solid wire; a stranded one of the same area is about an eighth thicker, insulation comes on top
 * @throws InputError when the gauge is outside 0..40
 * @source astm-b258-gauge, definition of the series
 */
export function wireGauge(gauge: number): Conductor {
  requireBetween(gauge, 0, 40, { parameter: 'gauge', quantity: 'wire gauge', kind: 'count' });
  const diameter = 0.127e-3 * 92 ** ((36 - gauge) / 39);
  const area = (Math.PI / 4) * diameter ** 2;
  return { diameter, area, resistancePerLength: COPPER_RESISTIVITY / area };
}
