import { requireBelow, requireNotNegative } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import type { Body } from './body.ts';
import { NO_INERTIA } from './inertia-tensor.ts';
import { requireMass } from './limits.ts';

export interface Cylinder {
  /** [kg] */
  mass: number;
  /** [m] */
  outerRadius: number;
  /** Zero for a solid one [m]. */
  innerRadius?: number;
  /** Along its axis, z [m]. */
  length: number;
}

/**
 * Solid or hollow cylinder about its own centre, axis along z: motor, standoff, tube, capacitor.
 * $$I_{zz} = \tfrac{m}{2}(r_o^2+r_i^2),\quad I_{xx} = I_{yy} = \tfrac{m}{12}\left[3(r_o^2+r_i^2)+L^2\right]$$
 * @param cylinder - mass [kg], radii and length [m]
 * @returns body about its centre; lay a tube along x with a pitch of a quarter turn
 * @validity density even throughout
 * @throws InputError when a size or the mass is out of range, or the bore reaches the outer radius
 * @source meriam-2012-dynamics, Table D/4, circular cylinder and shell
 */
export function cylinderBody({ mass, outerRadius, innerRadius = 0, length }: Cylinder): Body {
  const inner = { parameter: 'innerRadius', quantity: 'inner radius', kind: 'length' } as const;
  requireMass(mass);
  requireLength(outerRadius, { parameter: 'outerRadius', quantity: 'outer radius' });
  requireNotNegative(innerRadius, inner);
  requireBelow(innerRadius, outerRadius, 'must be smaller than the outer radius', inner);
  requireLength(length, { parameter: 'length', quantity: 'length' });
  const radii = outerRadius ** 2 + innerRadius ** 2;
  const across = (mass / 12) * (3 * radii + length ** 2);
  return { mass, inertia: { ...NO_INERTIA, xx: across, yy: across, zz: (mass / 2) * radii } };
}
