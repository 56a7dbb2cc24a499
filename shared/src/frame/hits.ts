import {
  dropFactor,
  fallSpeed,
  springsInSeries,
  tipStrike,
  type Strike,
  type StrikeDirection,
} from '../impact/index.ts';
import { STANDARD_GRAVITY } from '../quantity/index.ts';
import { armSegments, armStiffness } from './arm.ts';
import type { FrameBalance } from './balance.ts';
import type { FrameRecord } from './record.ts';

/** The blow at the front right motor, in three directions. */
export function strikesOf(
  record: FrameRecord,
  { properties, plan }: Pick<FrameBalance, 'properties' | 'plan'>,
): Readonly<Record<StrikeDirection, Strike>> {
  const { root } = record.arm;
  const { speed, contactStiffness, height } = record.cases.strike;
  const half = plan.layout.wheelbase / 2;
  return tipStrike({
    craft: properties,
    motor: { x: half * Math.cos(plan.layout.armAngle), y: -half * Math.sin(plan.layout.armAngle) },
    hitHeight: height,
    segments: armSegments(record),
    root: {
      vertical: root.stiffnessVertical,
      horizontal: root.stiffnessHorizontal,
      torsion: root.stiffnessTwist,
    },
    contactStiffness,
    speed,
  });
}

export interface FlatDrop {
  /** At contact [m/s]. */
  speed: number;
  /** Of four arms on the ground [N/m]. */
  stiffness: number;
  /** Under the frame's own weight [m]. */
  staticDeflection: number;
  /** Over weight [-]. */
  factor: number;
  /** At each motor [N]. */
  forcePerArm: number;
}

/** The frame falls flat on its four arm ends. */
export function dropOf(record: FrameRecord, mass: number): FlatDrop {
  const { height, contactStiffness } = record.cases.drop;
  const stiffness = 4 * springsInSeries([armStiffness(record).vertical, contactStiffness]);
  const weight = mass * STANDARD_GRAVITY;
  const staticDeflection = weight / stiffness;
  const factor = dropFactor({ height, staticDeflection });
  return { speed: fallSpeed(height), stiffness, staticDeflection, factor, forcePerArm: (weight * factor) / 4 };
}

/** Speed of the fall whose peak is so many times the weight. */
export function speedOfDrop({ staticDeflection }: FlatDrop, factor: number): number {
  const reached = (factor - 1) ** 2 - 1;
  return factor <= 2 ? 0 : Math.sqrt(STANDARD_GRAVITY * staticDeflection * reached);
}
