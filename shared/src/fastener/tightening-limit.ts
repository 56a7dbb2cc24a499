import type { Warning } from '../error.ts';
import {
  preloadFromTorque,
  screwStrength,
  TIGHTENING_SCATTER,
  torqueFromPreload,
  type Preload,
  type PropertyClass,
} from '../joint/index.ts';
import { requirePositive } from '../require.ts';
import { seatArea } from './head-bearing.ts';
import { PRELOAD_AIM } from './preload-band.ts';
import type { ThreadLimits } from './thread-limits.ts';
import { engagementFor, LOST_TURNS, strippingForce } from './thread-shear.ts';

export interface ScrewedJoint {
  limits: ThreadLimits;
  material: PropertyClass;
  /** Tightening torque meant [N·m]. */
  torque: number;
  /** [-] */
  torqueCoefficient: number;
  /** Screw length inside the tapped part [m]. */
  engagement: number;
  /** Of the tapped metal [Pa]. */
  tappedShearStrength: number;
  /** Of what presses on the plate [m]. */
  seatDiameter: number;
  /** In the plate [m]. */
  holeDiameter: number;
  /** Pressure through the thickness that the plate takes [Pa]. */
  plateStrength: number;
}

export type Limiter = 'screw' | 'thread' | 'plate';

export interface ScrewedJointResult {
  preload: Preload;
  /** Preload at which each part gives [N]. */
  limit: Readonly<Record<Limiter, number>>;
  /** High preload over that limit [-]. */
  use: Readonly<Record<Limiter, number>>;
  /** Part that gives first. */
  limiter: Limiter;
  /** Torque meant that brings the nominal preload to 65 % of the lowest limit [N·m]. */
  advisedTorque: number;
  /** Torque meant at which the high end of the scatter reaches the lowest limit [N·m]. */
  damageTorque: number;
  /** Engagement at which screw and tapped thread break at the same pull [m]. */
  fullEngagement: number;
  /** Mean pressure on the plate at the nominal preload [Pa]. */
  seatPressure: number;
  warnings: readonly Warning[];
}

/**
 * What a tightening torque does to screw, thread and plate, and the torque that suits all three.
 * $$F_{lim} = \min(S_p A_s,\ F_{strip},\ p_{max} A_{seat}),\quad T = 0.65\,K d F_{lim}$$
 * @param joint - thread, material, torque, engagement, seat, plate
 * @returns preload with scatter, limits, uses, advised torque
 * @validity dry or oiled by K; twist in the screw while it turns is covered by the 65 %. That the same share is kept
 * from thread and plate is our choice
 * @throws InputError when a number is out of range
 * @source chambers-1995-tm106943, Table I for the 65 % and the scatter; fed-h28-2; iso-2013-898
 */
export function screwedJoint(joint: ScrewedJoint): ScrewedJointResult {
  const { limits, material, torqueCoefficient, engagement } = joint;
  requirePositive(joint.plateStrength, {
    parameter: 'plateStrength',
    quantity: 'strength of the plate through its thickness',
    kind: 'stress',
  });
  const screw = { torqueCoefficient, diameter: limits.thread.diameter };
  const preload = preloadFromTorque({ ...screw, torque: joint.torque });
  const strength = screwStrength(limits.thread, material);
  const area = seatArea(joint);
  const hole = {
    limits,
    shearStrength: joint.tappedShearStrength,
    screwShearStrength: material.shearRatio * material.tensileStrength,
  };
  const limit = {
    screw: strength.proof,
    thread: strippingForce({ ...hole, engagement }),
    plate: joint.plateStrength * area,
  };
  const limiter = (Object.keys(limit) as Limiter[]).reduce((a, b) => (limit[b] < limit[a] ? b : a));
  // A thread without a full turn holds nothing: any preload is more than it bears, and the use stays a number.
  const use = (part: Limiter): number => preload.high / Math.max(limit[part], 1e-3);
  const warnings: Warning[] = [];
  if (engagement <= LOST_TURNS * limits.thread.pitch) {
    warnings.push({
      code: 'no-full-thread',
      message: 'The screw reaches the thread with incomplete turns only: it holds nothing that can be counted on.',
    });
  } else if (engagement < limits.thread.diameter) {
    warnings.push({ code: 'engagement-short', message: 'Less thread than one screw diameter is engaged.' });
  }
  if (use(limiter) > 1)
    warnings.push({
      code: 'torque-too-high',
      message: 'At the high end of its scatter this torque damages the joint.',
    });
  const damage = torqueFromPreload(limit[limiter], screw);
  return {
    preload,
    limit,
    use: { screw: use('screw'), thread: use('thread'), plate: use('plate') },
    limiter,
    advisedTorque: PRELOAD_AIM * damage,
    damageTorque: damage / (1 + TIGHTENING_SCATTER),
    fullEngagement: engagementFor(hole, strength.tension),
    seatPressure: preload.nominal / area,
    warnings,
  };
}
