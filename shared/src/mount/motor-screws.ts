import { InputError } from '../error.ts';
import { fastenerGroup, type Fastener } from '../joint/index.ts';
import { requireLength, requireLoad } from '../require-physical.ts';
import type { MountLoad } from './bond-stress.ts';

export interface MotorScrewsGiven {
  /** Around the motor's axis [m]. */
  screws: readonly { x: number; y: number }[];
  /** Circle on which the motor's base stands [m]. */
  baseDiameter: number;
  load: MountLoad;
}

export interface ScrewShare {
  /** Largest in one screw, over every direction of the load [N]. */
  shear: number;
  /** Largest in one screw, preload not counted [N]. */
  tension: number;
}

/** Directions in which a tipping motor is tried. */
const DIRECTIONS = 72;

/**
 * Places of the screws of a motor: one pair along the arm, one across.
 * @param spacing - between opposite holes, of each pair that is used [m]
 * @returns places round the motor's axis, x along the arm [m]
 * @validity any
 * @throws InputError when a distance is out of range or no pair is used
 * @derivation half the distance between opposite holes to either side
 */
export function motorScrewPlaces(spacing: { along?: number; across?: number }): { x: number; y: number }[] {
  const pairs = (['along', 'across'] as const).flatMap((parameter) => {
    const distance = spacing[parameter];
    if (distance === undefined) return [];
    requireLength(distance, { parameter, quantity: 'distance between opposite holes' });
    const half = distance / 2;
    return parameter === 'along'
      ? [
          { x: half, y: 0 },
          { x: -half, y: 0 },
        ]
      : [
          { x: 0, y: half },
          { x: 0, y: -half },
        ];
  });
  if (pairs.length === 0) {
    throw new InputError({ parameter: 'along', quantity: 'motor screws', value: 0, rule: 'must be at least one pair' });
  }
  return pairs;
}

/** Force in each screw from a torque about the axis: two opposite forces, each by the method for screw groups. */
function twistOf(screws: readonly Fastener[], torque: number): { x: number; y: number }[] {
  const arm = 0.01;
  const push = torque / (2 * arm);
  const one = fastenerGroup(screws, { force: { x: 0, y: push }, at: { x: arm, y: 0 } });
  const other = fastenerGroup(screws, { force: { x: 0, y: -push }, at: { x: -arm, y: 0 } });
  return one.map(({ x, y }, i) => ({ x: x + other[i]!.x, y: y + other[i]!.y }));
}

/**
 * Largest shear and pull in a motor's screws, whichever way the blow comes from.
 * $$V_i = \Bigl|\frac{\mathbf F}{n}+\frac{T\,\hat{\mathbf z}\times\mathbf r_i}{\sum r^2}\Bigr|,\quad
 * N_i = \frac{N}{n}+\frac{M\,d_i}{\sum d^2},\quad d_i = R_b + \mathbf r_i\cdot\hat{\mathbf u}$$
 * @param given - places of the screws and base diameter [m], load
 * @returns largest shear and pull in one screw [N]
 * @validity stiff base that tips about its edge; friction and preload left out, so a tight joint sees less
 * @throws InputError when the base does not reach the screws, or a load is negative
 * @source shigley-2011-design, Example 8-7 for the shear
 * @derivation a stiff base tips about the edge of its circle, and screws stretch with their distance from that edge
 */
export function motorScrewShare({ screws, baseDiameter, load }: MotorScrewsGiven): ScrewShare {
  requireLength(baseDiameter, { parameter: 'baseDiameter', quantity: 'diameter that the motor stands on' });
  for (const parameter of ['shear', 'lift'] as const)
    requireLoad(load[parameter], { parameter, quantity: 'load on the motor', kind: 'force' });
  for (const parameter of ['torque', 'tipping'] as const)
    requireLoad(load[parameter], { parameter, quantity: 'load on the motor', kind: 'moment' });
  const edge = baseDiameter / 2;
  const reach = Math.max(0, ...screws.map(({ x, y }) => Math.hypot(x, y)));
  if (reach > edge * (1 + 1e-9)) {
    throw new InputError({
      parameter: 'baseDiameter',
      quantity: 'diameter that the motor stands on',
      value: baseDiameter,
      rule: 'must reach the screws, at least',
      limit: 2 * reach,
      kind: 'length',
    });
  }
  let [shear, tension] = [0, 0];
  const twist = twistOf(screws, load.torque);
  for (const { x, y } of screws) {
    // A force square to a screw's radius adds straight to what the torque puts there: the worst direction for it.
    const size = Math.hypot(x, y) || 1;
    const force = { x: (-y / size) * load.shear, y: (x / size) * load.shear };
    const direct = fastenerGroup(screws, { force, at: { x: 0, y: 0 } });
    shear = Math.max(shear, ...direct.map((part, i) => Math.hypot(part.x + twist[i]!.x, part.y + twist[i]!.y)));
  }
  for (let i = 0; i < DIRECTIONS; i++) {
    const angle = (2 * Math.PI * i) / DIRECTIONS;
    const distances = screws.map(({ x, y }) => edge + x * Math.cos(angle) + y * Math.sin(angle));
    const squares = distances.reduce((sum, distance) => sum + distance ** 2, 0);
    tension = Math.max(tension, load.lift / screws.length + (load.tipping * Math.max(...distances)) / squares);
  }
  return { shear, tension };
}
