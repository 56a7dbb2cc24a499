import { requireLength } from '../require-physical.ts';
import type { Body } from './body.ts';
import { NO_INERTIA } from './inertia-tensor.ts';
import { requireMass } from './limits.ts';

export interface Box {
  /** [kg] */
  mass: number;
  /** Along x [m]. */
  length: number;
  /** Along y [m]. */
  width: number;
  /** Along z [m]. */
  height: number;
}

/**
 * Even box: battery, camera, a stack of boards.
 * $$I_{xx} = \tfrac{m}{12}(w^2+h^2),\quad I_{yy} = \tfrac{m}{12}(l^2+h^2),\quad I_{zz} = \tfrac{m}{12}(l^2+w^2)$$
 * @param box - mass [kg] and sides along x, y, z [m]
 * @returns body about its centre
 * @validity density even throughout
 * @throws InputError when a side or the mass is out of range
 * @source meriam-2012-dynamics, Table D/4, rectangular parallelepiped
 */
export function boxBody({ mass, length, width, height }: Box): Body {
  requireMass(mass);
  requireLength(length, { parameter: 'length', quantity: 'length' });
  requireLength(width, { parameter: 'width', quantity: 'width' });
  requireLength(height, { parameter: 'height', quantity: 'height' });
  const moment = (a: number, b: number) => (mass / 12) * (a * a + b * b);
  return {
    mass,
    inertia: { ...NO_INERTIA, xx: moment(width, height), yy: moment(length, height), zz: moment(length, width) },
  };
}
