import { requireBetween, requireNotNegative } from '../require.ts';
import { requireFitSize } from './require-fit.ts';
import type { Lens } from './types.ts';

export interface TiltedBox {
  /** Along the line of sight, without the lens [m]. */
  length: number;
  /** Square to it [m]. */
  height: number;
  /** Nose up [rad]. */
  tilt: number;
  lens?: Lens;
}

export interface TiltedExtent {
  /** Of the body in plan, fore and aft [m]. */
  planLength: number;
  /** Of the body, upright [m]. */
  height: number;
  /** Foremost point, lens included, ahead of the middle of the body [m]. */
  reach: number;
  /** The lens alone: from the middle of the body forward, and above the lowest point of the body [m]. */
  lens?: { rear: number; front: number; bottom: number; top: number };
}

/**
 * Room that a tilted camera takes: the upright box round a turned box, and how far its lens reaches.
 * $$l' = l\cos\theta + h\sin\theta,\quad h' = l\sin\theta + h\cos\theta,\quad
 * r = \max\Bigl(\tfrac{l'}{2},\ \bigl(\tfrac l2+r_l\bigr)\cos\theta + \tfrac{d_l}{2}\sin\theta\Bigr)$$
 * @param box - length, height, tilt, lens
 * @returns plan length, height, reach of the lens [m]
 * @validity a box with a barrel in the middle of its front; round corners take less
 * @throws InputError when a number is out of range or the lens is thicker than the body
 * @source arvo-1990-boxes, half extents of the turned box
 */
export function tiltedBox({ length, height, tilt, lens }: TiltedBox): TiltedExtent {
  requireFitSize(length, 'length', 'length of the part');
  requireFitSize(height, 'height', 'height of the part');
  requireBetween(tilt, 0, Math.PI / 2, { parameter: 'tilt', quantity: 'tilt', kind: 'angle' });
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  const planLength = length * cos + height * sin;
  const upright = length * sin + height * cos;
  if (!lens) return { planLength, height: upright, reach: planLength / 2 };
  const reachSubject = { parameter: 'lens', quantity: 'reach of the lens', kind: 'length' } as const;
  requireNotNegative(lens.reach, reachSubject);
  requireBetween(lens.reach, 0, 1, reachSubject);
  requireFitSize(lens.diameter, 'lens', 'diameter of the lens');
  requireBetween(lens.diameter, 0, height, { ...reachSubject, quantity: 'diameter of the lens' });
  const radius = lens.diameter / 2;
  const tip = length / 2 + lens.reach;
  const front = tip * cos + radius * sin;
  const middle = upright / 2;
  return {
    planLength,
    height: upright,
    reach: Math.max(planLength / 2, front),
    lens: {
      rear: (length / 2) * cos - radius * sin,
      front,
      bottom: middle + (length / 2) * sin - radius * cos,
      top: middle + tip * sin + radius * cos,
    },
  };
}
