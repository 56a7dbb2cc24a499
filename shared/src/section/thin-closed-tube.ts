import { requirePositive } from '../require.ts';

export interface ThinClosedTube {
  /** Inside the middle line of the wall [m²]. */
  enclosedArea: number;
  /** Length of the middle line [m]. */
  perimeter: number;
  /** [m] */
  wall: number;
}

/**
 * Torsion constant of a thin closed tube of any outline and even wall.
 * $$J = \frac{4 A_0^2\,t}{S}$$
 * @param tube - area inside the middle line [m²], length of that line [m], wall [m]
 * @returns torsion constant [m⁴]
 * @validity wall thin against the outline; for a round tube low by (t/d)² of the mean diameter d
 * @throws InputError when a size is not positive
 * @source pytel-2012-mechanics, § 3.3, torsion of thin-walled tubes
 */
export function thinClosedTorsionConstant({ enclosedArea, perimeter, wall }: ThinClosedTube): number {
  requirePositive(enclosedArea, { parameter: 'enclosedArea', quantity: 'area inside the middle line', kind: 'area' });
  requirePositive(perimeter, { parameter: 'perimeter', quantity: 'length of the middle line', kind: 'length' });
  requirePositive(wall, { parameter: 'wall', quantity: 'wall thickness', kind: 'length' });
  return (4 * enclosedArea ** 2 * wall) / perimeter;
}
