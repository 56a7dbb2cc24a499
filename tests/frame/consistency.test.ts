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
import type { LoadResult } from '~/calculators/arm-loads/compute.ts';
import type { LayoutResult } from '~/calculators/standoff-layout/compute.ts';
import type { SwayResult } from '~/calculators/standoff-sway/compute.ts';
import type { WrapResult } from '~/calculators/tow-wrap/compute.ts';
import { SAMPLES } from '~/frame/samples.ts';
import type { AnyCalculator } from '~/island/declaration.ts';
import { filledFrom } from './filled.ts';

type Own = Readonly<Record<string, number | string>>;

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

  /** What a calculator works out; with some of the fields as the reader sets them. */
  computed(id: string, own: Own = {}) {
    const calculator = (calculators as Readonly<Record<string, AnyCalculator>>)[id]!;
    const values = { ...filledFrom(calculator, this.record), ...own };
    return { calculator, values, result: calculator.compute(values) };
  }

  /** Outputs by key. */
  shown(id: string, own: Own = {}): Readonly<Record<string, number>> {
    const { calculator, values, result } = this.computed(id, own);
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

const G = 9.80665;

/** Each case that bends the arm, and in which plane. */
const ACROSS = [
  ['vertical', 'thrust'],
  ['vertical', 'strike-vertical'],
  ['vertical', 'drop'],
  ['horizontal', 'strike-sideways'],
] as const;

/** Force across the arm at a motor. */
function forceIn(sheet: Sheet, name: (typeof ACROSS)[number][1]): number {
  const { record } = sheet;
  if (name === 'thrust') return record.motor.fullThrust;
  if (name === 'strike-sideways') return frameValue(record, 'loads.strike.horizontal') as number;
  if (name === 'strike-vertical') return frameValue(record, 'loads.strike.vertical') as number;
  // The sheet shows no force of a drop: stress away from the holes over that of a newton.
  const each = (at: CaseName) => sheet.check(at, 'outer-hole').applied;
  return (each('drop') / each('thrust')) * record.motor.fullThrust;
}

/** Nor of a blow along the arm: half of it bears on each screw, on what the arm has of wall there. */
function alongForce(sheet: Sheet): number {
  const { arm } = sheet.record;
  const walls = arm.kind === 'tube' ? 2 * (arm.tube.wall + arm.sleeve.wall) : arm.strip.thickness;
  return sheet.check('strike-along', 'bearing-outer').applied * 2 * 0.003 * walls;
}

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

  test.each(ACROSS)('tongue, bent %s in %s', (plane, name) => {
    const shown = sheet.shown('plate-tongue', { plane, force: forceIn(sheet, name) });
    same(shown['rootStress'], sheet.check(name, 'tongue').applied);
  });

  test('loads at a motor', () => {
    const shown = sheet.shown('arm-loads');
    same(shown['verticalForce'], frameValue(record, 'loads.strike.vertical') as number);
    same(shown['sidewaysForce'], frameValue(record, 'loads.strike.horizontal') as number);
    same(shown['alongStress'], sheet.check('strike-along', 'bare-arm').applied);
    same(shown['alongForce'], alongForce(sheet));
    same(shown['thrustLean'], sheet.check('thrust', 'motor-tilt').applied);
    same(shown['allUp'], balance.allUp);
    const { xx, yy, zz } = balance.properties.inertia;
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
    same(shown['each'], forceIn(sheet, 'drop'));
    same(shown['speed'], Math.sqrt(2 * G * record.cases.drop.height));
    if (record.arm.kind === 'tube') same(shown['armStress'], sheet.check('drop', 'bare-arm').applied);
  });

  test.each(ACROSS)('outer arm screw, bent %s in %s', (plane, name) => {
    const none = { horizontalForce: 0, verticalForce: 0 };
    const own = { ...none, [`${plane}Force`]: forceIn(sheet, name) };
    // Thread and class are filled for plate arms too; one blow at a time is what the sheet looks at.
    same(sheet.shown('two-screw-root', own)['screwUse'], sheet.check(name, 'arm-screw').applied);
  });

  test('buckling of a standoff, which its calculator counts among the limits', () => {
    const { applied, allowable, margin } = sheet.check('nose', 'standoff-buckling');
    const limit = (sheet.computed('standoff-sway').result as SwayResult).limit('buckling')!;
    same(limit.applied, applied);
    same(limit.allowable, allowable);
    same(limit.speed ?? Infinity, margin.typical * record.cases.nose.speed);
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

/** What a blow on the motor does to the glue and the wrap: the stop of a mass, or a push at a lever. */
describe.each(tubes)('%s, its mount in hits', (_, sheet) => {
  const { record } = sheet;
  const { mass } = record.motor;

  test.each(['strike-vertical', 'drop'] as const)('%s: the motor’s own mass pulls', (name) => {
    const { result } = sheet.computed('arm-loads');
    const { peakForce, effectiveMass } = (result as LoadResult).strikes.vertical;
    const factor = sheet.shown('flat-drop')['factor']!;
    const deceleration = name === 'drop' ? factor : peakForce / effectiveMass / G;
    same(sheet.shown('mount-bond', { deceleration })['pullUse'], sheet.check(name, 'mount-bond').applied);
    const wrap = sheet.computed('tow-wrap', { deceleration }).result as WrapResult;
    same(wrap.pull.pull.pull, sheet.check(name, 'mount-wrap').applied);
    same(wrap.strength.side, sheet.check(name, 'mount-wrap').allowable);
  });

  test.each(['strike-sideways', 'strike-along'] as const)('%s: the blow pushes at its height', (name) => {
    const force = name === 'strike-along' ? alongForce(sheet) : forceIn(sheet, name);
    // The push of a mass that stops, at the lever above the glue that the blow has.
    const deceleration = force / mass / G;
    const centreHeight = record.cases.strike.height - record.arm.tube.outerDiameter / 2 - record.mount.plateThickness;
    const own = { deceleration, centreHeight };
    same(sheet.shown('mount-bond', own)['stopUse'], sheet.check(name, 'mount-bond').applied);
    const wrap = sheet.computed('tow-wrap', own).result as WrapResult;
    same(wrap.pull.stop.pull, sheet.check(name, 'mount-wrap').applied);
    same(wrap.strength.side, sheet.check(name, 'mount-wrap').allowable);
  });

  test('along the arm both screws bear alike', () => {
    const { outerBearing, outerLoad } = sheet.shown('two-screw-root') as { outerBearing: number; outerLoad: number };
    const { alongForce: push } = sheet.shown('arm-loads') as { alongForce: number };
    for (const mode of ['bearing-outer', 'bearing-inner'] as const) {
      same(((outerBearing / outerLoad) * push) / 2, sheet.check('strike-along', mode).applied);
    }
  });
});

describe.each(strips)('%s, its root', (_, sheet) => {
  const { arm } = sheet.record;

  test('bearing and tear-out: the calculator has the screws’ forces, the strip its own area', () => {
    const shown = sheet.shown('two-screw-root');
    const under = 0.003 * arm.strip.thickness;
    const beside = (arm.strip.width - arm.root.holeDiameter) * arm.strip.thickness;
    for (const hole of ['outer', 'inner'] as const) {
      const load = shown[`${hole}Load`]!;
      same(load / under, sheet.check('strike-sideways', `bearing-${hole}`).applied);
      same(load / beside, sheet.check('strike-sideways', `tear-out-${hole}`).applied);
    }
  });
});

describe.each(sleeved)('%s, with sleeves', (_, sheet) => {
  test.each(ACROSS)('doubler, bent %s in %s', (plane, name) => {
    const shown = sheet.shown('doubler-length', { plane, tipForce: forceIn(sheet, name) });
    same(shown['reserve'], sheet.check(name, 'sleeve-end').margin.typical);
    same(shown['bondPeak'], sheet.check(name, 'bond-peak').applied);
    same(shown['bondBreaks'], sheet.check(name, 'bond-peak').allowable);
  });

  test('a reach that a calculator writes back makes the sleeve as long', () => {
    const { endDistance, screwSpacing } = sheet.record.arm.root;
    const moved = withFrameValue(sheet.record, 'arm.sleeve.reach', 0.02);
    same(moved.arm.sleeve.length, endDistance + screwSpacing + 0.02);
    same(frameValue(moved, 'arm.sleeve.reach') as number, 0.02);
  });

  test('without its sleeve the arm is softer, and the calculators feel it', () => {
    const bareArm = { sleeveWall: 0 };
    const softer = (id: string, key: string) => sheet.shown(id, bareArm)[key]! / sheet.shown(id)[key]!;
    for (const key of ['verticalForce', 'sidewaysForce']) expect(softer('arm-loads', key)).toBeLessThan(0.995);
    expect(softer('flat-drop', 'each')).toBeLessThan(0.995);
    expect(softer('arm-loads', 'thrustLean')).toBeGreaterThan(1.02);
  });
});

describe.each(bare)('%s, with bare arms', (_, sheet) => {
  const { record } = sheet;
  const part = record.arm.kind === 'tube' ? 'tube' : 'strip';

  test('tube or plate: tilt under full thrust, and what the root turns besides', () => {
    const turned = (record.motor.fullThrust * record.arm.length) / record.arm.root.stiffnessVertical;
    same(sheet.shown('tube-or-plate')[`${part}Tilt`]! + turned, sheet.check('thrust', 'motor-tilt').applied);
  });

  test('tube or plate: largest force at the drilled root', () => {
    const shown = sheet.shown('tube-or-plate');
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
