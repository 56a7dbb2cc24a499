import { tipStiffness } from '../beam/index.ts';
import { springsInSeries, tipStrike, type Strike, type StrikeDirection, type Supports } from '../impact/index.ts';
import { armSegments, rootSprings } from './arm.ts';
import type { FrameBalance } from './balance.ts';
import type { FrameRecord } from './record.ts';

/** The blow at the front right motor, in three directions. */
export function strikesOf(
  record: FrameRecord,
  { properties, plan }: Pick<FrameBalance, 'properties' | 'plan'>,
): Readonly<Record<StrikeDirection, Strike>> {
  const { speed, contactStiffness, height } = record.cases.strike;
  const half = plan.layout.wheelbase / 2;
  return tipStrike({
    craft: properties,
    motor: { x: half * Math.cos(plan.layout.armAngle), y: -half * Math.sin(plan.layout.armAngle) },
    hitHeight: height,
    segments: armSegments(record),
    root: rootSprings(record),
    contactStiffness,
    speed,
  });
}

/** The four arm ends on which the frame falls flat, ground and roots in series. */
export function dropSupports(record: FrameRecord, mass: number): Supports {
  const { vertical } = tipStiffness(armSegments(record), rootSprings(record));
  return { mass, count: 4, stiffness: springsInSeries([vertical, record.cases.drop.contactStiffness]) };
}
