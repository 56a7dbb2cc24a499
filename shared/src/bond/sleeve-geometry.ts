import { InputError } from '../error.ts';
import { requireBelow } from '../require.ts';
import { roundTubeSection, type Section } from '../section/index.ts';
import { requireLength } from '../require-physical.ts';

/** A sleeve inside a tube, or a tube over a spigot. */
export interface SleeveInTube {
  /** Outside diameter of the outer tube [m]. */
  tubeOutside: number;
  /** Bore of the outer tube [m]. */
  tubeInside: number;
  /** Outside diameter of the sleeve [m]. */
  sleeveOutside: number;
  /** Wall of the sleeve [m]. */
  sleeveWall: number;
}

export interface SleeveGeometry {
  tube: Section;
  sleeve: Section;
  tubeWall: number;
  /** Gap on radius that the adhesive fills [m]. */
  bondLine: number;
  /** Radius of the middle of the bond line [m]. */
  bondRadius: number;
}

/**
 * Sections, gap and bond radius of a sleeve in a tube.
 * $$h = \frac{d_t - D_s}{2},\quad r = \frac{d_t + D_s}{4}$$
 * @param given - diameters and wall
 * @returns sections of both parts, gap and mean bond radius [m]
 * @validity concentric parts, even gap
 * @throws InputError when the bore is not smaller than the tube, or the sleeve does not fit the bore
 * @derivation geometry of two circles about one centre
 */
export function sleeveGeometry({ tubeOutside, tubeInside, sleeveOutside, sleeveWall }: SleeveInTube): SleeveGeometry {
  requireLength(tubeOutside, { parameter: 'tubeOutside', quantity: 'tube outside diameter' });
  requireLength(tubeInside, { parameter: 'tubeInside', quantity: 'tube bore' });
  requireLength(sleeveOutside, { parameter: 'sleeveOutside', quantity: 'sleeve outside diameter' });
  requireLength(sleeveWall, { parameter: 'sleeveWall', quantity: 'sleeve wall' });
  const length = 'length' as const;
  requireBelow(tubeInside, tubeOutside - 2e-7, 'must be smaller than the outside diameter', {
    parameter: 'tubeInside',
    quantity: 'tube bore',
    kind: length,
  });
  const bondLine = (tubeInside - sleeveOutside) / 2;
  if (bondLine < 1e-7) {
    throw new InputError({
      parameter: 'sleeveOutside',
      quantity: 'sleeve outside diameter',
      value: sleeveOutside,
      rule: 'must leave a gap for adhesive in the bore',
      limit: tubeInside,
      kind: length,
    });
  }
  requireBelow(sleeveWall, sleeveOutside / 2, 'must be smaller than the radius of the sleeve', {
    parameter: 'sleeveWall',
    quantity: 'sleeve wall',
    kind: length,
  });
  const tubeWall = (tubeOutside - tubeInside) / 2;
  return {
    tube: roundTubeSection({ outerDiameter: tubeOutside, wall: tubeWall }),
    sleeve: roundTubeSection({ outerDiameter: sleeveOutside, wall: sleeveWall }),
    tubeWall,
    bondLine,
    bondRadius: (tubeInside + sleeveOutside) / 4,
  };
}

/**
 * Area of the bond of a sleeve in a tube.
 * $$A_b = 2\pi r L$$
 * @param given - sleeve and tube, and the overlap [m]
 * @returns bond area [m²]
 * @validity bonded all round
 * @throws InputError when the sleeve does not fit the bore or the overlap is not a physical length
 * @derivation side of the cylinder at the middle of the bond line
 */
export function sleeveBondArea({ overlap, ...parts }: SleeveInTube & { overlap: number }): number {
  requireLength(overlap, { parameter: 'overlap', quantity: 'overlap' });
  return 2 * Math.PI * sleeveGeometry(parts).bondRadius * overlap;
}
