import { requireSegments, type ArmSegment } from './segment.ts';

/**
 * Stiffness of a stepped arm against a push along it.
 * $$\frac1k = \sum\frac{L_i}{\sum_j E_j A_j}$$
 * @param segments - from the outer screw to the motor axis
 * @returns force over shortening [N/m]
 * @validity pushed through its middle, far from buckling, linear material
 * @throws InputError when there is no segment or a number is out of range
 * @source gere-2004-mechanics, § 2.3, bars in segments under axial load
 */
export function axialStiffness(segments: readonly ArmSegment[]): number {
  requireSegments(segments);
  const compliance = segments.reduce((sum, { length, layers }) => {
    const rigidity = layers.reduce((all, { section, youngsModulus }) => all + youngsModulus * section.area, 0);
    return sum + length / rigidity;
  }, 0);
  return 1 / compliance;
}
