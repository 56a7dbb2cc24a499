import { requireFinite, requirePositive } from '../require.ts';
import type { Matrix3 } from './matrix.ts';
import { flatCompliance, laminateCompliance } from './compliance.ts';
import { laminateStiffness } from './stiffness.ts';
import type { Ply } from './ply.ts';

/** What a solid sheet would need to be made of, to move as the stack does. */
export interface LaminateConstants {
  /** [Pa] */
  modulusX: number;
  /** [Pa] */
  modulusY: number;
  /** [Pa] */
  shearModulus: number;
  /** νxy: contraction along y under load along x [-]. */
  poissonRatio: number;
  /** ηx: shear strain over strain along x, under load along x; 0 without coupling [-]. */
  shearStrainRatio: number;
}

const constantsOf = (c: Matrix3, toCompliance: number): LaminateConstants => ({
  modulusX: 1 / (c[0][0] * toCompliance),
  modulusY: 1 / (c[1][1] * toCompliance),
  shearModulus: 1 / (c[2][2] * toCompliance),
  poissonRatio: -c[0][1] / c[0][0],
  shearStrainRatio: c[0][2] / c[0][0],
});

/**
 * In-plane constants of a stack.
 * $$E_x=\frac{1}{h\,a_{11}},\quad E_y=\frac{1}{h\,a_{22}},\quad G_{xy}=\frac{1}{h\,a_{66}},\quad \nu_{xy}=-\frac{a_{12}}{a_{11}}$$
 * @param plies - from z = −h/2 upwards
 * @param edges - `free`: the part may curl as it is pulled; `held`: a tube's closed wall, or held flat
 * @returns constants in the axes of the part
 * @validity as laminateStiffness
 * @throws InputError when there is no ply or one is impossible
 * @source kaw-2006-composites, § 4.4
 */
export function inPlaneConstants(plies: readonly Ply[], edges: 'free' | 'held' = 'free'): LaminateConstants {
  const stiffness = laminateStiffness(plies);
  return constantsOf(
    edges === 'free' ? laminateCompliance(stiffness).a : flatCompliance(stiffness),
    stiffness.thickness,
  );
}

/**
 * Flexural constants of a stack: what a bending test of a strip would give.
 * $$E^f_x=\frac{12}{h^3 d_{11}},\quad G^f_{xy}=\frac{12}{h^3 d_{66}},\quad \nu^f_{xy}=-\frac{d_{12}}{d_{11}}$$
 * @param plies - from z = −h/2 upwards
 * @returns constants in the axes of the part
 * @validity as laminateStiffness; the strip may twist as it bends
 * @throws InputError when there is no ply or one is impossible
 * @source kaw-2006-composites, § 4.4
 */
export function flexuralConstants(plies: readonly Ply[]): LaminateConstants {
  const stiffness = laminateStiffness(plies);
  return constantsOf(laminateCompliance(stiffness).d, stiffness.thickness ** 3 / 12);
}

/**
 * The same stack seen in axes that are turned: what a strip cut at an angle would show.
 * @param plies - from z = −h/2 upwards
 * @param direction - from the part's x axis to the new one [rad]
 * @returns the plies in the new axes
 * @validity any angle
 * @throws InputError when the direction is not a number
 * @derivation the fibre keeps its place while the axes turn, so each angle loses the direction
 */
export function turned(plies: readonly Ply[], direction: number): Ply[] {
  requireFinite(direction, { parameter: 'direction', quantity: 'direction', kind: 'angle' });
  return plies.map((ply) => ({ ...ply, angle: ply.angle - direction }));
}

/**
 * Mass of a stack per area.
 * $$m'' = \rho\,h$$
 * @param plies - the stack
 * @param density - of fibre and resin together [kg/m³]
 * @returns [kg/m²]
 * @validity one material throughout
 * @throws InputError when the density is not positive
 * @derivation definition of density
 */
export function massPerArea(plies: readonly Ply[], density: number): number {
  requirePositive(density, { parameter: 'density', quantity: 'density', kind: 'density' });
  return density * laminateStiffness(plies).thickness;
}
