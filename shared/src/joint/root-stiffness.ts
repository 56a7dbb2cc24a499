import { requirePositive } from '../require.ts';

export interface ScrewedPair {
  /** Of the screw [m]. */
  diameter: number;
  /** The two parts. */
  parts: readonly [{ thickness: number; modulus: number }, { thickness: number; modulus: number }];
  /** Of the screw [Pa]. */
  screwModulus: number;
}

/**
 * Stiffness of one screw through two carbon parts in single shear, with the tilting of the screw in its holes.
 * $$\frac1k = \Bigl(\frac{t_1+t_2}{2d}\Bigr)^{2/3} 4.2\,\Bigl(\frac{1}{t_1E_1}+\frac{1}{t_2E_2}+\frac{1}{2t_1E_f}+\frac{1}{2t_2E_f}\Bigr)$$
 * @param pair - screw diameter, thickness and modulus of both parts, modulus of the screw
 * @returns force over movement [N/m]
 * @validity tight holes; formulas of other authors differ by a factor of three
 * @throws InputError when a number is not positive
 * @source huth-1986-flexibility, bolted carbon, single shear
 */
export function screwStiffness({ diameter, parts, screwModulus }: ScrewedPair): number {
  requirePositive(diameter, { parameter: 'diameter', quantity: 'screw diameter', kind: 'length' });
  requirePositive(screwModulus, { parameter: 'screwModulus', quantity: 'modulus of the screw', kind: 'modulus' });
  for (const { thickness, modulus } of parts) {
    requirePositive(thickness, { parameter: 'thickness', quantity: 'thickness of a part', kind: 'length' });
    requirePositive(modulus, { parameter: 'modulus', quantity: 'modulus of a part', kind: 'modulus' });
  }
  const slender = ((parts[0].thickness + parts[1].thickness) / (2 * diameter)) ** (2 / 3);
  const flexibility = parts.reduce(
    (sum, p) => sum + 1 / (p.thickness * p.modulus) + 1 / (2 * p.thickness * screwModulus),
    0,
  );
  return 1 / (slender * 4.2 * flexibility);
}

/**
 * Rotational stiffness of a root on two equal springs.
 * $$k_\theta = \frac{k s^2}{2}$$
 * @param root - stiffness of the arm on one screw [N/m], screw spacing [m]
 * @returns moment over rotation [N·m/rad]
 * @validity plates rigid, no gaps: play comes on top
 * @throws InputError when a number is not positive
 * @derivation a moment M loads both springs with M/s, each gives by M/(s k), and the root turns by both over s
 */
export function rootStiffness(root: { screwStiffness: number; screwSpacing: number }): number {
  requirePositive(root.screwStiffness, {
    parameter: 'screwStiffness',
    quantity: 'stiffness at a screw',
    kind: 'stiffness',
  });
  requirePositive(root.screwSpacing, { parameter: 'screwSpacing', quantity: 'screw spacing', kind: 'length' });
  return (root.screwStiffness * root.screwSpacing ** 2) / 2;
}
