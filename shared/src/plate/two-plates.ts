import { InputError } from '../error.ts';
import { requireBetween, requireNotNegative } from '../require.ts';
import { requireLength, requireModulus } from '../require-physical.ts';
import { requireThickness } from './rigidity.ts';

export interface PlateStrip {
  /** [m] */
  thickness: number;
  /** Along the strip [Pa]. */
  youngsModulus: number;
}

/** How two plates are joined: not at all, held parallel at the far end, or against sliding all along. */
export type PlateLink = 'sliding' | 'tied' | 'bonded';

export interface TwoPlates {
  /** Of both [m]. */
  width: number;
  bottom: PlateStrip;
  /** Not given: there is one plate. */
  top?: PlateStrip;
  /** Between the faces of the two plates: the arm, or a spacer [m]. */
  gap: number;
}

export interface TwoPlatesRigidity {
  /** Of the bottom plate alone [N·m²]. */
  bottom: number;
  /** Both, each bending about its own middle [N·m²]. */
  separate: number;
  /** Both as one section, one pulled and the other pushed [N·m²]. */
  together: number;
  /** Middle of one plate to the middle of the other [m]. */
  distance: number;
  /** Share of the rigidity of the whole section that comes from the distance [-]. */
  share: number;
}

/**
 * Refuses a link that is none of the three.
 * @throws InputError when it is unknown
 */
export function requireLink(link: PlateLink): void {
  if (['sliding', 'tied', 'bonded'].includes(link)) return;
  throw new InputError({
    parameter: 'link',
    quantity: 'how the plates are joined',
    value: link,
    rule: 'must be one of those listed',
  });
}

/**
 * Bending rigidity of one plate, of two that slide on each other, and of two that act as one.
 * $$EI_{sep}=\sum E_i\frac{w t_i^3}{12},\qquad EI = EI_{sep} + \frac{E_1A_1\,E_2A_2}{E_1A_1+E_2A_2}h^2$$
 * @param plates - width, both plates, gap
 * @returns rigidities, distance and its share
 * @validity strips of equal width; plane sections for the last one, so no sliding at all
 * @throws InputError when a number is out of range
 * @source pytel-2012-mechanics, Appendix A, parallel axes, each area weighted with its modulus
 */
export function twoPlates({ width, bottom, top, gap }: TwoPlates): TwoPlatesRigidity {
  requireLength(width, { parameter: 'width', quantity: 'width of the plate' });
  requireNotNegative(gap, { parameter: 'gap', quantity: 'gap between the plates', kind: 'length' });
  requireBetween(gap, 0, 10, { parameter: 'gap', quantity: 'gap between the plates', kind: 'length' });
  const rigidity = ({ thickness, youngsModulus }: PlateStrip) => {
    requireThickness(thickness);
    requireModulus(youngsModulus, { parameter: 'youngsModulus', quantity: 'Young’s modulus of the plate' });
    return { bending: (youngsModulus * width * thickness ** 3) / 12, axial: youngsModulus * width * thickness };
  };
  const one = rigidity(bottom);
  if (!top) return { bottom: one.bending, separate: one.bending, together: one.bending, distance: 0, share: 0 };
  const other = rigidity(top);
  const distance = gap + (bottom.thickness + top.thickness) / 2;
  const separate = one.bending + other.bending;
  const together = separate + ((one.axial * other.axial) / (one.axial + other.axial)) * distance ** 2;
  return { bottom: one.bending, separate, together, distance, share: 1 - separate / together };
}
