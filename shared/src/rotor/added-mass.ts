import { requireBetween } from '../require.ts';
import { requireMass } from './require-rotor.ts';

/**
 * Hover power after a change of mass, over the power before.
 * $$\frac{P_2}{P_1} = \Bigl(1+\frac{\Delta m}{m}\Bigr)^{3/2}$$
 * @param change - all-up mass before [kg], added mass, negative for a saving [kg]
 * @returns power ratio [-]
 * @validity same propellers, air and figure of merit; battery voltage held
 * @throws InputError when a mass is out of range or more is taken off than there is
 * @derivation momentum theory: power goes as thrust to the power 3/2
 */
export function hoverPowerRatio({ mass, addedMass }: { mass: number; addedMass: number }): number {
  requireMass(mass, 'mass', 'all-up mass');
  requireBetween(addedMass, -0.9 * mass, 100 * mass, { parameter: 'addedMass', quantity: 'added mass', kind: 'mass' });
  return (1 + addedMass / mass) ** 1.5;
}
