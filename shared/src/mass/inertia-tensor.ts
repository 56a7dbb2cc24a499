import type { Vector } from './vector.ts';

/**
 * How mass is spread about a point. Moments of inertia stand on the diagonal of the matrix; the products are kept as
 * $\int xy\,dm$, without the minus sign that the matrix gives them. [kg·m²]
 */
export interface InertiaTensor {
  xx: number;
  yy: number;
  zz: number;
  /** $\int xy\,dm$: its matrix entry is the negative. */
  xy: number;
  xz: number;
  yz: number;
}

export const NO_INERTIA: InertiaTensor = { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 };

type Row = [number, number, number];
export type Matrix3 = [Row, Row, Row];

/**
 * Two parts about the same point: their tensors add.
 * @param a - first tensor [kg·m²]
 * @param b - second tensor about the same point [kg·m²]
 * @returns sum, entry by entry [kg·m²]
 * @derivation every entry is an integral over mass, and integrals over two parts add
 */
export function addInertia(a: InertiaTensor, b: InertiaTensor): InertiaTensor {
  return { xx: a.xx + b.xx, yy: a.yy + b.yy, zz: a.zz + b.zz, xy: a.xy + b.xy, xz: a.xz + b.xz, yz: a.yz + b.yz };
}

/**
 * What a point of mass adds about the origin: the whole of the parallel-axis term.
 * $$I_{xx} = m(y^2+z^2),\quad \int xy\,dm = m\,x\,y$$
 * @param mass - of the point [kg]; negative takes it away
 * @param place - from the origin [m]
 * @returns tensor about the origin [kg·m²]
 * @source meriam-2012-dynamics, Appendix B, moments and products of inertia
 */
export function pointInertia(mass: number, { x, y, z }: Vector): InertiaTensor {
  return {
    xx: mass * (y * y + z * z),
    yy: mass * (x * x + z * z),
    zz: mass * (x * x + y * y),
    xy: mass * x * y,
    xz: mass * x * z,
    yz: mass * y * z,
  };
}

/**
 * The tensor as a matrix, products with their minus sign.
 * @param tensor - to be written out [kg·m²]
 * @returns symmetric matrix, rows x, y, z [kg·m²]
 * @source meriam-2012-dynamics, Appendix B, inertia matrix
 */
export function inertiaMatrix({ xx, yy, zz, xy, xz, yz }: InertiaTensor): Matrix3 {
  return [
    [xx, -xy, -xz],
    [-xy, yy, -yz],
    [-xz, -yz, zz],
  ];
}
