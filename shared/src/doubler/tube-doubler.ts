import { armStress, sleeveEnd, type ArmStress } from './arm-stress.ts';
import { sleeveEndBondShear } from './bond-peak.ts';
import { doubledTube, type DoubledTube } from './doubled-tube.ts';
import { leadInLength, taperFactor } from './lead-in.ts';
import { requiredLength, type RequiredLength } from './required-length.ts';
import { requireTubeDoubler, type TubeDoublerGiven } from './tube-doubler-given.ts';

/** Beyond one diameter from its middle a hole is taken to weaken the tube no longer. */
const HOLE_REACH = 1;
const STATIONS = 32;

export interface TubeDoubler {
  section: DoubledTube;
  /** End-step factor with the taper as chosen. */
  endStep: number;
  leadIn: number;
  required: RequiredLength;
  /** Chosen over required length, minus one. */
  lengthMargin: number;
  /** Allowable over stress at the worst place, with the sleeve as chosen; 1e6 where nothing is stressed. */
  reserve: number;
  worst: 'outer hole' | 'sleeve end' | 'along the arm' | 'sleeve';
  /** Allowable over stress at the outer hole of the bare tube. */
  bareReserve: number;
  /** At the outer screw hole, on the net section [Pa]. */
  outerHole: ArmStress;
  /** Peak elastic bond shear [Pa]. */
  bondPeak: number;
  /** Mass of the sleeve [kg]. */
  mass: number;
  /** Part of it past the required length [kg]. */
  wasted: number;
}

const over = (allowable: number, stress: number): number => (stress * 1e6 <= allowable ? 1e6 : allowable / stress);

/**
 * A sleeve in the root of a tube arm: the length it needs, what the chosen one leaves, and what it weighs.
 * $$\ell = e + s + \max\left(x_1,\; d + x_{95}\right),\qquad m = \rho A_i\left(\ell-\tfrac a2\right)$$
 * @param given - arm, sleeve, adhesive, strengths and the length chosen
 * @returns required length [m], reserves, stresses [Pa] and masses [kg]
 * @validity one blow at the motor axis in one plane; linear parts; hole weakens up to one diameter from its middle
 * @throws InputError when the sleeve does not fit the bore or a value is not physical
 * @derivation `requiredLength` with the end-step factor $K = 1+(K_0-1)f$, where f is what the taper leaves of the
 * transfer peak: the local stress at the end rises with the rate at which load is handed over. The reserve is the least
 * of allowable over stress at the outer hole (net section, strength beside a hole), just past the sleeve's end (times K)
 * and along the whole arm.
 */
export function tubeDoubler(given: TubeDoublerGiven): TubeDoubler {
  requireTubeDoubler(given);
  const section = doubledTube(given);
  const { lambda } = section;
  const { taper, tubeStrength, sleeveStrength, holeShare, length } = given;
  const endStep = 1 + (given.squareEndFactor - 1) * taperFactor({ lambda, taper });
  const leadIn = leadInLength({ lambda, taper });
  const required = requiredLength({
    ...given,
    bare: section.whole.tube,
    allowable: tubeStrength,
    endStep,
    holeReach: HOLE_REACH * given.holeDiameter,
    leadIn,
  });

  const outerHole = armStress(given, section, { position: 0, sharing: section.atHole });
  const end = sleeveEnd(given);
  const atEnd = armStress(given, section, { position: end, sharing: section.whole });
  // Past the sleeve and the outer screw the moment only falls, so the worst place lies before.
  const last = Math.max(end, 0);
  const along = Array.from({ length: STATIONS + 1 }, (_, i) =>
    armStress(given, section, {
      position: last - ((last + given.screwSpacing) * i) / STATIONS,
      sharing: section.whole,
    }),
  );
  along.push(armStress(given, section, { position: 0, sharing: section.whole }));
  const reserves: Record<TubeDoubler['worst'], number> = {
    'outer hole': over(holeShare * tubeStrength, outerHole.tube),
    'sleeve end': over(tubeStrength, endStep * atEnd.bare),
    'along the arm': over(tubeStrength, Math.max(...along.map(({ tube }) => tube))),
    sleeve: Math.min(
      over(holeShare * sleeveStrength, outerHole.sleeve),
      over(sleeveStrength, Math.max(...along.map(({ sleeve }) => sleeve))),
    ),
  };
  const places = Object.keys(reserves) as TubeDoubler['worst'][];
  const worst = places.reduce((least, place) => (reserves[place] < reserves[least] ? place : least));

  const perLength = given.sleeveDensity * section.geometry.sleeve.area;
  return {
    section,
    endStep,
    leadIn,
    required,
    lengthMargin: length / required.length - 1,
    reserve: reserves[worst],
    worst,
    bareReserve: over(holeShare * tubeStrength, outerHole.bare),
    outerHole,
    bondPeak: sleeveEndBondShear(given, section),
    mass: perLength * (length - taper / 2),
    wasted: perLength * Math.max(length - required.length, 0),
  };
}
