import { armBending, axialStiffness, rigidity, tipStiffness, type ArmSegment } from '../beam/index.ts';
import type { MassProperties, Vector } from '../mass/index.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { effectiveMassAt } from './effective-mass-at.ts';
import type { Turn } from './effective-mass.ts';
import { movingMassImpact } from './moving-mass.ts';
import { springsInSeries } from './springs-in-series.ts';

/** Up or down; across the arm in the plane of the propellers; along the arm towards the body. */
export type StrikeDirection = 'vertical' | 'sideways' | 'along';

export interface TipStrikeGiven {
  /** Mass, centre of mass and inertia about it. Origin where the arms would meet, on their axis. */
  craft: MassProperties;
  /** Motor axis of the struck arm, from the origin; its arm points that way [m]. */
  motor: { x: number; y: number };
  /** Point of the blow above the arm's axis [m]. */
  hitHeight: number;
  /** From the outer screw to the motor axis. */
  segments: readonly ArmSegment[];
  /** Rotational springs at the root, fixed where not given [N·m/rad]. */
  root?: { vertical?: number; horizontal?: number; torsion?: number };
  /** Of the obstacle and of what crushes at the tip [N/m]. */
  contactStiffness: number;
  /** Along the line of the blow [m/s]. */
  speed: number;
}

export interface Strike {
  effectiveMass: number;
  /** About the craft's principal axes. */
  turns: readonly Turn[];
  /** Of the arm on its root, at the point of the blow [N/m]. */
  armStiffness: number;
  /** With the contact in series [N/m]. */
  stiffness: number;
  peakForce: number;
  timeToPeak: number;
  /** At the outer screw, in each plane of bending [N·m]. */
  rootMoment: { vertical: number; horizontal: number };
  /** About the arm's own axis [N·m]. */
  rootTorque: number;
  /** Pressing the arm into the body [N]. */
  axialForce: number;
  /** Outer-fibre stress along the arm at the root, first layer [Pa]. */
  rootStress: number;
}

/** Compliance at the point of the blow, and what a force of one there does to the root. */
function unitLoads({ segments, root = {}, hitHeight }: TipStrikeGiven) {
  const height = Math.abs(hitHeight);
  const length = segments.reduce((sum, segment) => sum + segment.length, 0);
  const tip = tipStiffness(segments, root);
  const { tipSlope } = armBending({
    segments,
    plane: 'vertical',
    tipForce: 0,
    tipMoment: 1,
    rootStiffness: root.vertical,
    steps: 1,
  });
  const none = { vertical: 0, horizontal: 0, torque: 0, axial: 0 };
  return {
    vertical: { ...none, compliance: 1 / tip.vertical, vertical: length },
    sideways: {
      ...none,
      compliance: 1 / tip.horizontal + height ** 2 / tip.torsion,
      horizontal: length,
      torque: height,
    },
    along: {
      ...none,
      compliance: 1 / axialStiffness(segments) + height ** 2 * tipSlope,
      vertical: height,
      axial: 1,
    },
  };
}

/** Outer-fibre stress of the first layer at the root. */
function stressAtRoot(segment: ArmSegment, load: { vertical: number; horizontal: number; axial: number }): number {
  const [{ section, youngsModulus }] = segment.layers as [ArmSegment['layers'][number]];
  const stretching = segment.layers.reduce((sum, layer) => sum + layer.youngsModulus * layer.section.area, 0);
  const bending = (plane: 'vertical' | 'horizontal') =>
    (load[plane] * section[plane].extremeFibre) / rigidity(segment, plane).flexural;
  return youngsModulus * (bending('vertical') + bending('horizontal') + load.axial / stretching);
}

/**
 * A blow at the end of an arm in three directions, the craft free in the air behind it.
 * $$F = v\sqrt{k\,m_{eff}},\quad \frac1k = \frac{1}{k_{arm}}+\frac{1}{k_{contact}},\quad
 * \frac{1}{k_{side}} = \frac1{k_h}+\frac{h^2}{k_t},\quad \frac{1}{k_{along}} = \frac{1}{EA/L}+h^2\,\frac{\theta}{M}$$
 * @param given - craft, motor, arm, contact, speed
 * @returns for each direction: effective mass, stiffness, peak force, and what reaches the root
 * @validity linear, elastic, nothing breaks or slips. The motor's own mass is counted behind the arm though the obstacle
 * stops it: against two masses on two springs the arm's force is within some 15 % on a hard obstacle, and up to half too
 * high on a soft one. Measured peaks of small frames lie up to 1.5 times higher, see peakForceBand. A blow along the arm
 * presses through both root screws, whose own give is left out
 * @throws InputError when a number is out of range
 * @derivation effectiveMassAt, movingMassImpact, and statics of a cantilever under the force F at the height h
 */
export function tipStrike(given: TipStrikeGiven): Readonly<Record<StrikeDirection, Strike>> {
  const { craft, motor, hitHeight, segments, contactStiffness, speed } = given;
  requireBetween(hitHeight, -10, 10, { parameter: 'hitHeight', quantity: 'height of the blow', kind: 'length' });
  const reach = Math.hypot(motor.x, motor.y);
  requirePositive(reach, { parameter: 'motor', quantity: 'distance of the motor from the middle', kind: 'length' });
  const out = { x: motor.x / reach, y: motor.y / reach, z: 0 };
  const lines: Record<StrikeDirection, Vector> = {
    vertical: { x: 0, y: 0, z: 1 },
    sideways: { x: -out.y, y: out.x, z: 0 },
    along: { x: -out.x, y: -out.y, z: 0 },
  };
  const { centre } = craft;
  const lever = { x: motor.x - centre.x, y: motor.y - centre.y, z: hitHeight - centre.z };
  const unit = unitLoads(given);
  const strike = (name: StrikeDirection): Strike => {
    const { compliance, vertical, horizontal, torque, axial } = unit[name];
    const shown = effectiveMassAt({ mass: craft.mass, inertia: craft.inertia, lever, direction: lines[name] });
    const armStiffness = 1 / compliance;
    const stiffness = springsInSeries([armStiffness, contactStiffness]);
    const hit = movingMassImpact({ mass: shown.effectiveMass, speed, stiffness });
    const force = hit.peakForce;
    const load = { vertical: force * vertical, horizontal: force * horizontal, axial: force * axial };
    return {
      ...shown,
      armStiffness,
      stiffness,
      peakForce: force,
      timeToPeak: hit.timeToPeak,
      rootMoment: { vertical: load.vertical, horizontal: load.horizontal },
      rootTorque: force * torque,
      axialForce: load.axial,
      rootStress: stressAtRoot(segments[0]!, load),
    };
  };
  return { vertical: strike('vertical'), sideways: strike('sideways'), along: strike('along') };
}
