import { InputError } from '@frameworthy/shared';
import {
  CASES,
  evaluateFrame,
  firstToGive,
  frameOutline,
  frameValue,
  hasSleeve,
  LEAF_PATHS,
  MODES,
  valueAt,
  withValue,
  type CaseName,
  type Check,
  type FrameEvaluation,
  type FrameRecord,
  type ModeName,
  type Spread,
} from '@frameworthy/shared/frame';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readValue } from '~/frame/read.ts';
import { evaluated, frozen, nearRecord, RUNS, wildRecord, within } from '../frame/arbitrary.ts';
import { refusesOrFinite } from './garbage.ts';

/** Evaluations of two records that can both be; other pairs are drawn anew. */
function both(before: FrameRecord, after: FrameRecord): [FrameEvaluation, FrameEvaluation] {
  const [old, now] = [evaluated(before), evaluated(after)];
  fc.pre(old !== undefined && now !== undefined);
  return [old, now];
}

const checkOf = ({ checks }: FrameEvaluation, name: CaseName, mode: ModeName): Check | undefined =>
  checks.find((one) => one.case === name && one.mode === mode);
const marginOf = (evaluation: FrameEvaluation, name: CaseName, mode: ModeName): number =>
  checkOf(evaluation, name, mode)!.margin.typical;
const ROUNDING = 1 - 1e-9;

describe('any record that the door lets in', () => {
  test.each([
    ['near a sample', nearRecord, 50],
    ['anywhere in range', wildRecord, 3],
  ])('%s: every number is finite, or the error names a field', (_, records, least) => {
    let evaluations = 0;
    fc.assert(
      fc.property(records, (record) => {
        expect(readValue(record).ok).toBe(true);
        frozen(record);
        try {
          const { balance, checks } = evaluateFrame(record);
          evaluations++;
          refusesOrFinite(() => ({ balance, checks }));
          for (const { margin, allowable, applied, mode, case: name } of checks) {
            expect(CASES).toContain(name);
            expect(MODES).toContain(mode);
            expect(margin.low).toBeLessThanOrEqual(margin.typical);
            expect(margin.typical).toBeLessThanOrEqual(margin.high);
            expect(Math.min(margin.low, allowable, applied), `${name} ${mode}`).toBeGreaterThanOrEqual(0);
          }
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          expect((error as InputError).parameter.length).toBeGreaterThan(0);
        }
        refusesOrFinite(() => frameOutline(record));
      }),
      { numRuns: 150 },
    );
    // Else the property would hold by refusing.
    expect(evaluations).toBeGreaterThan(least);
  });

  test('each case has its checks once, and the first to give of each is the least of them', () => {
    fc.assert(
      fc.property(nearRecord, (record) => {
        const evaluation = evaluated(record);
        fc.pre(evaluation !== undefined);
        const keys = evaluation.checks.map((one) => `${one.case} ${one.mode}`);
        expect(new Set(keys).size).toBe(keys.length);
        for (const first of firstToGive(evaluation)) {
          const same = evaluation.checks.filter((one) => one.case === first.case);
          expect(first.margin.typical).toBe(Math.min(...same.map(({ margin }) => margin.typical)));
        }
      }),
      RUNS,
    );
  });
});

