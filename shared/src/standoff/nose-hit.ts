import { effectiveMass, movingMassImpact, springsInSeries } from '../impact/index.ts';
import type { Vector } from '../mass/index.ts';
import { requireBetween } from '../require.ts';
import type { Column } from './column.ts';
import { movementAt, plateOnColumns, scaledPlate, type PlateOnColumns } from './rigid-plate.ts';
import { requirePoint } from './vector.ts';

export interface NoseHit {
  columns: readonly Column[];
  /** All-up mass [kg]. */
  mass: number;
  /** About the pitch and the yaw axis through the centre of mass, each I = m k² [m]. */
  pitchRadius: number;
  yawRadius: number;
  /** z from the top plate upwards, so negative inside the body [m]. */
  centreOfMass: Vector;
  /** Where the top plate, or what is fast to it, meets the obstacle [m]. */
  at: Vector;
  /** Of the obstacle and of what crushes at the nose, in series [N/m]. */
  contactStiffness: number;
  /** Straight ahead [m/s]. */
  speed: number;
}

export interface NoseHitResult {
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
}

/**
 * Nose-first hit on the top plate: the frame behind it goes on, the standoffs bring it to rest.
 * $$\frac1{m_{eff}}=\frac1m+\frac{r_z^2}{I_{pitch}}+\frac{r_y^2}{I_{yaw}},\quad F = v\sqrt{k\,m_{eff}},\quad
 * \frac1k=\frac1{k_{contact}}+\frac1{k_{frame}}$$
 * @param hit - columns, mass, where and how fast
 * @returns effective mass, stiffness, peak force, and plate and columns at the peak
 * @validity elastic up to the peak; measured peaks lie up to 1.5 times higher, see peakForceBand. The whole mass sits
 * behind the standoffs: right for a battery under the body, too much by its share for one on the top plate
 * @throws InputError when a number is out of range, or the columns leave the plate free to move
 * @derivation energy m_eff v²/2 = F²/2k, and statics of plateOnColumns at the force F
 */
export function noseHit(hit: NoseHit): NoseHitResult {
  const { columns, mass, at, centreOfMass } = hit;
  requirePoint(at, 'point of the hit');
  requirePoint(centreOfMass, 'centre of mass');
  requireBetween(mass, 1e-6, 1e6, { parameter: 'mass', quantity: 'all-up mass', kind: 'mass' });
  requireBetween(hit.pitchRadius, 1e-4, 100, {
    parameter: 'pitchRadius',
    quantity: 'radius of gyration in pitch',
    kind: 'length',
  });
  requireBetween(hit.yawRadius, 1e-4, 100, {
    parameter: 'yawRadius',
    quantity: 'radius of gyration in yaw',
    kind: 'length',
  });
  requireBetween(hit.speed, 1e-6, 1e4, { parameter: 'speed', quantity: 'speed of the hit', kind: 'speed' });
  requireBetween(hit.contactStiffness, 1e-3, 1e12, {
    parameter: 'contactStiffness',
    quantity: 'stiffness of the contact',
    kind: 'stiffness',
  });
  const shown = effectiveMass({
    mass,
    turns: [
      { lever: at.z - centreOfMass.z, momentOfInertia: mass * hit.pitchRadius ** 2 },
      { lever: at.y - centreOfMass.y, momentOfInertia: mass * hit.yawRadius ** 2 },
    ],
  });
  const unit = plateOnColumns({ columns, force: { x: -1, y: 0, z: 0 }, at });
  const frameStiffness = 1 / -movementAt(unit, at).x;
  const stiffness = springsInSeries([hit.contactStiffness, frameStiffness]);
  const { peakForce, timeToPeak } = movingMassImpact({ mass: shown, speed: hit.speed, stiffness });
  return {
    effectiveMass: shown,
    frameStiffness,
    stiffness,
    peakForce,
    timeToPeak,
    plate: scaledPlate(unit, peakForce),
  };
}
