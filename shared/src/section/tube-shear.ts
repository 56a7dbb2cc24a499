import { requireFinite } from '../require.ts';
import { requireTube, type RoundTube } from './round-tube.ts';

/**
 * Largest shear stress in the wall of a tube under a force across it, at the neutral axis.
 * $$\tau = \frac{4V}{3A}\,\frac{r_o^2+r_o r_i+r_i^2}{r_o^2+r_i^2}$$
 * @param tube - outside diameter and wall [m]
 * @param shear - force across the tube [N]
 * @returns shear stress [Pa]
 * @validity isotropic wall away from loads; tends to 2V/A for a thin wall
 * @throws InputError when the sizes do not make a tube
 * @source gere-2004-mechanics, § 5.9
 */
export function tubePeakShearStress(tube: RoundTube, shear: number): number {
  requireTube(tube);
  requireFinite(shear, { parameter: 'shear', quantity: 'shear force', kind: 'force' });
  const outer = tube.outerDiameter / 2;
  const inner = outer - tube.wall;
  const squares = outer ** 2 + inner ** 2;
  const area = Math.PI * tube.wall * (outer + inner);
  return ((4 * shear) / (3 * area)) * ((squares + outer * inner) / squares);
}
