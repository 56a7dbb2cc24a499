import { fallSpeed, flatDrop, survivableHeight, type StrikeDirection } from '../impact/index.ts';
import { frameBalance, type FrameBalance } from './balance.ts';
import { hitCheck, marginOf, type CaseName, type Check, type Use } from './check.ts';
import { alongUses } from './checks/arm-along.ts';
import { stripUses } from './checks/arm-strip.ts';
import { tubeUses } from './checks/arm-tube.ts';
import { noseChecks } from './checks/body.ts';
import { mountBond, mountUses } from './checks/mount.ts';
import { runningChecks } from './checks/running.ts';
import { tighteningChecks } from './checks/tightening.ts';
import { tongueUse } from './checks/tongue.ts';
import { dropSupports, strikesOf } from './hits.ts';
import type { FrameRecord } from './record.ts';

export interface FrameEvaluation {
  balance: FrameBalance;
  /** Every mode in every case that it applies to. */
  checks: readonly Check[];
}

/** A case without speed: flight or the workshop. */
function still(name: CaseName, use: Use, force: number): Check {
  const applied = use.perForce * force;
  return {
    case: name,
    mode: use.mode,
    quantity: use.quantity,
    applied,
    allowable: use.allowable.typical,
    margin: marginOf(applied, use.allowable),
  };
}

/**
 * Everything that can break in a frame, in every case that loads it.
 * $$n = \frac{\text{allowable}}{\text{applied}},\quad v_s = n\,v$$
 * @param record - a valid record
 * @returns mass and balance, and for each case and mode: applied, allowable, margin with scatter, survivable speed [m/s]
 * @validity linear parts, each mode alone. Low margins take the low strength and a hit 1.5 times its linear peak, high
 * ones the high strength. For ranking designs, not for promises
 * @throws InputError whose parameter is the path of the field that cannot be
 * @derivation the functions of each topic, filled from the record
 */
export function evaluateFrame(record: FrameRecord): FrameEvaluation {
  const balance = frameBalance(record);
  return {
    balance,
    checks: [
      ...tighteningChecks(record),
      ...runningChecks(record),
      ...armChecks(record, balance),
      ...noseChecks(record, balance),
    ],
  };
}

function armChecks(record: FrameRecord, balance: FrameBalance): Check[] {
  const tube = record.arm.kind === 'tube';
  const { armHeight } = balance.plan;
  const across = (plane: 'vertical' | 'horizontal'): Use[] => [
    ...(tube ? tubeUses : stripUses)(record, plane),
    tongueUse(record, plane, armHeight),
  ];
  const uses: Readonly<Record<StrikeDirection, Use[]>> = {
    vertical: across('vertical'),
    sideways: across('horizontal'),
    along: alongUses(record),
  };
  const bond = tube ? mountBond(record) : undefined;
  const mount = (load: Partial<Parameters<typeof mountUses>[2]>): Use[] =>
    bond ? mountUses(record, bond, { shear: 0, lift: 0, torque: 0, tipping: 0, ...load }) : [];

  const { fullThrust, torquePerThrust, mass: motorMass } = record.motor;
  const flight = [
    ...uses.vertical.map((use) => still('thrust', use, fullThrust)),
    ...mount({ lift: fullThrust, torque: fullThrust * torquePerThrust }).map((use) => still('thrust', use, 1)),
  ];

  const { speed, height } = record.cases.strike;
  const strikes = strikesOf(record, balance);
  const lever = Math.max(0, height - armHeight / 2);
  const hits = (['vertical', 'sideways', 'along'] as const).flatMap((direction) => {
    const { peakForce, effectiveMass } = strikes[direction];
    // Struck on the arm from above or below, the mount only stops its motor; struck from the side, it takes the blow.
    const onMount =
      direction === 'vertical'
        ? mount({ lift: (peakForce * motorMass) / effectiveMass })
        : mount({ shear: peakForce, tipping: peakForce * lever });
    const at = { case: `strike-${direction}`, speed } as const;
    return [
      ...uses[direction].map((use) => hitCheck(at, { ...use, applied: use.perForce * peakForce })),
      ...onMount.map((use) => hitCheck(at, { ...use, applied: use.perForce })),
    ];
  });
  return [...flight, ...hits, ...dropChecks(record, balance, uses.vertical, mount)];
}

function dropChecks(
  record: FrameRecord,
  balance: FrameBalance,
  uses: readonly Use[],
  mount: (load: { lift: number }) => Use[],
): Check[] {
  const supports = dropSupports(record, balance.allUp);
  const drop = flatDrop(supports, record.cases.drop.height);
  const lift = (drop.peakForce * record.motor.mass) / balance.allUp;
  const loads = [
    ...uses.map((use) => ({ ...use, applied: use.perForce * drop.each })),
    ...mount({ lift }).map((use) => ({ ...use, applied: use.perForce })),
  ];
  return loads.map((use) => {
    const check = hitCheck({ case: 'drop', speed: drop.speed }, use);
    const at = (margin: number) => fallSpeed(survivableHeight(supports, margin * drop.each));
    const { low, typical, high } = check.margin;
    return { ...check, speed: { low: at(low), typical: at(typical), high: at(high) } };
  });
}
