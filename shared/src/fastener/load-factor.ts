import { requireBelow, requireBetween } from '../require.ts';

const stiffness = (value: number, parameter: string): void =>
  requireBetween(value, 1, 1e15, { parameter, quantity: 'stiffness', kind: 'stiffness' });

export interface Frustum {
  /** Of the part that is pressed [Pa]. */
  youngsModulus: number;
  /** Of the hole, taken as the screw's [m]. */
  holeDiameter: number;
  /** Under the head, where the cone begins [m]. */
  seatDiameter: number;
  /** Of the part [m]. */
  thickness: number;
  /** Of the cone, from the axis [rad]. */
  angle: number;
}

/**
 * Stiffness of a part that a screw squeezes, as a cone that widens away from the head.
 * $$k = \frac{\pi E d\tan\alpha}{\ln\dfrac{(2t\tan\alpha+D-d)(D+d)}{(2t\tan\alpha+D+d)(D-d)}}$$
 * @param cone - modulus, hole, seat, thickness, half angle
 * @returns stiffness [N/m]
 * @validity parts wide enough for the cone; isotropic
 * @throws InputError when a number is out of range or the hole is as wide as the seat
 * @source nasa-2021-std5020, A.12.3
 */
export function frustumStiffness({
  youngsModulus,
  holeDiameter: d,
  seatDiameter: D,
  thickness,
  angle,
}: Frustum): number {
  requireBetween(youngsModulus, 1e5, 1e13, {
    parameter: 'youngsModulus',
    quantity: 'Young’s modulus',
    kind: 'modulus',
  });
  requireBetween(D, 1e-4, 1, { parameter: 'seatDiameter', quantity: 'diameter under the head', kind: 'length' });
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requireBetween(d, 1e-5, 1, hole);
  requireBelow(d, 0.999 * D, 'must be smaller than what rests on it', hole);
  requireBetween(thickness, 1e-5, 1, { parameter: 'thickness', quantity: 'thickness', kind: 'length' });
  requireBetween(angle, 0.02, 1.5, { parameter: 'angle', quantity: 'cone angle', kind: 'angle' });
  const spread = 2 * thickness * Math.tan(angle);
  const ratio = ((spread + D - d) * (D + d)) / ((spread + D + d) * (D - d));
  return (Math.PI * youngsModulus * d * Math.tan(angle)) / Math.log(ratio);
}

/**
 * Share of an outside pull that the screw of a clamped joint feels.
 * $$\varphi = n\,\frac{k_b}{k_b+k_c}$$
 * @param joint - stiffness of screw and of clamped parts [N/m], loading plane factor n: 1 at the outer faces, 0.5 at mid-planes [-]
 * @returns load factor [-]
 * @validity until the joint gapes
 * @throws InputError when a number is out of range
 * @source nasa-2021-std5020, A.12.3; lee-1992-tm108377
 */
export function jointLoadFactor(joint: { screw: number; clamped: number; loadingPlane: number }): number {
  stiffness(joint.screw, 'screw');
  stiffness(joint.clamped, 'clamped');
  requireBetween(joint.loadingPlane, 0, 1, {
    parameter: 'loadingPlane',
    quantity: 'loading plane factor',
    kind: 'ratio',
  });
  return (joint.loadingPlane * joint.screw) / (joint.screw + joint.clamped);
}

/**
 * Outside pull at which a clamped joint gapes.
 * $$F = \frac{P}{1-\varphi}$$
 * @param preload - clamping force [N]
 * @param loadFactor - share that the screw feels [-]
 * @returns force [N]
 * @validity pull in line with the screw
 * @throws InputError when a number is out of range
 * @source nasa-2021-std5020, A.12.3
 */
export function separationForce(preload: number, loadFactor: number): number {
  requireBetween(preload, 0, 1e9, { parameter: 'preload', quantity: 'preload', kind: 'force' });
  requireBetween(loadFactor, 0, 0.99, { parameter: 'loadFactor', quantity: 'load factor', kind: 'ratio' });
  return preload / (1 - loadFactor);
}

/**
 * Share of a load that the first of two parallel screws takes.
 * $$\frac{F_1}{F} = \frac{k_1}{k_1+k_2}$$
 * @param first - stiffness [N/m]
 * @param second - stiffness [N/m]
 * @returns share [-]
 * @validity both bear at once
 * @throws InputError when a stiffness is out of range
 * @source nasa-2021-std5020, A.12.2
 */
export function parallelShare(first: number, second: number): number {
  stiffness(first, 'first');
  stiffness(second, 'second');
  return first / (first + second);
}
