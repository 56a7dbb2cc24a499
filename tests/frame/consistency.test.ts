import {
  currentArrangement,
  evaluateFrame,
  FIELDS,
  LEAF_PATHS,
  leafOf,
  withValue,
  type Spread,
  frameValue,
  standoffForces,
  withFrameValue,
  hasSleeve,
  type CaseName,
  type Check,
  type FrameRecord,
  type ModeName,
} from '@frameworthy/shared/frame';
import { describe, expect, test } from 'vitest';
import { calculators } from '~/calculators/index.ts';
import type { LayoutResult } from '~/calculators/standoff-layout/compute.ts';
import { SAMPLES } from '~/frame/samples.ts';
import type { AnyCalculator } from '~/island/declaration.ts';
import { filledFrom } from './filled.ts';

/** What a calculator shows once the frame has filled it, and what the frame sheet says of the same thing. */
class Sheet {
  readonly balance;
  private readonly checks;
  constructor(readonly record: FrameRecord) {
    ({ balance: this.balance, checks: this.checks } = evaluateFrame(record));
  }

  check(name: CaseName, mode: ModeName): Check {
    const found = this.checks.find((one) => one.case === name && one.mode === mode);
    if (!found) throw new Error(`no ${mode} in ${name}`);
    return found;
  }

  /** Outputs by key; with some of the fields as the reader sets them. */
  shown(id: string, own: Readonly<Record<string, number | string>> = {}): Readonly<Record<string, number>> {
    const calculator = (calculators as Readonly<Record<string, AnyCalculator>>)[id]!;
    const values = { ...filledFrom(calculator, this.record), ...own };
    const result = calculator.compute(values);
    return Object.fromEntries(
      calculator.outputs
        .filter((output) => output.impossible?.(result, values) === undefined)
        .map((output) => [output.key, output.value(result, values)]),
    );
  }
}

const same = (found: number | undefined, expected: number) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! - expected)).toBeLessThanOrEqual(1e-9 * Math.abs(expected) + 1e-15);
};

/** A sample in which no number is a calculator's default any more, so that a field that is not filled shows. */
function shaken(record: FrameRecord): FrameRecord {
  const moved = LEAF_PATHS.reduce((held, path, i) => {
    const field = FIELDS[path];
    if ('choices' in field || field.kind === 'count') return held;
    const by = 1 + (((i * 37) % 11) - 5.5) / 150;
    const value = leafOf(held, path);
    if (typeof value === 'number') return withValue(held, path, value * by);
    const { low, typical, high } = value as Spread;
    return withValue(held, path, { low: low * by, typical: typical * by, high: high * by });
  }, record);
  return {
    ...moved,
    revision: `${record.revision}, shaken`,
    propeller: { ...moved.propeller, blades: 2 },
    arm: { ...moved.arm, root: { ...moved.arm.root, grade: '12.9', holeDiameter: 0.0033 } },
    mount: { ...moved.mount, wrapTurns: 7 },
    battery: { ...moved.battery, lie: record.battery.lie === 'crosswise' ? 'lengthwise' : 'crosswise' },
    body: { ...moved.body, standoff: { ...moved.body.standoff, material: 'titanium', screwClass: '12.9' } },
    electronics: {
      ...record.electronics,
      arrangements: record.electronics.arrangements.map((one) => ({
        ...one,
        standoffs: one.standoffs.map(({ x, y }) => ({ x: x * 1.03, y: y * 1.02 })),
      })),
    },
  };
}

const frames = [...SAMPLES, ...SAMPLES.map(shaken)].map(
  (record) => [`${record.name} ${record.revision}`, new Sheet(record)] as const,
);
const tubes = frames.filter(([, { record }]) => record.arm.kind === 'tube');
const sleeved = frames.filter(([, { record }]) => hasSleeve(record));
const bare = frames.filter(([, { record }]) => !hasSleeve(record));
const strips = frames.filter(([, { record }]) => record.arm.kind === 'strip');

