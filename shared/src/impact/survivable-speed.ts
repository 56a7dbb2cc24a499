import { requirePositive } from '../require.ts';

export interface LoadAgainstLimit {
  /** Speed of the hit that gave the load [m/s]. */
  speed: number;
  /** Load, stress or movement at that speed; any unit. */
  applied: number;
  /** What the part stands, in the same unit. */
  allowable: number;
}

/**
 * Speed of the same hit at which a part just reaches its limit.
 * $$v_s = v\,\frac{\text{allowable}}{\text{applied}}$$
 * @param load - speed, applied, allowable
 * @returns survivable speed [m/s]
 * @validity everything linear, so that load grows in step with speed; for ranking, not for promises
 * @throws InputError when a number is not positive
 * @derivation F = v√(km) and linear statics: applied ∝ v
 */
export function survivableSpeed({ speed, applied, allowable }: LoadAgainstLimit): number {
  requirePositive(speed, { parameter: 'speed', quantity: 'speed', kind: 'speed' });
  requirePositive(applied, { parameter: 'applied', quantity: 'applied load' });
  requirePositive(allowable, { parameter: 'allowable', quantity: 'allowable load' });
  return (speed * allowable) / applied;
}
