import { InputError } from '@frameworthy/shared';
import {
  currentArrangement,
  evaluateFrame,
  frameFit,
  withFrameValue,
  type FrameRecord,
} from '@frameworthy/shared/frame';
import type { Arrangement } from '@frameworthy/shared/fit';
import { expect, test } from 'vitest';
import { explainRecord, STANDOFFS } from '~/frame/explain.ts';
import { FIRST_SAMPLE } from '~/frame/samples.ts';
import { explainedAt, MODE_WORDS, tipWords } from '~/frame/words.ts';
import { showIn } from '~/island/show.ts';
import { readValue } from '~/frame/read.ts';

const show = showIn({ system: 'metric' });
const withArrangement = (change: (one: Arrangement) => Arrangement): FrameRecord => ({
  ...FIRST_SAMPLE,
  electronics: {
    ...FIRST_SAMPLE.electronics,
    arrangements: FIRST_SAMPLE.electronics.arrangements.map((one, i) => (i === 0 ? change(one) : one)),
  },
});
const told = (record: FrameRecord) => {
  try {
    evaluateFrame(record);
    frameFit(record);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return explainRecord(error, show);
  }
  return undefined;
};

test.each([
  ['three across', [-16, 0, 16].map((y) => ({ x: 0.036, y: y / 1e3 }))],
  ['four along', [36, 10, -10, -36].map((x) => ({ x: x / 1e3, y: 0.005 }))],
  ['three aslant', [0, 1, 2].map((i) => ({ x: 0.01 * i, y: 0.007 * i }))],
])('standoffs on one line, %s, are refused beside the standoffs', (_, standoffs) => {
  const found = told(withArrangement((one) => ({ ...one, standoffs })));
  expect(found?.path).toBe(STANDOFFS);
  expect(found?.text).toContain('on one line');
});

test('a screw of another size than the thread is refused at the thread', () => {
  for (const bore of [0.002, 0.0025, 0.004]) {
    const { standoff } = FIRST_SAMPLE.body;
    const record = {
      ...FIRST_SAMPLE,
      body: { ...FIRST_SAMPLE.body, standoff: { ...standoff, bore, outerDiameter: 0.006 } },
    };
    expect(told(record)?.path).toBe('body.standoff.bore');
  }
});

test('two parts of one name are refused at the second, also in an arrangement that is not in use', () => {
  const twice = withArrangement((one) => ({
    ...one,
    items: one.items.map((item, i) => (i === 2 ? { ...item, name: one.items[0]!.name } : item)),
  }));
  expect(told(twice)?.path).toBe('electronics.arrangements.0.items.2.name');
  const aside = { ...twice, electronics: { ...twice.electronics, current: twice.electronics.arrangements[1]!.name } };
  const found = told(aside);
  expect(found?.path).toBe('electronics.arrangements.0.items.2.name');
  expect(found?.text).toContain(twice.electronics.arrangements[0]!.name);
});

test('propellers that overlap are told, with how much', () => {
  expect(tipWords(0.001, show)).toEqual([]);
  expect(tipWords(-0.012, show).map(({ level, text }) => [level, text.replace(/\s/g, ' ')])).toEqual([
    ['bad', 'Neighbouring propellers overlap by 12 mm: in one plane they strike each other.'],
  ]);
});

test('what breaks in a plate arm is not sent to a calculator of tubes', () => {
  const ofTubes = ['two-screw-root', 'clamp-torque', 'doubler-length', 'mount-bond', 'tow-wrap'];
  const flat = readValue({ ...FIRST_SAMPLE, arm: { ...FIRST_SAMPLE.arm, kind: 'strip' } });
  if (!flat.ok) throw new Error(flat.problems.join());
  for (const { mode } of evaluateFrame(flat.record).checks)
    expect(ofTubes, mode).not.toContain(explainedAt(mode, 'strip').calculator);
  expect(explainedAt('outer-hole', 'tube')).toBe(MODE_WORDS['outer-hole']);
});

test('fields that nobody knows stay through what calculators write back', () => {
  const marked = withArrangement((one) => ({
    ...one,
    standoffs: one.standoffs.map((at, i) => ({ ...at, note: `post ${i}` })),
  }));
  for (const path of ['body.standoff.along1', 'body.standoff.y2', 'body.standoff.foreAft', 'body.standoff.across']) {
    const written = withFrameValue(marked, path, path.includes('y2') ? -0.015 : 0.0201);
    expect(currentArrangement(written).standoffs).toMatchObject([0, 1, 2, 3].map((i) => ({ note: `post ${i}` })));
  }
  const { tube } = FIRST_SAMPLE.materials;
  const measured = {
    ...FIRST_SAMPLE,
    materials: { ...FIRST_SAMPLE.materials, tube: { ...tube, density: { ...tube.density, source: 'weighed' } } },
  };
  expect(withFrameValue(measured, 'arm.density', 1580).materials.tube.density).toMatchObject({ source: 'weighed' });
});