test('there is a frame of each kind', () => {
  expect([tubes.length, sleeved.length, bare.length, strips.length]).toEqual([4, 2, 4, 2]);
});

describe.each(frames)('%s', (_, sheet) => {
  const { record, balance } = sheet;

  test('no calculator fails once it is filled', () => {
    for (const id of Object.keys(calculators)) expect(() => sheet.shown(id), id).not.toThrow();
  });

  test('motor layout', () => {
    const shown = sheet.shown('motor-layout');
    same(shown['wheelbase'], balance.plan.layout.wheelbase);
    same(shown['armAngle'], balance.plan.layout.armAngle);
    same(shown['freeLength'], record.arm.length);
  });

  test('battery placement: mass, balance and agility', () => {
    const shown = sheet.shown('battery-placement');
    same(shown['allUp'], balance.allUp);
    for (const axis of ['roll', 'pitch', 'yaw'] as const) same(shown[axis], balance.agility[axis]);
    same(shown['forwardOffset'], balance.forwardOffset);
    same(shown['heightOffset'], balance.heightOffset);
    same(shown['frontShare'], balance.frontShare);
    same(shown['rearShare'], balance.rearShare);
  });

  test('frequencies of the arm, and how far they lie from hover', () => {
    const shown = sheet.shown('arm-frequency');
    const hover = shown['hoverTurn']!;
    const apart = Math.min(...[shown['upDown']!, shown['sideways']!].map((one) => Math.abs(one / hover - 1)));
    same(apart, sheet.check('running', 'resonance').allowable);
  });

  test('standoffs in a nose-first hit, by both calculators', () => {
    const sway = sheet.shown('standoff-sway');
    const check = (mode: ModeName) => sheet.check('nose', mode);
    same(sway['wallStress'], check('standoff-wall').applied);
    same(sway['speedStandoff'], check('standoff-wall').speed!.typical);
    same(sway['screwTension'], check('standoff-screw').applied);
    same(sway['speedScrew'], check('standoff-screw').speed!.typical);
    same(sway['speedBottom'], check('main-plate-foot').speed!.typical);
    same(sway['speedTop'], check('top-plate-foot').speed!.typical);
    same(sway['elastic'], check('electronics').applied);
    same(sway['speedTouch'], check('electronics').speed!.typical);
    same(sway['standoffMass'], balance.parts.find(({ name }) => name === 'Standoffs')!.mass * 4);
    const layout = sheet.shown('standoff-layout');
    same(layout['wallStress'], check('standoff-wall').applied);
    same(layout['footMoment'], sway['footMoment']!);
    same(layout['peakForce'], sway['peakForce']!);
    same(layout['plateStress'], Math.max(check('main-plate-foot').applied, check('top-plate-foot').applied));
  });

  test.each([
    ['vertical', 'strike-vertical', 'loads.strike.vertical'],
    ['horizontal', 'strike-sideways', 'loads.strike.horizontal'],
  ] as const)('tongue, struck %s', (plane, name, load) => {
    const force = frameValue(record, load) as number;
    const shown = sheet.shown('plate-tongue', { plane, force });
    same(shown['rootStress'], sheet.check(name, 'tongue').applied);
  });

  test('arm play: the hole less the screw', () => {
    same(frameValue(record, 'arm.root.clearance') as number, record.arm.root.holeDiameter - 0.003);
    same(filledFrom(calculators['arm-play']!, record)['armClearance'] as number, record.arm.root.holeDiameter - 0.003);
    same(filledFrom(calculators['arm-play']!, record)['armHeight'] as number, balance.plan.armHeight);
  });
});

