import {
  changedFields,
  changedLists,
  designSteps,
  evaluateFrame,
  FIELDS,
  firstToGive,
  frameValue,
  gainPerGram,
  isWritable,
  LEAF_PATHS,
  withFrameValue,
  type FrameRecord,
} from '@frameworthy/shared/frame';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readValue } from '~/frame/read.ts';
import { SAMPLES } from '~/frame/samples.ts';
import { evaluated, frozen, nearRecord, RUNS, within } from '../frame/arbitrary.ts';

describe('values that calculators take and write back', () => {
  const otherKind = (record: FrameRecord, path: string) => frameValue(record, path) === undefined;
  const WRITABLE = [
    ...LEAF_PATHS,
    'layout.wheelbase',
    'layout.rootDistance',
    'arm.tube.inside',
    'arm.sleeve.outside',
    'arm.sleeve.reach',
    'arm.root.clearance',
    'body.standoff.foreAft',
    'body.standoff.across',
  ];

  test('a writable value that is written is read again', () => {
    fc.assert(
      fc.property(nearRecord, fc.constantFrom(...WRITABLE), within(0.9, 1.1), fc.nat(), (record, path, times, pick) => {
        expect(isWritable(path)).toBe(true);
        fc.pre(!otherKind(record, path) && evaluated(record) !== undefined);
        const old = frameValue(record, path)!;
        const field = LEAF_PATHS.includes(path as never) ? FIELDS[path as keyof typeof FIELDS] : undefined;
        if (field && 'choices' in field) {
          const keys = Object.keys(field.choices);
          const value = keys[pick % keys.length]!;
          // A frame of the other kind of arm no longer has the tube's values, but its kind is always there.
          expect(frameValue(withFrameValue(record, path, value), path)).toBe(value);
          return;
        }
        const value = (old as number) * times;
        const written = frozen(withFrameValue(frozen(record), path, value));
        const found = frameValue(written, path) as number;
        if (field) expect(found).toBe(value);
        else expect(Math.abs(found - value)).toBeLessThan(1e-12 + 1e-9 * Math.abs(value));
      }),
      { numRuns: 300 },
    );
  });

  test('a written wheelbase keeps the roots where they are, a written root distance keeps the motors', () => {
    fc.assert(
      fc.property(nearRecord, within(0.9, 1.2), (record, times) => {
        fc.pre(evaluated(record) !== undefined);
        const [wheelbase, root] = ['layout.wheelbase', 'layout.rootDistance'].map(
          (path) => frameValue(record, path) as number,
        ) as [number, number];
        fc.pre(root > 1e-3);
        const grown = withFrameValue(record, 'layout.wheelbase', wheelbase * times);
        expect(frameValue(grown, 'layout.rootDistance')).toBeCloseTo(root, 9);
        const moved = withFrameValue(record, 'layout.rootDistance', root * times);
        expect(frameValue(moved, 'layout.wheelbase')).toBe(wheelbase);
      }),
      RUNS,
    );
  });

  test('paths that no record has give nothing and change nothing', () => {
    for (const path of ['', 'arm', 'arm.length.typical', '__proto__', 'constructor', 'toString', 'arm.__proto__.x']) {
      for (const record of SAMPLES) {
        expect(frameValue(record, path), path).toBeUndefined();
        expect(withFrameValue(record, path, 1), path).toBe(record);
        expect(isWritable(path)).toBe(false);
      }
    }
  });
});

describe('steps and what they buy', () => {
  /** What goes along with a step: the hole with its thread, the price of a metre with its tube. */
  const ALONG: Readonly<Record<string, readonly string[]>> = {
    'arm.root.thread': ['arm.root.holeDiameter'],
    'arm.tube.outerDiameter': ['costs.tubePerMetre'],
    'arm.tube.wall': ['costs.tubePerMetre'],
  };
  /** Grams per kilometre of carbon tow by thousands of filaments, as makers list them. */
  const TOW_NAMES: Readonly<Record<number, string>> = {
    0.000066: '1K',
    0.000198: '3K',
    0.000396: '6K',
    0.0008: '12K',
  };

  test('each step changes one thing, the one that it says, by the size that it says', () => {
    fc.assert(
      fc.property(nearRecord, (record) => {
        frozen(record);
        const steps = designSteps(record);
        expect(new Set(steps.map(({ path }) => path)).size).toBe(steps.length);
        for (const { path, says, record: after } of steps) {
          const changed = changedFields(record, after).filter(({ path: one }) => !ALONG[path]?.includes(one));
          expect(readValue(after).ok, says).toBe(true);
          if (path === 'electronics.arrangements') {
            expect(changed).toEqual([]);
            expect(changedLists(record, after).standoffs.after).toBe(changedLists(record, after).standoffs.before + 2);
            continue;
          }
          expect(
            changed.map((one) => one.path),
            says,
          ).toEqual([path]);
          const [{ after: value, field }] = changed as [(typeof changed)[0]];
          const size = path !== 'arm.root.thread' && /(-?[\d.]+) mm/.exec(says);
          if (size) expect(Number(size[1])).toBeCloseTo((value as number) * 1e3, 1);
          else if ('choices' in field) expect(Object.keys(field.choices)).toContain(value);
          else if (field.kind === 'linearDensity') expect(says).toBe(`tow of ${TOW_NAMES[value as number]}`);
          else expect(says).toContain(String(value));
        }
      }),
      { numRuns: 60 },
    );
  });

  test.each(SAMPLES.map((record) => [`${record.name} ${record.revision}`, record] as const))(
    '%s: the record stays as it is, gains are in order and are what evaluations before and after say',
    (_, record) => {
      const text = JSON.stringify(record);
      const before = evaluateFrame(record);
      const { gains, impossible } = gainPerGram(frozen(structuredClone(record)));
      expect(JSON.stringify(record)).toBe(text);
      expect(gains.length + impossible.length).toBe(designSteps(record).length);
      expect(gains.length).toBeGreaterThan(8);
      const governing = firstToGive(before).find(({ speed }) => speed !== undefined)!;
      gains.slice(1).forEach(({ perMass }, i) => expect(perMass).toBeLessThanOrEqual(gains[i]!.perMass));
      for (const { step, speed, mass, cost, then } of gains) {
        // A step may not leave the range that the door lets in.
        expect(readValue(step.record).ok, step.says).toBe(true);
        const after = evaluateFrame(step.record);
        const first = firstToGive(after).find((check) => check.case === governing.case)!;
        expect(then).toEqual(first);
        expect(speed).toBeCloseTo(first.speed!.typical - governing.speed!.typical, 8);
        expect(mass).toBeCloseTo(after.balance.allUp - before.balance.allUp, 12);
        expect(cost).toBeCloseTo(after.balance.cost - before.balance.cost, 9);
      }
    },
  );
});
