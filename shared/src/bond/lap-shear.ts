import { requireBetween } from '../require.ts';
import { requireLength, requireLoad, requireStrength } from '../require-physical.ts';

/**
 * Mean shear stress of a bonded patch, what a coupon test reports.
 * $$\tau_{mean} = \frac{F}{bL}$$
 * @param given - `force` [N]; `width` [m]; `overlap` [m]
 * @returns mean shear stress [Pa]
 * @validity a coupon value is not an allowable: its own peak is a few times higher
 * @throws InputError for a negative force or sizes that are not physical
 * @source astm-2010-d1002, calculation of apparent shear strength
 */
export function meanLapShear({ force, width, overlap }: { force: number; width: number; overlap: number }): number {
  requireLoad(force, { parameter: 'force', quantity: 'force', kind: 'force' });
  requireLength(width, { parameter: 'width', quantity: 'bond width' });
  requireLength(overlap, { parameter: 'overlap', quantity: 'overlap' });
  return force / (width * overlap);
}

/**
 * Apparent lap shear of adhesive classes [Pa] at −40 °C, 25 °C and 75 °C.
 * @source petrie-2000-adhesives, Table 10.10
 */
export const LAP_SHEAR_LEVELS = {
  'amine epoxy, not toughened': { cold: 6.9e6, room: 8.6e6, hot: 4.4e6 },
  'amine epoxy, rubber toughened': { cold: 22.7e6, room: 17.9e6, hot: 5.5e6 },
} as const;

/**
 * Strength of an adhesive at the temperature of use.
 * $$\tau_a = f_T\,\tau_{room}$$
 * @param given - `room`: strength at room temperature [Pa]; `kept`: share kept at the temperature of use
 * @returns strength to design with [Pa]
 * @validity the share is stated, not worked out: take it from the adhesive's own sheet
 * @throws InputError when the share is outside 0.01 to 1.5
 * @derivation A stated knock-down. Two measured shares are in `LAP_SHEAR_LEVELS`: hot over room.
 */
export function strengthAtTemperature({ room, kept }: { room: number; kept: number }): number {
  requireStrength(room, { parameter: 'strength', quantity: 'adhesive strength' });
  requireBetween(kept, 0.01, 1.5, { parameter: 'kept', quantity: 'share kept at temperature', kind: 'percent' });
  return room * kept;
}