/** Five standoffs in no pairs. */
const SCATTERED = [
  { x: 0.041, y: 0.0165 },
  { x: 0.036, y: -0.014 },
  { x: -0.036, y: 0.0165 },
  { x: -0.03, y: -0.011 },
  { x: 0.004, y: 0.021 },
];
const scattered = (record: FrameRecord): FrameRecord => ({
  ...record,
  electronics: {
    ...record.electronics,
    arrangements: record.electronics.arrangements.map((one) => ({ ...one, standoffs: SCATTERED })),
  },
});

describe.each(SAMPLES.map((record) => [`${record.name} ${record.revision}`, scattered(record)] as const))(
  '%s, standoffs in no pairs',
  (_, record) => {
    const sheet = new Sheet(record);

    test('the calculator of layouts takes each where it stands', () => {
      const calculator = calculators['standoff-layout']!;
      const result = calculator.compute(filledFrom(calculator, record)) as LayoutResult;
      expect(result.places.map(({ x, y }) => ({ x, y }))).toEqual(SCATTERED);
      same(result.wall[result.worst]!, sheet.check('nose', 'standoff-wall').applied);
      standoffForces(record, sheet.balance).forEach(({ shear, axial, footMoment, headMoment }, i) => {
        const one = result.forces[i]!;
        same(one.shear, shear);
        same(one.axial, axial);
        same(one.footMoment, footMoment);
        same(one.headMoment, headMoment);
      });
    });

    test('a place written back moves that standoff and no other', () => {
      const moved = withFrameValue(withFrameValue(record, 'body.standoff.x4', -0.022), 'body.standoff.y4', -0.019);
      const expected = SCATTERED.map((place, i) => (i === 3 ? { x: -0.022, y: -0.019 } : place));
      expect(currentArrangement(moved).standoffs).toEqual(expected);
    });
  },
);

test('a pair written back moves both of its standoffs, past other pairs too', () => {
  for (const record of SAMPLES) {
    const second = withFrameValue(record, 'body.standoff.along1', -0.05);
    const both = withFrameValue(second, 'body.standoff.across1', 0.012);
    const [left] = currentArrangement(record).standoffs;
    const pair = ({ x, y }: { x: number; y: number }) => x === left!.x && Math.abs(y) === left!.y;
    const expected = currentArrangement(record).standoffs.map((place) =>
      pair(place) ? { x: -0.05, y: Math.sign(place.y) * 0.012 } : place,
    );
    expect(currentArrangement(both).standoffs).toEqual(expected);
  }
});

describe.each(tubes)('%s, of tube', (_, sheet) => {
  test('two-screw root under both blows', () => {
    const shown = sheet.shown('two-screw-root');
    const sideways = (mode: ModeName) => sheet.check('strike-sideways', mode).applied;
    same(shown['outerBearing'], sideways('bearing-outer'));
    same(shown['innerBearing'], sideways('bearing-inner'));
    same(shown['outerTearOut'], sideways('tear-out-outer'));
    same(shown['innerTearOut'], sideways('tear-out-inner'));
    same(shown['bendingSideways'], sideways('outer-hole'));
    same(shown['bendingUpright'], sheet.check('strike-vertical', 'outer-hole').applied);
    // One blow at a time is what the sheet looks at; the calculator adds them up.
    const one = (own: object) => sheet.shown('two-screw-root', own as Record<string, number>)['screwUse'];
    same(one({ horizontalForce: 0 }), sheet.check('strike-vertical', 'arm-screw').applied);
    same(one({ verticalForce: 0 }), sheet.check('strike-sideways', 'arm-screw').applied);
  });

  test('clamp torque', () => {
    const shown = sheet.shown('clamp-torque');
    const check = sheet.check('tightening', 'tube-crush');
    same(shown['doubledForce'], check.allowable);
    same(shown['preloadHigh'], check.applied);
  });

  test('glue and wrap of the mount at full throttle', () => {
    same(sheet.shown('mount-bond', { chip: 0 })['flightUse'], sheet.check('thrust', 'mount-bond').applied);
    const wrap = sheet.check('thrust', 'mount-wrap');
    const shown = sheet.shown('tow-wrap', { chip: 0, deceleration: 10, bladeForce: 0 });
    same(shown['worstUse'], wrap.applied / wrap.allowable);
    same(shown['sideStrength'], wrap.allowable);
  });
});

