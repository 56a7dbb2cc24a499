import { armEndGap, BLADE_HALF_HEIGHT, frameOutline, propellerRoom, type FrameRecord } from '@frameworthy/shared/frame';
import { expect, test } from 'vitest';
import { SAMPLES } from '~/frame/samples.ts';

const sample = (revision: string) => SAMPLES.find((record) => record.revision === revision)!;
const room = (record: FrameRecord) => propellerRoom(record, frameOutline(record));
const standing = (record: FrameRecord, x: number, y: number): FrameRecord => ({
  ...record,
  electronics: {
    ...record.electronics,
    arrangements: record.electronics.arrangements.map((one) => ({
      ...one,
      standoffs: [{ x, y }, ...one.standoffs.slice(1)],
    })),
  },
});

test('no sample’s blades strike anything, and Dunnock D and Flat keep all of their circles clear', () => {
  for (const record of SAMPLES) expect(room(record).filter(({ height }) => height <= 0)).toEqual([]);
  expect(room(sample('D'))).toEqual([]);
  expect(room(sample('A'))).toEqual([]);
});

test('a standoff inside a circle is struck, by as much as geometry says', () => {
  const record = sample('D');
  // True X: each motor half a spacing ahead and aside. Own derivation: distance of two points.
  const half = (record.propeller.diameter + record.layout.tipGap) / 2;
  const [x, y] = [0.044, 0.024];
  const expected =
    record.propeller.diameter / 2 + record.body.standoff.outerDiameter / 2 - Math.hypot(half - x, half - y);
  expect(expected).toBeGreaterThan(0);
  const [struck, ...rest] = room(standing(record, x, y));
  expect(rest).toEqual([]);
  expect(struck!.name).toBe('standoff 1');
  expect(struck!.height).toBeLessThan(0);
  // An octagon about the circle reaches at most 8.3 % of the radius past it.
  const slack = 0.0833 * (record.body.standoff.outerDiameter / 2);
  expect(struck!.reach).toBeGreaterThanOrEqual(expected - 1e-12);
  expect(struck!.reach).toBeLessThanOrEqual(expected + slack);
});

test('a plate over the blades is told with its distance in height', () => {
  const record = sample('C');
  const top = room(record).find(({ name }) => name === 'top plate')!;
  const { arm, body, motor } = record;
  const underside = arm.tube.outerDiameter / 2 + body.mainPlate.thickness + body.standoff.length;
  expect(top.height).toBeCloseTo(underside - motor.propellerHeight - BLADE_HALF_HEIGHT, 12);
});

test('a smaller gap between tips never gives more room', () => {
  const record = sample('D');
  const reach = (tipGap: number) =>
    Math.max(0, ...room({ ...record, layout: { ...record.layout, tipGap } }).map((one) => one.reach));
  const all = [0.05, 0.04, 0.03, 0.025, 0.02, 0.015, 0.01].map(reach);
  expect(all).toEqual([...all].sort((a, b) => a - b));
  expect(all.at(-1)).toBeGreaterThan(0);
});

test('arms that meet in the middle do so by what two strips at right angles overlap', () => {
  const record = sample('D');
  const longer = { ...record, arm: { ...record.arm, root: { ...record.arm.root, endDistance: 0.02 } } };
  // Corner of a square end against the diagonal between two arms: e sin 45° − (w/2) cos 45°, twice.
  const half = (record.propeller.diameter + record.layout.tipGap) / 2;
  const end = half * Math.SQRT2 - record.arm.length - record.arm.root.screwSpacing - 0.02;
  expect(armEndGap(longer)).toBeCloseTo(Math.SQRT2 * (end - record.arm.tube.outerDiameter / 2), 12);
  expect(armEndGap(longer)).toBeLessThan(0);
  for (const one of SAMPLES) expect(armEndGap(one)).toBeGreaterThanOrEqual(0);
});
