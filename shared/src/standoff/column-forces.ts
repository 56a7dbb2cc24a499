import type { Column } from './column.ts';
import type { HeadStiffness } from './head-stiffness.ts';
import type { PlateMovement } from './rigid-plate.ts';
import { add, cross } from './vector.ts';

/** What the top plate does to one standoff. */
export interface ColumnForces {
  /** Forward and to the left [N]. */
  shearX: number;
  shearY: number;
  /** Resultant [N]. */
  shear: number;
  /** Tension positive [N]. */
  axial: number;
  /** Moment about x and y on the head [N·m]. */
  headMomentX: number;
  headMomentY: number;
  /** Resultant bending moment at the top plate [N·m]. */
  headMoment: number;
  /** Resultant bending moment at the bottom plate [N·m]. */
  footMoment: number;
}

/**
 * Forces of a standoff from the movement of the plate on it.
 * $$H = k_{sway}w + k_c\varphi,\quad M_{head} = k_c w + k_{tilt}\varphi,\quad M_{foot} = H L + M_{head}$$
 * @param column - the standoff
 * @param stiffness - at its head, from columnHeadStiffness
 * @param movement - of the plate
 * @returns shear, axial force and both end moments
 * @validity as plateOnColumns
 * @derivation head stiffness of the column; the foot moment closes the moments about the foot
 */
export function columnForces(
  column: Column,
  { sway, coupling, tilt, axial }: HeadStiffness,
  { displacement, rotation }: PlateMovement,
): ColumnForces {
  const head = add(displacement, cross(rotation, { x: column.x, y: column.y, z: 0 }));
  // Tilt is du/dz: about +y it carries the head forward, about +x to the right.
  const bend = (move: number, slope: number): { force: number; moment: number } => ({
    force: sway * move + coupling * slope,
    moment: coupling * move + tilt * slope,
  });
  const forward = bend(head.x, rotation.y);
  const left = bend(head.y, -rotation.x);
  return {
    shearX: forward.force,
    shearY: left.force,
    shear: Math.hypot(forward.force, left.force),
    axial: axial * head.z,
    headMomentX: -left.moment,
    headMomentY: forward.moment,
    headMoment: Math.hypot(forward.moment, left.moment),
    footMoment: Math.hypot(forward.force * column.length + forward.moment, left.force * column.length + left.moment),
  };
}

/** Forces under a load a positive number of times as large. */
export const scaledForces = (forces: ColumnForces, factor: number): ColumnForces => ({
  shearX: forces.shearX * factor,
  shearY: forces.shearY * factor,
  shear: forces.shear * factor,
  axial: forces.axial * factor,
  headMomentX: forces.headMomentX * factor,
  headMomentY: forces.headMomentY * factor,
  headMoment: forces.headMoment * factor,
  footMoment: forces.footMoment * factor,
});