describe.each(sleeved)('%s, with sleeves', (_, sheet) => {
  test.each([
    ['vertical', 'strike-vertical', 'loads.strike.vertical'],
    ['horizontal', 'strike-sideways', 'loads.strike.horizontal'],
  ] as const)('doubler, struck %s', (plane, name, load) => {
    const tipForce = frameValue(sheet.record, load) as number;
    const shown = sheet.shown('doubler-length', { plane, tipForce });
    same(shown['reserve'], sheet.check(name, 'sleeve-end').margin.typical);
    same(shown['bondPeak'], sheet.check(name, 'bond-peak').applied);
    same(shown['bondBreaks'], sheet.check(name, 'bond-peak').allowable);
  });

  test('loads and drops are of the bare arm there: a little less stiff, so a little softer than on the sheet', () => {
    const loads = sheet.shown('arm-loads');
    const forces = [
      [loads['verticalForce']!, frameValue(sheet.record, 'loads.strike.vertical') as number],
      [loads['sidewaysForce']!, frameValue(sheet.record, 'loads.strike.horizontal') as number],
      [sheet.shown('flat-drop')['each']!, dropForce(sheet)],
    ] as const;
    for (const [found, expected] of forces) {
      expect(found / expected).toBeGreaterThan(0.97);
      expect(found / expected).toBeLessThan(1);
    }
  });
});

/** At each motor: stress away from the holes over that of a newton. */
const dropForce = (sheet: Sheet): number =>
  (sheet.check('drop', 'outer-hole').applied / sheet.check('thrust', 'outer-hole').applied) *
  sheet.record.motor.fullThrust;

describe.each(bare)('%s, with bare arms', (_, sheet) => {
  const { record } = sheet;

  test('loads at a motor', () => {
    const shown = sheet.shown('arm-loads');
    same(shown['verticalForce'], frameValue(record, 'loads.strike.vertical') as number);
    same(shown['sidewaysForce'], frameValue(record, 'loads.strike.horizontal') as number);
    same(shown['alongStress'], sheet.check('strike-along', 'bare-arm').applied);
    same(shown['allUp'], sheet.balance.allUp);
    const { xx, yy, zz } = sheet.balance.properties.inertia;
    same(shown['inertiaRoll'], xx);
    same(shown['inertiaPitch'], yy);
    same(shown['inertiaYaw'], zz);
    if (record.arm.kind === 'tube') {
      same(shown['verticalStress'], sheet.check('strike-vertical', 'bare-arm').applied);
      same(shown['sidewaysStress'], sheet.check('strike-sideways', 'bare-arm').applied);
    }
  });

  test('a flat drop', () => {
    const shown = sheet.shown('flat-drop');
    same(shown['each'], dropForce(sheet));
    same(shown['speed'], Math.sqrt(2 * 9.80665 * record.cases.drop.height));
    if (record.arm.kind === 'tube') same(shown['rootStress'], sheet.check('drop', 'bare-arm').applied);
  });

  test('tube or plate: largest force at the drilled root', () => {
    const shown = sheet.shown('tube-or-plate');
    const part = record.arm.kind === 'tube' ? 'tube' : 'strip';
    const strength = record.materials[part === 'tube' ? 'tube' : 'plate'].bendingStrength.typical;
    const thrust = sheet.check('thrust', 'outer-hole').applied / record.motor.fullThrust;
    same(shown[`${part}RootVertical`], strength / thrust);
    const sideways = sheet.check('strike-sideways', 'outer-hole').applied;
    same(
      shown[`${part}RootSideways`],
      strength / (sideways / (frameValue(record, 'loads.strike.horizontal') as number)),
    );
  });
});
