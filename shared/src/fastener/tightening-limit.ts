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
import { flangeArea, seatArea, type PressNut } from './head-bearing.ts';
import { PRELOAD_AIM } from './preload-band.ts';
import { insertHold, type Insert } from './pull-out.ts';
import type { ThreadLimits } from './thread-limits.ts';
import { engagementFor, strippingForce } from './thread-shear.ts';
import { tighteningWarnings } from './tightening-warnings.ts';

export interface ScrewedJoint {
  limits: ThreadLimits;
  material: PropertyClass;
  /** Tightening torque meant [N·m]. */
  torque: number;
  /** [-] */
  torqueCoefficient: number;
  /** Screw length inside the tapped part, nut or insert [m]. */
  engagement: number;
  /** Of the tapped metal: of the nut or insert itself, where there is one [Pa]. */
  tappedShearStrength: number;
  /** Where the thread is in a nut pressed into a plate of the same strength. */
  pressNut?: PressNut;
  /** Where the thread is in an insert. */
  insert?: Insert;
  /** Of what presses on the plate [m]. */
  seatDiameter: number;
  /** In the plate [m]. */
  holeDiameter: number;
  /** Pressure through the thickness that the plate takes [Pa]. */
  plateStrength: number;
}

/** What may give: the plate under the head, and what else holds the thread. */
export type Limiter = 'screw' | 'thread' | 'plate' | 'flange' | 'insert';
type ByPart = Readonly<Record<'screw' | 'thread' | 'plate', number> & Partial<Record<'flange' | 'insert', number>>>;

export interface ScrewedJointResult {
  preload: Preload;
  /** Preload at which each part gives [N]. */
  limit: ByPart;
  /** High preload over that limit [-]. */
  use: ByPart;
  /** Part that gives first. */
  limiter: Limiter;
  /** Preload at which it does [N]. */
  least: number;
  /** Torque meant that brings the nominal preload to 65 % of the lowest limit [N·m]. */
  advisedTorque: number;
  /** Torque meant at which the high end of the scatter reaches the lowest limit [N·m]. */
  damageTorque: number;
  /** Engagement at which screw and tapped thread break at the same pull [m]. */
  fullEngagement: number;
  /** Mean pressure on the plate at the nominal preload, under the head or the nut's flange, whichever is more [Pa]. */
  seatPressure: number;
  /** Pull at which thread and what it stands in come out: carefully counted, and at most [N]. */
  hold: { low: number; high: number };
  warnings: readonly Warning[];
}

/**
 * What a tightening torque does to screw, thread, plate and nut or insert, and the torque that suits them all.
 * $$F_{lim} = \min(S_p A_s,\ F_{strip},\ p_{max} A_{seat},\ p_{max} A_{flange},\ F_{insert}),\quad T = 0.65\,K d F_{lim}$$
 * @param joint - thread, material, torque, engagement, seat, plate
 * @returns preload with scatter, limits, uses, advised torque
 * @validity dry or oiled by K; twist in the screw while it turns is covered by the 65 %. That the same share is kept
 * from thread, plate and insert is our choice. An insert counts as if the screw pulled it out while tightened, which a
 * part that rests on its end face spares it
 * @throws InputError when a number is out of range
 * @source chambers-1995-tm106943, Table I for the 65 % and the scatter; fed-h28-2; iso-2013-898
 */
export function screwedJoint(joint: ScrewedJoint): ScrewedJointResult {
  const { limits, material, torqueCoefficient, engagement, pressNut, insert, plateStrength } = joint;
  const { diameter } = limits.thread;
  requirePositive(plateStrength, {
    parameter: 'plateStrength',
    quantity: 'strength of the plate through its thickness',
    kind: 'stress',
  });
  const screw = { torqueCoefficient, diameter };
  const preload = preloadFromTorque({ ...screw, torque: joint.torque });
  const strength = screwStrength(limits.thread, material);
  const area = seatArea(joint);
  const flange = pressNut && flangeArea(pressNut, diameter);
  const anchor = insert && insertHold(insert, diameter);
  const hole = {
    limits,
    shearStrength: joint.tappedShearStrength,
    screwShearStrength: material.shearRatio * material.tensileStrength,
  };
  const thread = strippingForce({ ...hole, engagement });
  const limit: ByPart = {
    screw: strength.proof,
    thread,
    plate: plateStrength * area,
    ...(flange === undefined ? {} : { flange: plateStrength * flange }),
    ...(anchor === undefined ? {} : { insert: anchor.low }),
  };
  const parts = Object.entries(limit) as [Limiter, number][];
  const [limiter, least] = parts.reduce((a, b) => (b[1] < a[1] ? b : a));
  // A thread without a full turn holds nothing: any preload is more than it bears, and the use stays a number.
  const use = parts.map(([part, force]) => [part, preload.high / Math.max(force, 1e-3)]);
  const damage = torqueFromPreload(least, screw);
  const hold = Math.min(thread, limit.flange ?? Infinity);
  return {
    preload,
    limit,
    use: Object.fromEntries(use) as ByPart,
    limiter,
    least,
    advisedTorque: PRELOAD_AIM * damage,
    damageTorque: damage / (1 + TIGHTENING_SCATTER),
    fullEngagement: engagementFor(hole, strength.tension),
    seatPressure: preload.nominal / Math.min(area, flange ?? area),
    hold: { low: Math.min(hold, anchor?.low ?? hold), high: Math.min(hold, anchor?.high ?? hold) },
    warnings: tighteningWarnings(joint, preload.high > least),
  };
}
