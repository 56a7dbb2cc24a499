import type { DoubledTube, Sharing } from './doubled-tube.ts';
import { shareReached } from './lead-in.ts';
import { rootMoment } from './root-moment.ts';
import type { TubeDoublerGiven } from './tube-doubler-given.ts';

/** Where the sleeve ends, from the outer screw [m]. Behind the screw it is negative. */
export const sleeveEnd = ({ length, edgeDistance, screwSpacing }: TubeDoublerGiven): number =>
  length - edgeDistance - screwSpacing;

export interface ArmStress {
  /** Outer-fibre stress of the tube without a sleeve [Pa]. */
  bare: number;
  /** Outer-fibre stress of the tube with the sleeve [Pa]. */
  tube: number;
  /** Outer-fibre stress of the sleeve [Pa]. */
  sleeve: number;
}

/**
 * Outer-fibre stress of tube and sleeve at one station.
 * $$\sigma_t(x) = \frac{M(x)\,(1-s\,s_x)\,c_t}{I_t},\qquad \sigma_i(x) = \frac{M(x)\,s\,s_x\,c_i}{I_i}$$
 * @param given - arm and sleeve
 * @param tube - its sections and rate of transfer
 * @param at - position from the outer screw [m], and the sharing of the section there: whole or at a hole
 * @returns stresses [Pa]; the end-step factor is not in them
 * @validity the sleeve's inner end, where tube and sleeve both end, needs no lead-in because the moment is zero there
 * @throws InputError for values that are not physical
 * @derivation The sleeve carries its share s times the part s_x that the bond has handed over; the tube the rest.
 */
export function armStress(
  given: TubeDoublerGiven,
  tube: DoubledTube,
  { position, sharing }: { position: number; sharing: Sharing },
): ArmStress {
  const moment = rootMoment(given, position);
  const reached = shareReached({ lambda: tube.lambda, taper: given.taper, distance: sleeveEnd(given) - position });
  const perMoment = sharing.tube.extremeFibre / sharing.tube.secondMomentOfArea;
  const carried = sharing.share * reached;
  return {
    bare: moment * perMoment,
    tube: moment * (1 - carried) * perMoment,
    sleeve: (moment * carried * sharing.sleeve.extremeFibre) / sharing.sleeve.secondMomentOfArea,
  };
}
