import { requireBetween } from '../require.ts';
import type { Placed } from './body.ts';
import { boxBody, type Box } from './box.ts';
import type { Craft } from './craft.ts';

export type Lie = 'lengthwise' | 'crosswise';
export type Side = 'above' | 'below';

export interface Battery {
  /** Mass, and its sides with the length along the longest [kg, m]. */
  pack: Box;
  lie: Lie;
  side: Side;
  /** Middle of the pack ahead of the middle of the motors [m]. */
  forward: number;
  /** Pad and strap between pack and body [m]. */
  gap: number;
}

/**
 * The battery in its place on a craft: strapped on top of the body or under it.
 * $$z = h_{top}+g+\tfrac12 h\ \text{(above)},\quad z = h_{bottom}-g-\tfrac12 h\ \text{(below)}$$
 * @param battery - pack, how it lies, side, forward offset and gap [kg, m]
 * @param craft - for the height of the body's top and underside [m]
 * @returns placed body; crosswise is a quarter turn about the vertical
 * @validity the pack lies flat on its length and width
 * @throws InputError when a size is out of range
 * @derivation stacked heights
 */
export function placedBattery(battery: Battery, craft: Pick<Craft, 'body' | 'bodyDepth'>): Placed {
  const { pack, lie, side, forward, gap } = battery;
  requireBetween(forward, -10, 10, { parameter: 'forward', quantity: 'forward offset of the battery', kind: 'length' });
  requireBetween(gap, 0, 10, { parameter: 'gap', quantity: 'gap between pack and body', kind: 'length' });
  const away = gap + pack.height / 2;
  const z = side === 'above' ? craft.body.height - craft.bodyDepth + away : -craft.bodyDepth - away;
  const orientation = { yaw: lie === 'crosswise' ? Math.PI / 2 : 0 };
  return { body: boxBody(pack), position: { x: forward, y: 0, z }, orientation };
}
