import { effectiveMass, movingMassImpact, springsInSeries } from '../impact/index.ts';
import type { Vector } from '../mass/index.ts';
import { requireBetween, requirePositive } from '../require.ts';
import type { Column } from './column.ts';
import { movementAt, plateOnColumns, scaledPlate, type PlateOnColumns } from './rigid-plate.ts';
import { cross, requirePoint, times } from './vector.ts';

export interface BodyHit {
  columns: readonly Column[];
  /** All-up mass [kg]. */
  mass: number;
  /** About the axes through the centre of mass, each I = m k² [m]. */
  rollRadius: number;
  pitchRadius: number;
  yawRadius: number;
  /** z from the top plate upwards, so negative inside the body [m]. */
  centreOfMass: Vector;
  /** Where the top plate, or what is fast to it, meets the obstacle [m]. */
  at: Vector;
  /** In which the obstacle pushes the top plate; its size does not matter. */
  direction: Vector;
  /** Of the obstacle and of what crushes at the point, in series [N/m]. */
  contactStiffness: number;
  /** Against the direction [m/s]. */
  speed: number;
}

export interface BodyHitResult {
  effectiveMass: number;
  /** Force over movement where it hits, standoffs alone [N/m]. */
  frameStiffness: number;
  /** With the contact in series [N/m]. */
  stiffness: number;
  /** [N] */
  peakForce: number;
  /** [s] */
  timeToPeak: number;
  /** At the peak. */
  plate: PlateOnColumns;
  /** Force over speed: everything is linear [N·s/m]. */
  forcePerSpeed: number;
}

/**
 * Hit on the top plate from any side: the frame behind it goes on, the standoffs bring it to rest.
 * $$\frac1{m_{eff}}=\frac1m+\sum_i\frac{(r\times n)_i^2}{m k_i^2},\quad F = v\sqrt{k\,m_{eff}},\quad
 * \frac1k=\frac1{k_{contact}}+n\cdot u(n)$$
 * @param hit - columns, mass, where, from which side and how fast
 * @returns effective mass, stiffness, peak force, and plate and columns at the peak
 * @validity elastic up to the peak; measured peaks lie up to 1.5 times higher, see peakForceBand. The whole mass sits
 * behind the standoffs: right for a battery under the body, too much by its share for one on the top plate
 * @throws InputError when a number is out of range, or the columns leave the plate free to move
 * @derivation energy m_eff v²/2 = F²/2k, and statics of plateOnColumns at the force F; u(n) is the movement of the point
 * under a unit force along n
 */
export function bodyHit(hit: BodyHit): BodyHitResult {
  const { columns, mass, at, centreOfMass, speed } = hit;
  requirePoint(at, 'point of the hit');
  requirePoint(centreOfMass, 'centre of mass');
  requirePoint(hit.direction, 'direction of the hit');
  requireBetween(mass, 1e-6, 1e6, { parameter: 'mass', quantity: 'all-up mass', kind: 'mass' });
  for (const axis of ['roll', 'pitch', 'yaw'] as const) {
    const parameter = `${axis}Radius` as const;
    requireBetween(hit[parameter], 1e-4, 100, { parameter, quantity: `radius of gyration in ${axis}`, kind: 'length' });
  }
  requireBetween(speed, 1e-6, 1e4, { parameter: 'speed', quantity: 'speed of the hit', kind: 'speed' });
  requireBetween(hit.contactStiffness, 1e-3, 1e12, {
    parameter: 'contactStiffness',
    quantity: 'stiffness of the contact',
    kind: 'stiffness',
  });
  const size = Math.hypot(hit.direction.x, hit.direction.y, hit.direction.z);
  requirePositive(size, { parameter: 'direction', quantity: 'direction of the hit' });
  const push = times(hit.direction, 1 / size);
  const lever = cross({ x: at.x - centreOfMass.x, y: at.y - centreOfMass.y, z: at.z - centreOfMass.z }, push);
  const shown = effectiveMass({
    mass,
    turns: [
      { lever: lever.x, momentOfInertia: mass * hit.rollRadius ** 2 },
      { lever: lever.y, momentOfInertia: mass * hit.pitchRadius ** 2 },
      { lever: lever.z, momentOfInertia: mass * hit.yawRadius ** 2 },
    ],
  });
  const unit = plateOnColumns({ columns, force: push, at });
  const moved = movementAt(unit, at);
  const frameStiffness = 1 / (moved.x * push.x + moved.y * push.y + moved.z * push.z);
  const stiffness = springsInSeries([hit.contactStiffness, frameStiffness]);
  const { peakForce, timeToPeak } = movingMassImpact({ mass: shown, speed, stiffness });
  return {
    effectiveMass: shown,
    frameStiffness,
    stiffness,
    peakForce,
    timeToPeak,
    plate: scaledPlate(unit, peakForce),
    forcePerSpeed: peakForce / speed,
  };
}
