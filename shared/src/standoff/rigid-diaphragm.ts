import { InputError } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { requirePosition } from './column.ts';

/** What holds a level plate in its own plane: a post in both directions, a wall in one. */
export interface SideSpring {
  x: number;
  y: number;
  /** Stiffness in the two directions [N/m]; relative numbers do as well. */
  stiffnessX: number;
  stiffnessY: number;
}

export interface RigidDiaphragm {
  /** Point at which a side force moves the plate without turning it [m]. */
  centre: { x: number; y: number };
  /** Torque over turn about the upright axis [N·m/rad]. */
  torsion: number;
  /** Side forces of the springs under a unit torque [1/m]. */
  perTorque: readonly { x: number; y: number }[];
}

/**
 * Centre of rigidity of a level plate, and how a torque shares out.
 * $$x_r = \frac{\sum k_y x}{\sum k_y},\quad F_i = \frac{T k_i d_i}{\sum k d^2}$$
 * @param springs - place and stiffness of each
 * @returns centre, stiffness against turning, share of each spring per torque
 * @validity plate rigid in its plane and kept level, so without the rocking that plateOnColumns adds
 * @throws InputError when a number is out of range or nothing holds one direction
 * @source ufc-2005-seismic, design example, rigid roof
 */
export function rigidDiaphragm(springs: readonly SideSpring[]): RigidDiaphragm {
  const total = { x: 0, y: 0, kx: 0, ky: 0 };
  for (const { x, y, stiffnessX, stiffnessY } of springs) {
    requirePosition(x, 'x', 'place of a post');
    requirePosition(y, 'y', 'place of a post');
    requireBetween(stiffnessX, 0, 1e15, { parameter: 'stiffnessX', quantity: 'side stiffness', kind: 'stiffness' });
    requireBetween(stiffnessY, 0, 1e15, { parameter: 'stiffnessY', quantity: 'side stiffness', kind: 'stiffness' });
    total.kx += stiffnessX;
    total.ky += stiffnessY;
    total.x += stiffnessY * x;
    total.y += stiffnessX * y;
  }
  requirePositive(total.kx, { parameter: 'springs', quantity: 'stiffness fore and aft', kind: 'stiffness' });
  requirePositive(total.ky, { parameter: 'springs', quantity: 'stiffness across', kind: 'stiffness' });
  const centre = { x: total.x / total.ky, y: total.y / total.kx };
  const torsion = springs.reduce(
    (sum, s) => sum + s.stiffnessX * (s.y - centre.y) ** 2 + s.stiffnessY * (s.x - centre.x) ** 2,
    0,
  );
  if (!(torsion > 1e-30)) {
    throw new InputError({
      parameter: 'springs',
      quantity: 'layout of the posts',
      value: springs.length,
      rule: 'leaves the plate free to turn',
    });
  }
  return {
    centre,
    torsion,
    perTorque: springs.map((s) => ({
      x: (-s.stiffnessX * (s.y - centre.y)) / torsion,
      y: (s.stiffnessY * (s.x - centre.x)) / torsion,
    })),
  };
}
