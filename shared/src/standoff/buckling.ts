import { requirePositive } from '../require.ts';

export interface Strut {
  /** Effective length KL: 1 for a standoff whose top may sway, both ends held against turning [m]. */
  effectiveLength: number;
  /** √(I/A) [m]. */
  radiusOfGyration: number;
  /** [Pa] */
  youngsModulus: number;
  /** [Pa] */
  yieldStrength: number;
}

/**
 * Slenderness at which the two column formulas touch, each at half the yield strength.
 * $$C_c = \sqrt{\frac{2\pi^2E}{\sigma_y}}$$
 * @param youngsModulus - [Pa]
 * @param yieldStrength - [Pa]
 * @returns slenderness KL/r [-]
 * @validity ductile metal
 * @throws InputError when a number is not positive
 * @source pytel-2012-mechanics, § 10.4
 */
export function columnTransition(youngsModulus: number, yieldStrength: number): number {
  requirePositive(youngsModulus, { parameter: 'youngsModulus', quantity: 'Young’s modulus', kind: 'modulus' });
  requirePositive(yieldStrength, { parameter: 'yieldStrength', quantity: 'yield strength', kind: 'stress' });
  return Math.sqrt((2 * Math.PI ** 2 * youngsModulus) / yieldStrength);
}

/**
 * Stress at which a strut buckles: Euler where slender, Johnson's parabola where stocky.
 * $$\sigma = \frac{\pi^2E}{(KL/r)^2}\quad\text{or}\quad \sigma_y\Bigl[1-\frac{(KL/r)^2}{2C_c^2}\Bigr]$$
 * @param strut - effective length, radius of gyration, modulus, yield strength
 * @returns critical stress [Pa]
 * @validity straight strut, load along the axis, no factor of safety in it
 * @throws InputError when a number is not positive
 * @source pytel-2012-mechanics, § 10.4
 */
export function bucklingStress({ effectiveLength, radiusOfGyration, youngsModulus, yieldStrength }: Strut): number {
  requirePositive(effectiveLength, { parameter: 'effectiveLength', quantity: 'effective length', kind: 'length' });
  requirePositive(radiusOfGyration, { parameter: 'radiusOfGyration', quantity: 'radius of gyration', kind: 'length' });
  const transition = columnTransition(youngsModulus, yieldStrength);
  const slenderness = effectiveLength / radiusOfGyration;
  return slenderness < transition
    ? yieldStrength * (1 - slenderness ** 2 / (2 * transition ** 2))
    : (Math.PI ** 2 * youngsModulus) / slenderness ** 2;
}

/**
 * Euler load of a column.
 * $$P = \frac{\pi^2EI}{(KL)^2}$$
 * @param effectiveLength - KL [m]
 * @param flexuralRigidity - EI [N·m²]
 * @returns critical load [N]
 * @validity stress below the proportional limit
 * @throws InputError when a number is not positive
 * @source hibbeler-mechanics, § 13.3
 */
export function eulerLoad(effectiveLength: number, flexuralRigidity: number): number {
  requirePositive(effectiveLength, { parameter: 'effectiveLength', quantity: 'effective length', kind: 'length' });
  requirePositive(flexuralRigidity, { parameter: 'flexuralRigidity', quantity: 'flexural rigidity' });
  return (Math.PI ** 2 * flexuralRigidity) / effectiveLength ** 2;
}
