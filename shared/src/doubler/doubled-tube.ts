import { sleeveGeometry, type SleeveGeometry, type SleeveInTube } from '../bond/index.ts';
import { requireModulus } from '../require-physical.ts';
import { drilledTubeSection, type BendingPlane, type Plane } from '../section/index.ts';

export interface DoubledTubeGiven extends SleeveInTube {
  /** Young's modulus of the tube along the arm [Pa]. */
  tubeModulus: number;
  /** Young's modulus of the sleeve along the arm [Pa]. */
  sleeveModulus: number;
  /** Shear modulus of the adhesive [Pa]. */
  shearModulus: number;
  /** Screw hole through tube and sleeve [m]. */
  holeDiameter: number;
  /** Plane in which the arm is bent; the screws stand vertical. */
  plane: Plane;
}

/** One cross-section of tube and sleeve working together. */
export interface Sharing {
  tube: BendingPlane;
  sleeve: BendingPlane;
  /** Part of the moment that the sleeve carries once the bond has handed it over. */
  share: number;
}

export interface DoubledTube {
  geometry: SleeveGeometry;
  /** Where there is no hole. */
  whole: Sharing;
  /** At the middle of a screw hole. */
  atHole: Sharing;
  /** Rate at which the bond hands the share over [1/m]. */
  lambda: number;
}

/**
 * How a tube and a sleeve bonded in it share bending, and how fast the sleeve takes its share.
 * $$s = \frac{E_iI_i}{E_oI_o+E_iI_i},\quad \lambda^2 = \frac{G_a}{t_a}\left(\frac{1}{E_ot_o}+\frac{1}{E_it_i}\right)$$
 * @param given - sizes, moduli, hole and plane of bending
 * @returns shares with and without the hole, and the rate of transfer [1/m]
 * @validity thin walls for the rate; both parts bend about one axis
 * @throws InputError when the sleeve does not fit, the hole is wider than a part, or a value is not physical
 * @source willberg-2023-lectures, seminar Aufgabe 3, for the rate of transfer
 * @derivation Equal curvature: moments in the ratio of EI. The rate is that of a lap of two strips, tube wall and
 * sleeve wall, at the extreme fibre.
 */
export function doubledTube({
  tubeModulus,
  sleeveModulus,
  shearModulus,
  holeDiameter,
  plane,
  ...parts
}: DoubledTubeGiven): DoubledTube {
  requireModulus(tubeModulus, { parameter: 'tubeModulus', quantity: 'modulus of the tube' });
  requireModulus(sleeveModulus, { parameter: 'sleeveModulus', quantity: 'modulus of the sleeve' });
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'adhesive shear modulus' });
  const geometry = sleeveGeometry(parts);
  const { tubeWall, bondLine } = geometry;
  const sharing = (tube: BendingPlane, sleeve: BendingPlane): Sharing => {
    const ofSleeve = sleeveModulus * sleeve.secondMomentOfArea;
    return { tube, sleeve, share: ofSleeve / (tubeModulus * tube.secondMomentOfArea + ofSleeve) };
  };
  const drilled = (outerDiameter: number, wall: number): BendingPlane =>
    drilledTubeSection({ outerDiameter, wall, holeDiameter, holeAxis: 'vertical' })[plane];
  return {
    geometry,
    whole: sharing(geometry.tube[plane], geometry.sleeve[plane]),
    atHole: sharing(drilled(parts.tubeOutside, tubeWall), drilled(parts.sleeveOutside, parts.sleeveWall)),
    lambda: Math.sqrt(
      (shearModulus / bondLine) * (1 / (tubeModulus * tubeWall) + 1 / (sleeveModulus * parts.sleeveWall)),
    ),
  };
}
