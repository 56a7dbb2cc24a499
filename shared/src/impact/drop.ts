import { requireNotNegative, requirePositive } from '../require.ts';
import { STANDARD_GRAVITY } from '../quantity/index.ts';

export interface Drop {
  /** Fall before contact; 0 is a load put on suddenly [m]. */
  height: number;
  /** How far the same weight would press the springs when resting on them [m]. */
  staticDeflection: number;
}

/**
 * How many times its own weight a falling mass presses at the peak.
 * $$\frac{F}{mg} = 1 + \sqrt{1 + \frac{2h}{\delta_{st}}}$$
 * @param drop - fall and static deflection; every spring in the way of the load belongs in the deflection
 * @returns peak force over weight [-]
 * @validity linear springs, mass of the springs small, nothing bottoms out
 * @throws InputError when the height is negative or the deflection not positive
 * @source hibbeler-mechanics, § 14.4
 */
export function dropFactor({ height, staticDeflection }: Drop): number {
  requireNotNegative(height, { parameter: 'height', quantity: 'height of the fall', kind: 'length' });
  requirePositive(staticDeflection, { parameter: 'staticDeflection', quantity: 'static deflection', kind: 'length' });
  return 1 + Math.sqrt(1 + (2 * height) / staticDeflection);
}

/**
 * Speed after a free fall.
 * $$v = \sqrt{2gh}$$
 * @param height - fall [m]
 * @param gravity - gravitational acceleration [m/s²]
 * @returns speed at contact [m/s]
 * @validity no air drag: good below some ten metres for a small frame
 * @throws InputError when the height is negative or gravity not positive
 * @derivation m g h = m v²/2
 */
export function fallSpeed(height: number, gravity: number = STANDARD_GRAVITY): number {
  requireNotNegative(height, { parameter: 'height', quantity: 'height of the fall', kind: 'length' });
  requirePositive(gravity, { parameter: 'gravity', quantity: 'gravity', kind: 'acceleration' });
  return Math.sqrt(2 * gravity * height);
}
