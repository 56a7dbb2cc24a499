import { sleeveEnd } from './arm-stress.ts';
import type { DoubledTube } from './doubled-tube.ts';
import { taperFactor } from './lead-in.ts';
import { rootMoment } from './root-moment.ts';
import type { TubeDoublerGiven } from './tube-doubler-given.ts';

/**
 * Highest shear stress of the bond, at the outer end of the sleeve.
 * $$\tau_{max} = f\,\lambda\,\sigma_i t_i,\qquad \sigma_i = \frac{E_i M(x_e)\,r}{E_oI_o+E_iI_i}$$
 * @param given - arm and sleeve
 * @param tube - its sections and rate of transfer
 * @returns elastic peak shear at the extreme fibre [Pa]
 * @validity elastic adhesive; no credit for the sleeve pressing on the bore, so it is on the safe side. Peel is not
 * included
 * @throws InputError for values that are not physical
 * @derivation The sleeve wall's force per width builds up as $\sigma_i t_i(1-e^{-\lambda x})$; its slope at the end is the
 * bond shear. `taperFactor` is what a taper leaves of it.
 */
export function sleeveEndBondShear(given: TubeDoublerGiven, { lambda, whole, geometry }: DoubledTube): number {
  const moment = rootMoment(given, sleeveEnd(given));
  const stiffness =
    given.tubeModulus * whole.tube.secondMomentOfArea + given.sleeveModulus * whole.sleeve.secondMomentOfArea;
  const sleeveStress = (given.sleeveModulus * moment * geometry.bondRadius) / stiffness;
  return taperFactor({ lambda, taper: given.taper }) * lambda * sleeveStress * given.sleeveWall;
}
