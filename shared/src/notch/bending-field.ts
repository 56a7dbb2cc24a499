import { meanStressRatio, notchedStrengthRatio } from '../joint/index.ts';
import { requireLength } from '../require-physical.ts';
import { bendingHoleStress } from './hole-field.ts';
import type { HoleMaterial } from './drilled-arm.ts';

export interface HoleInBending {
  /** Of the hole's centre from the neutral axis [m]. */
  offset: number;
  /** [m] */
  radius: number;
  /** From the hole's centre to the edge of the part on the stressed side [m]. */
  edge: number;
  /** Outer fibre of the part without the hole [m]. */
  extremeFibre: number;
  /** What the finite width adds to the stress from the offset, and the lost section to the rest [-]. */
  widthFactor: number;
  sectionFactor: number;
}

/** Ratios of the criteria for the mean tension of an off-centre hole, refusing what no hole is. */
export function tensionRatios(diameter: number, material: HoleMaterial): { point: number; mean: number } {
  const { holeFactor, pointLength, meanLength } = material;
  requireLength(diameter, { parameter: 'holeDiameter', quantity: 'hole diameter' });
  requireLength(pointLength, { parameter: 'pointLength', quantity: 'characteristic length d0' });
  requireLength(meanLength, { parameter: 'meanLength', quantity: 'characteristic length a0' });
  return {
    point: notchedStrengthRatio({ holeDiameter: diameter, characteristicLength: pointLength, holeFactor }),
    mean: meanStressRatio({ holeDiameter: diameter, characteristicLength: meanLength, holeFactor }),
  };
}

/**
 * Stress beside a hole whose axis lies across the plane of bending, by superposition: the tension at the hole's centre
 * with its factor, and the gradient with its own. Over the outer-fibre stress of the whole part.
 * @returns peak for K of 3 and for the laminate; shares left by both criteria
 */
export function holeInBending(
  { offset, radius, edge, extremeFibre, widthFactor, sectionFactor }: HoleInBending,
  material: HoleMaterial,
): { isotropicFactor: number; laminateFactor: number; pointShare: number; meanShare: number } {
  const { holeFactor, pointLength, meanLength } = material;
  const ratios = tensionRatios(2 * radius, material);
  const peak = (factor: number): number =>
    (offset * factor * widthFactor + radius * bendingHoleStress(1, factor) * sectionFactor) / extremeFibre;
  // Neither point nor stretch reaches beyond the edge of the part.
  const at = Math.min(radius + pointLength, edge);
  const point = (offset * widthFactor) / ratios.point + at * bendingHoleStress(radius / at, holeFactor) * sectionFactor;
  const end = Math.min(radius + meanLength, edge);
  // Mean of r + (K-1)/2 R⁶/r⁵ from R to the end.
  const gradient =
    ((end ** 2 - radius ** 2) / 2 + ((holeFactor - 1) / 8) * (radius ** 2 - radius ** 6 / end ** 4)) / (end - radius);
  const mean = (offset * widthFactor) / ratios.mean + gradient * sectionFactor;
  return {
    isotropicFactor: peak(3),
    laminateFactor: peak(holeFactor),
    pointShare: extremeFibre / point,
    meanShare: extremeFibre / mean,
  };
}
