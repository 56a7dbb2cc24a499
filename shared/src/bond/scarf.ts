import { requireBetween } from '../require.ts';
import { requireLoad } from '../require-physical.ts';

/**
 * Stresses in the bond of a scarf: two parts cut to the same slope and glued.
 * $$\tau = \tfrac12\sigma\sin 2\alpha,\quad \sigma_n = \sigma\sin^2\alpha$$
 * @param given - `stress`: direct stress of the parts beside the scarf [Pa]; `angle`: between bond and load [rad]
 * @returns shear along the bond and tension across it [Pa]
 * @validity equal parts, uniform stress
 * @throws InputError for a negative stress or an angle outside 0.001 rad to a right angle
 * @source willberg-2023-lectures, lecture on joints: stresses of a scarf (angle there is taken from the normal)
 */
export function scarfStress({ stress, angle }: { stress: number; angle: number }): { shear: number; normal: number } {
  requireLoad(stress, { parameter: 'stress', quantity: 'direct stress', kind: 'stress' });
  requireBetween(angle, 1e-3, Math.PI / 2, { parameter: 'angle', quantity: 'scarf angle', kind: 'angle' });
  return { shear: 0.5 * stress * Math.sin(2 * angle), normal: stress * Math.sin(angle) ** 2 };
}
