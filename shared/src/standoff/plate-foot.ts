import { circularPlate, loadSpot } from '../plate/index.ts';
import { requireFinite, requireNotNegative, requirePositive } from '../require.ts';
import { requireBoss, rockingBoss, type RockingBoss } from './rocking-boss.ts';

export interface PlateFoot extends RockingBoss {
  /** Of the plate [m]. */
  thickness: number;
  /** Of the plate in bending [Pa]. */
  youngsModulus: number;
}

const POISSON_RATIO = 0.3;

const requirePlate = ({ thickness, youngsModulus }: PlateFoot): void => {
  requirePositive(thickness, { parameter: 'thickness', quantity: 'plate thickness', kind: 'length' });
  requirePositive(youngsModulus, {
    parameter: 'youngsModulus',
    quantity: 'Young’s modulus of the plate',
    kind: 'modulus',
  });
};

/**
 * Rotational stiffness that a plate gives the end of a standoff.
 * $$k_\theta = \frac{E t^3}{\alpha}$$
 * @param plate - thickness, modulus, radii, edge
 * @returns rotational stiffness [N·m/rad]
 * @validity face of the standoff closed on the plate by its screw; no cutout within the free radius
 * @throws InputError when a number is out of range
 * @source young-2002-roark, Table 11.2, cases 20 and 21
 */
export function plateFootStiffness(plate: PlateFoot): number {
  requirePlate(plate);
  return (plate.youngsModulus * plate.thickness ** 3) / rockingBoss(plate).alpha;
}

/**
 * Largest bending stress in the plate at the rim of the standoff's face.
 * $$\sigma = \beta\frac{M}{a t^2}$$
 * @param plate - thickness, radii, edge
 * @param moment - at this end of the standoff [N·m]
 * @returns stress [Pa]
 * @validity as plateFootStiffness; the screw hole under the face is not counted
 * @throws InputError when a number is out of range
 * @source young-2002-roark, Table 11.2, cases 20 and 21
 */
export function plateFootStress(plate: PlateFoot, moment: number): number {
  requirePlate(plate);
  requireNotNegative(moment, { parameter: 'moment', quantity: 'moment at the plate', kind: 'moment' });
  return (rockingBoss(plate).beta * moment) / (plate.plateRadius * plate.thickness ** 2);
}

/**
 * Bending stress that a pull or push along the standoff adds in the plate under its face.
 * $$\sigma = \frac{6}{t^2}\frac{|N|}{4\pi}\Bigl[(1+\nu)\ln\frac{r}{a}+1\Bigr]\quad\text{supported}$$
 * @param plate - thickness, modulus, radii, edge
 * @param axial - along the standoff [N]
 * @returns stress [Pa]
 * @validity as plateFootStiffness, face up to 0.7 of the free radius; the pull counts as spread over the face, the screw
 * hole is not counted
 * @throws InputError when a number is out of range
 * @source young-2002-roark, Table 11.2, cases 16 and 17
 */
export function plateFootPullStress(plate: PlateFoot, axial: number): number {
  requirePlate(plate);
  requireBoss(plate);
  requireFinite(axial, { parameter: 'axial', quantity: 'force along the standoff', kind: 'force' });
  const { bossRadius, plateRadius, thickness, edge } = plate;
  const spot = Math.min(loadSpot(Math.min(bossRadius, 0.7 * plateRadius), thickness), 0.9 * plateRadius);
  const { across } = circularPlate(edge, 'centre', POISSON_RATIO);
  const moment = (Math.abs(axial) / (4 * Math.PI)) * ((1 + POISSON_RATIO) * Math.log(plateRadius / spot) + across);
  return (6 * moment) / thickness ** 2;
}
