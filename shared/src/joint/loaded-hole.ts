import { requireBelow, requireNotNegative, requirePositive } from '../require.ts';

const force = (value: number): void =>
  requireNotNegative(value, { parameter: 'force', quantity: 'force on the hole', kind: 'force' });
const length = (value: number, parameter: string, quantity: string): void =>
  requirePositive(value, { parameter, quantity, kind: 'length' });

/**
 * Mean pressure of a screw on the wall of its hole.
 * $$\sigma_b = \frac{F}{d\,t}$$
 * @param hole - force [N], hole diameter, thickness over all walls bearing together [m]
 * @returns bearing stress [Pa]
 * @validity screw fits its hole; a slack one presses on less
 * @throws InputError when a number is out of range
 * @source willberg-2023-lectures, exercise 2; shigley-2011-design, Example 8-7
 */
export function bearingStress(hole: { force: number; diameter: number; thickness: number }): number {
  force(hole.force);
  length(hole.diameter, 'diameter', 'hole diameter');
  length(hole.thickness, 'thickness', 'thickness');
  return hole.force / (hole.diameter * hole.thickness);
}

/**
 * Mean tension beside a hole.
 * $$\sigma_n = \frac{F}{(w-d)\,t}$$
 * @param hole - force [N], width of the strip, hole diameter, thickness [m]
 * @returns net-section stress [Pa]
 * @validity hole on the centre line of the strip
 * @throws InputError when a number is out of range or the hole is as wide as the strip
 * @source willberg-2023-lectures, exercise 2
 */
export function netSectionStress(hole: { force: number; width: number; diameter: number; thickness: number }): number {
  force(hole.force);
  length(hole.diameter, 'diameter', 'hole diameter');
  length(hole.thickness, 'thickness', 'thickness');
  requirePositive(hole.width, { parameter: 'width', quantity: 'width', kind: 'length' });
  requireBelow(hole.diameter, hole.width, 'must be smaller than the width', {
    parameter: 'diameter',
    quantity: 'hole diameter',
    kind: 'length',
  });
  return hole.force / ((hole.width - hole.diameter) * hole.thickness);
}

/**
 * Mean shear on the two planes along which a screw tears out towards an edge.
 * $$\tau = \frac{F}{2\,l\,t}$$
 * @param hole - force [N], length of one plane, thickness [m]
 * @returns shear-out stress [Pa]
 * @validity l from the edge of the hole to the edge of the part on the safe side (NASA), from the centre of the hole in
 * the lecture's form; the caller chooses
 * @throws InputError when a number is out of range
 * @source chambers-1995-tm106943, pp. 19-20; willberg-2023-lectures, exercise 2
 */
export function shearOutStress(hole: { force: number; shearLength: number; thickness: number }): number {
  force(hole.force);
  length(hole.shearLength, 'shearLength', 'shear-out length');
  length(hole.thickness, 'thickness', 'thickness');
  return hole.force / (2 * hole.shearLength * hole.thickness);
}
