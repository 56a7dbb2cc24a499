import type { Warning } from '../error.ts';
import { matrixFrom, type Matrix3 } from './matrix.ts';
import { requirePlies, type Ply, type PlyMaterial } from './ply.ts';
import { rotatedStiffness } from './reduced-stiffness.ts';

export interface LaminateStiffness {
  /** In-plane [N/m]. */
  a: Matrix3;
  /** Coupling between stretching and bending [N]. */
  b: Matrix3;
  /** Bending and twisting [N·m]. */
  d: Matrix3;
  /** [m] */
  thickness: number;
  /** Q̄ of each ply [Pa]. */
  rotated: readonly Matrix3[];
  /** z of every face, from the mid-plane, one more than plies [m]. */
  faces: readonly number[];
  /** Largest shear-stretch entry of A over A11 or A22, whichever is larger: 0 for a balanced stack [-]. */
  shearCoupling: number;
  /** Largest entry of B over h times the larger of A11 and A22: 0 for a symmetric stack [-]. */
  bendingCoupling: number;
  warnings: readonly Warning[];
}

/** Share of the main stiffness from which coupling is felt, and named. Rounding stays far below it. */
const NOTICEABLE = 1e-6;

/**
 * Stiffness of a stack of plies, classical lamination theory.
 * $$A=\sum\bar Q_k(z_k-z_{k-1}),\quad B=\tfrac12\sum\bar Q_k(z_k^2-z_{k-1}^2),\quad D=\tfrac13\sum\bar Q_k(z_k^3-z_{k-1}^3)$$
 * @param plies - from z = −h/2 upwards
 * @returns A, B, D, faces, and how strongly the stack couples
 * @validity thin, plies perfectly bonded, normals stay straight; unbalanced or unsymmetric stacks are computed and warned
 * @throws InputError when there is no ply or one is impossible
 * @source jones-1999-composite, § 4.2; kaw-2006-composites, § 4.3
 */
export function laminateStiffness(plies: readonly Ply[]): LaminateStiffness {
  requirePlies(plies);
  const thickness = plies.reduce((sum, ply) => sum + ply.thickness, 0);
  const faces = [-thickness / 2];
  for (const ply of plies) faces.push(faces.at(-1)! + ply.thickness);
  const rotated = rotatedPlies(plies);
  const [a, b, d] = ['a', 'b', 'd'].map(() => new Float64Array(9)) as [Float64Array, Float64Array, Float64Array];
  plies.forEach(({ thickness: t }, k) => {
    const middle = (faces[k]! + faces[k + 1]!) / 2;
    rotated[k]!.flat().forEach((q, place) => {
      a[place]! += q * t;
      b[place]! += q * t * middle;
      d[place]! += q * t * (middle ** 2 + t ** 2 / 12);
    });
  });
  const matrix = (sums: Float64Array): Matrix3 => matrixFrom((i, j) => sums[3 * i + j]!);
  return describe({ a: matrix(a), b: matrix(b), d: matrix(d), thickness, rotated, faces });
}

function describe(stack: Omit<LaminateStiffness, 'shearCoupling' | 'bendingCoupling' | 'warnings'>): LaminateStiffness {
  const { a, b, thickness } = stack;
  const main = Math.max(a[0][0], a[1][1]);
  const shearCoupling = Math.max(Math.abs(a[0][2]), Math.abs(a[1][2])) / main;
  const bendingCoupling = Math.max(...b.flat().map(Math.abs)) / (main * thickness);
  return { ...stack, shearCoupling, bendingCoupling, warnings: couplingWarnings(shearCoupling, bendingCoupling) };
}

/** Plies of one material at one angle are worked out once: a stack has many plies and few angles. */
function rotatedPlies(plies: readonly Ply[]): Matrix3[] {
  const known = new Map<PlyMaterial, Map<number, Matrix3>>();
  return plies.map(({ material, angle }) => {
    const angles = known.get(material) ?? new Map<number, Matrix3>();
    known.set(material, angles);
    const q = angles.get(angle) ?? rotatedStiffness(material, angle);
    angles.set(angle, q);
    return q;
  });
}

function couplingWarnings(shear: number, bending: number): Warning[] {
  const warnings: Warning[] = [];
  if (shear > NOTICEABLE) {
    warnings.push({
      code: 'unbalanced',
      message: 'The stack is not balanced: pulled along its length it also shears sideways.',
    });
  }
  if (bending > NOTICEABLE) {
    warnings.push({
      code: 'unsymmetric',
      message:
        'The stack is not the same above and below its middle: pulled straight it bends, and it comes out of the cure warped.',
    });
  }
  return warnings;
}
