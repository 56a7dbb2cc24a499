import { InputError } from '../error.ts';
import type { Vector } from '../mass/index.ts';
import { requirePosition, type Column } from './column.ts';
import { columnForces, scaledForces, type ColumnForces } from './column-forces.ts';
import { columnHeadStiffness } from './head-stiffness.ts';
import { plateStiffness } from './plate-stiffness.ts';
import { solveSymmetric } from './solve.ts';
import { add, cross, requireForce, requirePoint, times } from './vector.ts';

export interface LoadedPlate {
  columns: readonly Column[];
  /** On the top plate [N]. */
  force: Vector;
  /** Where it acts; x, y in the plan of the columns, z above the top plate [m]. */
  at: Vector;
}

/** How the top plate moves as a rigid body. */
export interface PlateMovement {
  /** Of the plate at x = y = 0 [m]. */
  displacement: Vector;
  /** About the three axes, right-handed [rad]. */
  rotation: Vector;
}

export interface PlateOnColumns extends PlateMovement {
  /** In the order of the columns. */
  columns: readonly ColumnForces[];
}

/**
 * Rigid top plate on any number of standoffs at any place: six equations for its movement, then what each standoff
 * carries.
 * $$\Bigl(\sum_i B_i^T k_i B_i\Bigr)\,u = \begin{pmatrix}F\\ r\times F\end{pmatrix}$$
 * @param plate - columns, force, point where it acts
 * @returns movement of the plate and forces of each column
 * @validity plate stiff against the standoffs, small movement; a standoff resists no twist about its own axis, since
 * one screw holds it
 * @throws InputError when a number is out of range, or the columns leave the plate free to move
 * @derivation B_i takes the plate's movement to the head of column i by u + θ × r; the column's head stiffness k_i is
 * in columnHeadStiffness; equal virtual work assembles them (see plateStiffness). Solved about the centroid
 */
export function plateOnColumns({ columns, force, at }: LoadedPlate): PlateOnColumns {
  requireColumns(columns);
  requireForce(force);
  requirePoint(at, 'point of the hit');
  const centre = {
    x: columns.reduce((sum, { x }) => sum + x, 0) / columns.length,
    y: columns.reduce((sum, { y }) => sum + y, 0) / columns.length,
    z: 0,
  };
  const heads = columns.map(columnHeadStiffness);
  const stiffness = plateStiffness(columns.map(({ x, y }, i) => ({ ...heads[i]!, x: x - centre.x, y: y - centre.y })));
  const moment = cross({ x: at.x - centre.x, y: at.y - centre.y, z: at.z }, force);
  const solution = solveSymmetric(stiffness, [force.x, force.y, force.z, moment.x, moment.y, moment.z]);
  if (!solution?.every(Number.isFinite)) {
    throw new InputError({
      parameter: 'columns',
      quantity: 'layout of the standoffs',
      value: columns.length,
      rule: 'leaves the top plate free to move: too few standoffs, all in one line, or pinned at both ends',
    });
  }
  const [ux, uy, uz, rx, ry, rz] = solution as [number, number, number, number, number, number];
  const rotation = { x: rx, y: ry, z: rz };
  const back = cross(rotation, { x: -centre.x, y: -centre.y, z: 0 });
  const movement = { displacement: add({ x: ux, y: uy, z: uz }, back), rotation };
  return { ...movement, columns: columns.map((column, i) => columnForces(column, heads[i]!, movement)) };
}

/**
 * Movement of any point that is fast to the top plate.
 * $$u(r) = u_0 + \theta \times r$$
 * @param movement - of the plate
 * @param point - x, y in the plan, z above the top plate [m]
 * @returns movement of the point [m]
 * @validity small rotation
 * @throws InputError when a coordinate is out of range
 * @derivation rigid body
 */
export function movementAt(movement: PlateMovement, point: Vector): Vector {
  requirePoint(point, 'point on the top plate');
  return add(movement.displacement, cross(movement.rotation, point));
}

/** The same body under a force so many times as large: everything is linear. */
export const scaledPlate = ({ displacement, rotation, columns }: PlateOnColumns, factor: number): PlateOnColumns => ({
  displacement: times(displacement, factor),
  rotation: times(rotation, factor),
  columns: columns.map((forces) => scaledForces(forces, factor)),
});

function requireColumns(columns: readonly Column[]): void {
  if (!Array.isArray(columns) || columns.length === 0 || columns.length > 1000) {
    throw new InputError({
      parameter: 'columns',
      quantity: 'standoffs',
      value: columns?.length,
      rule: 'must be between one and a thousand',
    });
  }
  for (const { x, y } of columns) {
    requirePosition(x, 'x', 'place of a standoff');
    requirePosition(y, 'y', 'place of a standoff');
  }
}
