import { inertiaMatrix, type InertiaTensor, type Matrix3 } from './inertia-tensor.ts';
import { requireTensor } from './limits.ts';
import type { Vector } from './vector.ts';

/** A principal axis: turned about it, the body does not wobble. */
export interface PrincipalAxis {
  /** [kg·m²] */
  moment: number;
  /** Unit vector in the frame's axes [-]. */
  direction: Vector;
}

/** Jacobi doubles its correct digits in each sweep; a 3 by 3 matrix needs about five. */
const SWEEPS = 30;
const PAIRS = [
  [0, 1],
  [0, 2],
  [1, 2],
] as const;

/**
 * Principal moments and axes of an inertia tensor, smallest moment first.
 * $$I\,\mathbf u_k = I_k\,\mathbf u_k$$
 * @param tensor - about any point [kg·m²]
 * @returns three axes, orthogonal unit vectors, ordered by moment [kg·m²]
 * @validity any symmetric tensor; where two moments are equal, their axes are one choice among many
 * @throws InputError when an entry is out of range
 * @source press-2007-recipes, section 11.1, Jacobi transformations of a symmetric matrix
 */
export function principalAxes(tensor: InertiaTensor): [PrincipalAxis, PrincipalAxis, PrincipalAxis] {
  requireTensor(tensor);
  const a = inertiaMatrix(tensor);
  const v: Matrix3 = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  const size = Math.max(...a.flat().map(Math.abs));
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const off = Math.abs(a[0][1]) + Math.abs(a[0][2]) + Math.abs(a[1][2]);
    if (off <= size * 1e-17) break;
    for (const [p, q] of PAIRS) eliminate(a, v, p, q);
  }
  const axis = (k: 0 | 1 | 2): PrincipalAxis => ({
    moment: a[k][k],
    direction: { x: v[0][k], y: v[1][k], z: v[2][k] },
  });
  const [first, second, third] = [axis(0), axis(1), axis(2)].sort((i, j) => i.moment - j.moment);
  return [first as PrincipalAxis, second as PrincipalAxis, third as PrincipalAxis];
}

/** Turns the plane of axes p and q so that their product becomes zero; keeps the turn in v. */
function eliminate(a: Matrix3, v: Matrix3, p: 0 | 1 | 2, q: 0 | 1 | 2): void {
  if (a[p][q] === 0) return;
  const theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
  const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  for (const k of [0, 1, 2] as const) [a[k][p], a[k][q]] = [c * a[k][p] - s * a[k][q], s * a[k][p] + c * a[k][q]];
  for (const k of [0, 1, 2] as const) [a[p][k], a[q][k]] = [c * a[p][k] - s * a[q][k], s * a[p][k] + c * a[q][k]];
  for (const k of [0, 1, 2] as const) [v[k][p], v[k][q]] = [c * v[k][p] - s * v[k][q], s * v[k][p] + c * v[k][q]];
  a[p][q] = 0;
  a[q][p] = 0;
}
