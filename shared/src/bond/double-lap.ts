import { singleLap, type LapGiven, type LapShear } from './single-lap.ts';

export interface DoubleLapGiven extends Pick<LapGiven, 'loadPerWidth' | 'overlap' | 'layer'> {
  /** The sheet in the middle, which carries the whole load. */
  inner: LapGiven['first'];
  /** One of the two equal sheets outside. */
  outer: LapGiven['first'];
}

/**
 * Shear stress along a double lap: one sheet between two equal ones.
 * $$\lambda = \sqrt{\frac{G}{h}\left(\frac{2}{E_it_i}+\frac{1}{E_ot_o}\right)}$$
 * @param given - load of the whole joint, overlap, sheets and adhesive layer
 * @returns mean, peak and course of the bond shear of either bond [Pa]; position 0 is where the inner sheet is loaded
 * @validity peel at the ends of the outer sheets is not included
 * @throws InputError for sizes and moduli that are not physical
 * @derivation By symmetry each bond joins half the inner sheet, under half the load, to one outer sheet.
 */
export function doubleLap({ loadPerWidth, overlap, inner, outer, layer }: DoubleLapGiven): LapShear {
  return singleLap({
    loadPerWidth: loadPerWidth / 2,
    overlap,
    first: { modulus: inner.modulus, thickness: inner.thickness / 2 },
    second: outer,
    layer,
  });
}