describe('what a change of one dimension does', () => {
  const tubes = nearRecord.filter((record) => record.arm.kind === 'tube' && hasSleeve(record));

  test('a thicker sleeve never lowers the margin of the drilled root in bending', () => {
    fc.assert(
      fc.property(tubes, within(1.01, 2), (record, times) => {
        const thicker = withValue(record, 'arm.sleeve.wall', record.arm.sleeve.wall * times);
        const [old, now] = both(record, thicker);
        expect(marginOf(now, 'thrust', 'outer-hole')).toBeGreaterThan(marginOf(old, 'thrust', 'outer-hole'));
        // The hit grows with the arm's stiffness, less than its strength does.
        expect(marginOf(now, 'strike-vertical', 'outer-hole')).toBeGreaterThanOrEqual(
          marginOf(old, 'strike-vertical', 'outer-hole') * ROUNDING,
        );
      }),
      RUNS,
    );
  });

  test('screws farther apart never raise what the inner hole carries', () => {
    fc.assert(
      fc.property(nearRecord, within(1.01, 1.6), (record, times) => {
        const wider = withValue(record, 'arm.root.screwSpacing', record.arm.root.screwSpacing * times);
        const [old, now] = both(record, wider);
        for (const mode of ['bearing-inner', 'tear-out-inner'] as const) {
          const [before, after] = [old, now].map((one) => checkOf(one, 'strike-sideways', mode)!.applied);
          expect(after, mode).toBeLessThanOrEqual(before! / ROUNDING);
        }
      }),
      RUNS,
    );
  });

  test('a thicker main plate never lowers the margin of the tongue', () => {
    fc.assert(
      fc.property(nearRecord, within(1.01, 2), (record, times) => {
        const thicker = withValue(record, 'body.mainPlate.thickness', record.body.mainPlate.thickness * times);
        const [old, now] = both(record, thicker);
        for (const name of ['thrust', 'strike-vertical', 'strike-sideways', 'drop'] as const)
          expect(marginOf(now, name, 'tongue'), name).toBeGreaterThanOrEqual(marginOf(old, name, 'tongue') * ROUNDING);
      }),
      RUNS,
    );
  });

  test('a heavier battery never makes a drop softer, and turns slower', () => {
    fc.assert(
      fc.property(nearRecord, within(1.05, 2), (record, times) => {
        const heavier = withValue(record, 'battery.mass', record.battery.mass * times);
        const [old, now] = both(record, heavier);
        for (const check of old.checks.filter(({ case: name, mode }) => name === 'drop' && !mode.startsWith('mount')))
          expect(marginOf(now, 'drop', check.mode), check.mode).toBeLessThanOrEqual(check.margin.typical / ROUNDING);
        expect(now.balance.allUp).toBeGreaterThan(old.balance.allUp);
        expect(now.balance.agility.roll).toBeLessThan(old.balance.agility.roll / ROUNDING);
      }),
      RUNS,
    );
  });

  test('a stiffer obstacle never strikes more softly', () => {
    fc.assert(
      fc.property(nearRecord, within(1.05, 20), (record, times) => {
        const { contactStiffness } = record.cases.strike;
        const [old, now] = both(record, withValue(record, 'cases.strike.contactStiffness', contactStiffness * times));
        for (const path of ['loads.strike.vertical', 'loads.strike.horizontal'])
          expect(
            frameValue(withValue(record, 'cases.strike.contactStiffness', contactStiffness * times), path),
          ).toBeGreaterThan(frameValue(record, path) as number);
        for (const check of old.checks.filter(({ case: name }) => name.startsWith('strike')))
          expect(marginOf(now, check.case, check.mode)).toBeLessThanOrEqual(check.margin.typical / ROUNDING);
      }),
      RUNS,
    );
  });

  test('twice the strength of all that is not metal is twice the margin of it', () => {
    const METAL = /screw|standoff|electronics|motor-tilt|resonance/;
    fc.assert(
      fc.property(nearRecord, (record) => {
        const strengths = LEAF_PATHS.filter((path) => /^materials\..*Strength$|handLay$/.test(path));
        const stronger = strengths.reduce((held, path) => {
          const { low, typical, high } = valueAt(held, path) as Spread;
          return withValue(held, path, { low: 2 * low, typical: 2 * typical, high: 2 * high });
        }, record);
        const [old, now] = both(record, stronger);
        let compared = 0;
        for (const check of old.checks.filter(({ mode }) => !METAL.test(mode))) {
          if (check.margin.high > 1e5) continue;
          compared++;
          expect(marginOf(now, check.case, check.mode) / check.margin.typical, check.mode).toBeCloseTo(2, 6);
        }
        expect(compared).toBeGreaterThan(10);
      }),
      RUNS,
    );
  });
});

