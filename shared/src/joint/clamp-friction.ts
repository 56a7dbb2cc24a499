import { requireBetween, requireNotNegative } from '../require.ts';

/**
 * Force across a screw that clamping friction holds before the parts slip. An extra: preload fades as resin creeps, so
 * a root should stand without it.
 * $$F_s = n\,\mu\,F_V$$
 * @param clamp - preload of the screw [N], friction coefficient [-], number of faces that would slip [-]
 * @returns slip force [N]
 * @validity while the preload is kept
 * @throws InputError when a number is out of range
 * @source willberg-2023-lectures, clamping pressure; en-2005-1993-1-8, § 3.9
 */
export function slipForce(clamp: { preload: number; friction: number; faces: number }): number {
  requireNotNegative(clamp.preload, { parameter: 'preload', quantity: 'preload', kind: 'force' });
  requireBetween(clamp.friction, 0, 1, { parameter: 'friction', quantity: 'friction coefficient', kind: 'ratio' });
  requireBetween(clamp.faces, 1, 4, { parameter: 'faces', quantity: 'number of faces', kind: 'count' });
  return clamp.faces * clamp.friction * clamp.preload;
}
