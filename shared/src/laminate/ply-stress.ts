import { requireFinite } from '../require.ts';
import { flatCompliance, laminateCompliance } from './compliance.ts';
import { multiply, type Vector3 } from './matrix.ts';
import type { Ply } from './ply.ts';
import { laminateStiffness } from './stiffness.ts';

export interface LaminateLoad {
  /** Nx, Ny, Nxy per width [N/m]. */
  forces: Vector3;
  /** Mx, My, Mxy per width; positive Mx stretches the side of +z [N]. */
  moments: Vector3;
  /** The part may curl (plate), or is held flat (wall of a tube: the moments have no effect). */
  edges?: 'free' | 'held';
}

/** State at one face or the middle of a ply. */
export interface PlyPoint {
  /** Counted from z = −h/2, from 0. */
  ply: number;
  at: 'lower' | 'middle' | 'upper';
  /** From the mid-plane [m]. */
  z: number;
  /** εx, εy, γxy [-]. */
  strain: Vector3;
  /** σx, σy, τxy in the part's axes [Pa]. */
  stress: Vector3;
  /** σ1, σ2, τ12 in the ply's own axes [Pa]. */
  plyStress: Vector3;
}

export interface LaminateResponse {
  /** εx, εy, γxy at the mid-plane [-]. */
  strain: Vector3;
  /** κx, κy, κxy [1/m]. */
  curvature: Vector3;
  /** Three points a ply. */
  points: readonly PlyPoint[];
}

/**
 * Stresses turned into a ply's own axes.
 * $$\sigma_1=c^2\sigma_x+s^2\sigma_y+2sc\,\tau,\quad \sigma_2=s^2\sigma_x+c^2\sigma_y-2sc\,\tau,\quad \tau_{12}=-sc\,\sigma_x+sc\,\sigma_y+(c^2-s^2)\tau$$
 * @param stress - σx, σy, τxy [Pa]
 * @param angle - from x to the fibre [rad]
 * @returns σ1, σ2, τ12 [Pa]
 * @validity plane stress
 * @throws InputError when an entry is not a number
 * @source jones-1999-composite, § 2.5
 */
export function stressInPly(stress: Vector3, angle: number): Vector3 {
  for (const value of stress) requireFinite(value, { parameter: 'stress', quantity: 'stress', kind: 'stress' });
  requireFinite(angle, { parameter: 'angle', quantity: 'angle of a ply', kind: 'angle' });
  return turnStress(stress, Math.cos(angle), Math.sin(angle));
}

function turnStress([x, y, t]: Vector3, c: number, s: number): Vector3 {
  return [
    c * c * x + s * s * y + 2 * s * c * t,
    s * s * x + c * c * y - 2 * s * c * t,
    s * c * (y - x) + (c * c - s * s) * t,
  ];
}

/**
 * Strains, curvatures and the stress in every ply under loads per width.
 * $$\begin{bmatrix}\varepsilon^0\\\kappa\end{bmatrix}=\begin{bmatrix}a&b\\b^T&d\end{bmatrix}\begin{bmatrix}N\\M\end{bmatrix},\quad \sigma_k(z)=\bar Q_k(\varepsilon^0+z\kappa)$$
 * @param plies - from z = −h/2 upwards
 * @param load - forces and moments per width
 * @returns mid-plane strain, curvature, and three points a ply
 * @validity as laminateStiffness; no heat, no moisture
 * @throws InputError when a number is out of range
 * @source kaw-2006-composites, § 4.3
 */
export function laminateResponse(
  plies: readonly Ply[],
  { forces, moments, edges = 'free' }: LaminateLoad,
): LaminateResponse {
  const stiffness = laminateStiffness(plies);
  for (const n of forces)
    requireFinite(n, { parameter: 'forces', quantity: 'force per width', kind: 'forcePerLength' });
  for (const m of moments) requireFinite(m, { parameter: 'moments', quantity: 'moment per width', kind: 'force' });
  const { strain, curvature } =
    edges === 'free' ? freeStrains(stiffness, forces, moments) : heldStrains(stiffness, forces);
  const points = plies.flatMap((ply, k) => {
    const [lower, upper] = [stiffness.faces[k]!, stiffness.faces[k + 1]!];
    const q = stiffness.rotated[k]!;
    const [c, s] = [Math.cos(ply.angle), Math.sin(ply.angle)];
    return (['lower', 'middle', 'upper'] as const).map((at): PlyPoint => {
      const z = { lower, middle: (lower + upper) / 2, upper }[at];
      const here = add(strain, curvature, z);
      const stress = multiply(q, here);
      return { ply: k, at, z, strain: here, stress, plyStress: turnStress(stress, c, s) };
    });
  });
  return { strain, curvature, points };
}

const add = (u: Vector3, v: Vector3, factor: number): Vector3 => [
  u[0] + factor * v[0],
  u[1] + factor * v[1],
  u[2] + factor * v[2],
];

type Strains = Pick<LaminateResponse, 'strain' | 'curvature'>;

function freeStrains(stiffness: ReturnType<typeof laminateStiffness>, forces: Vector3, moments: Vector3): Strains {
  const { a, b, d } = laminateCompliance(stiffness);
  const column = (i: 0 | 1 | 2): Vector3 => [b[0][i], b[1][i], b[2][i]];
  return {
    strain: add(multiply(a, forces), multiply(b, moments), 1),
    curvature: add(multiply([column(0), column(1), column(2)], forces), multiply(d, moments), 1),
  };
}

function heldStrains(stiffness: ReturnType<typeof laminateStiffness>, forces: Vector3): Strains {
  return { strain: multiply(flatCompliance(stiffness), forces), curvature: [0, 0, 0] };
}