describe('hits are linear', () => {
  const SPEEDS = [
    ['strike', 'cases.strike.speed', 1],
    ['nose', 'cases.nose.speed', 1],
  ] as const;

  test.each(SPEEDS)('%s: margin over speed, survivable speed apart from it', (name, path) => {
    fc.assert(
      fc.property(nearRecord, within(0.2, 4), (record, times) => {
        const speed = valueAt(record, path) as number;
        const [old, now] = both(record, withValue(record, path, speed * times));
        for (const check of old.checks.filter((one) => one.case.startsWith(name))) {
          const other = checkOf(now, check.case, check.mode)!;
          // Endless where nothing loads a part, nothing where the electronics touch before the hit.
          if (Math.max(check.margin.high, other.margin.high) > 1e5) continue;
          if (check.margin.high === 0) {
            expect(other.margin.high).toBe(0);
            continue;
          }
          expect((other.margin.typical * times) / check.margin.typical, check.mode).toBeCloseTo(1, 6);
          for (const end of ['low', 'typical', 'high'] as const)
            expect(other.speed![end] / check.speed![end], check.mode).toBeCloseTo(1, 6);
        }
      }),
      RUNS,
    );
  });

  test('drop: survivable speed apart from the height of the fall', () => {
    fc.assert(
      fc.property(nearRecord, within(0.2, 4), (record, times) => {
        const [old, now] = both(record, withValue(record, 'cases.drop.height', record.cases.drop.height * times));
        for (const check of old.checks.filter((one) => one.case === 'drop')) {
          const other = checkOf(now, 'drop', check.mode)!;
          if (Math.max(check.margin.high, other.margin.high) > 1e5) continue;
          for (const end of ['low', 'typical', 'high'] as const)
            expect(Math.abs(other.speed![end] - check.speed![end]), check.mode).toBeLessThan(
              1e-6 * (1 + check.speed![end]),
            );
        }
      }),
      RUNS,
    );
  });

  test('a hit in the middle of a mirrored frame is the same hit', () => {
    const mirrored = (record: FrameRecord): FrameRecord =>
      withValue(
        record,
        'electronics.arrangements',
        record.electronics.arrangements.map((one) => ({
          ...one,
          items: one.items.map((item) => ({ ...item, y: -item.y })),
          standoffs: one.standoffs.map(({ x, y }) => ({ x, y: -y })),
        })),
      );
    fc.assert(
      fc.property(nearRecord, (record) => {
        const straight = withValue(record, 'cases.nose.aside', 0);
        const [old, now] = both(straight, mirrored(straight));
        for (const { case: name, mode, margin } of old.checks)
          expect(Math.abs(marginOf(now, name, mode) - margin.typical), mode).toBeLessThanOrEqual(1e-6 * margin.typical);
      }),
      RUNS,
    );
  });
});

describe('mass', () => {
  test('the whole is the sum of its parts, however they are grouped', () => {
    fc.assert(
      fc.property(nearRecord, (record) => {
        const evaluation = evaluated(record);
        fc.pre(evaluation !== undefined);
        const { parts, allUp, frameMass, properties } = evaluation.balance;
        const sum = parts.reduce((total, { count, mass }) => total + count * mass, 0);
        expect(allUp / sum).toBeCloseTo(1, 12);
        // What is balanced is what is weighed.
        expect(properties.mass / sum).toBeCloseTo(1, 9);
        const current = record.electronics.arrangements.find(({ name }) => name === record.electronics.current)!;
        const electronics = current.items.reduce((total, { mass }) => total + mass, 0);
        const rest = 4 * record.motor.mass + record.battery.mass + electronics;
        expect((frameMass + rest) / sum).toBeCloseTo(1, 9);
        for (const { mass, count, cost, name } of parts) {
          expect(Math.min(mass, count, cost), name).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });
});
