import {
  FIELDS,
  frameValue,
  isFrameField,
  isWritable,
  type FrameRecord,
  type LeafPath,
} from '@frameworthy/shared/frame';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { SAMPLES } from '../../src/frame/samples.ts';
import type { Input } from '../../src/island/declaration.ts';
import { isQuantity } from '../../src/island/values.ts';

const linked = Object.entries(calculators).flatMap(([id, calculator]) =>
  Object.entries(calculator.inputs as Record<string, Input>).flatMap(([key, input]) =>
    input.frameField === undefined ? [] : [[`${id}.${key}`, input, input.frameField] as const],
  ),
);

const isField = (path: string): path is LeafPath => Object.hasOwn(FIELDS, path);

describe('inputs that the reader’s frame fills', () => {
  test('there are many', () => {
    expect(linked.length).toBeGreaterThan(250);
  });

  test.each(linked)('%s', (name, input, path) => {
    expect(isFrameField(path), `no frame has "${path}"`).toBe(true);
    if (isField(path)) {
      const field = FIELDS[path];
      if ('choices' in field) {
        expect(isQuantity(input), name).toBe(false);
        const own = Object.keys((input as { choices: object }).choices);
        expect(Object.keys(field.choices).filter((key) => !own.includes(key))).toEqual([]);
      } else {
        expect(isQuantity(input) && input.quantity).toBe(field.kind);
      }
    }
    // What follows from a record has no kind of its own: the samples tell whether number and choice go together.
    let found = 0;
    for (const record of SAMPLES) {
      const value = frameValue(record, path);
      if (value === undefined) continue;
      found++;
      if (isQuantity(input)) expect(Number.isFinite(value), `${path}: ${value}`).toBe(true);
      else expect(Object.keys(input.choices), path).toContain(value);
    }
    // An antenna in a second arrangement, a middle pair, pairs beyond the second and single standoffs beyond those are in no sample.
    if (!/other\.antenna\.[xyz]|standoffs\.middle|(along|across)[345]$|standoff\.[xy]([5-9]|10)$/.test(path))
      expect(found, path).toBeGreaterThan(0);
  });

  test('no two inputs of one calculator write to the same place', () => {
    for (const [id, calculator] of Object.entries(calculators)) {
      const paths = Object.values(calculator.inputs as Record<string, Input>)
        .map(({ frameField }) => frameField)
        .filter((path) => path !== undefined && isWritable(path));
      expect(
        paths.filter((path, i) => paths.indexOf(path) !== i),
        id,
      ).toEqual([]);
    }
  });

  test('four standoffs in a rectangle about the middle give their distances to drawings that have no others', () => {
    const distances = (record: FrameRecord) =>
      ['foreAft', 'across'].map((name) => frameValue(record, `body.standoff.rectangle.${name}`));
    const standing = (standoffs: readonly (readonly [x: number, y: number])[]): FrameRecord => ({
      ...SAMPLES[0]!,
      electronics: {
        ...SAMPLES[0]!.electronics,
        arrangements: SAMPLES[0]!.electronics.arrangements.map((one) => ({
          ...one,
          standoffs: standoffs.map(([x, y]) => ({ x, y })),
        })),
      },
    });
    const pair = (x: number, y: number) => [[x, y] as const, [x, -y] as const];
    expect(distances(standing([...pair(0.036, 0.0165), ...pair(-0.036, 0.0165)]))).toEqual([0.072, 0.033]);
    for (const otherwise of [
      [...pair(0.036, 0.0165), ...pair(-0.056, 0.011)],
      [...pair(0.046, 0.0165), ...pair(-0.036, 0.0165)],
      [...pair(0.036, 0.0165), [-0.036, 0] as const],
      [...pair(0.036, 0.0165), ...pair(-0.036, 0.0165), [-0.05, 0] as const],
      [...pair(0.036, 0.0165), ...pair(0, 0.0165), ...pair(-0.036, 0.0165)],
    ])
      expect(distances(standing(otherwise)), JSON.stringify(otherwise)).toEqual([undefined, undefined]);
    // The second arrangement of the Dunnock, whose rear pair stands closer.
    const [first, second] = SAMPLES[0]!.electronics.arrangements;
    const other = { ...SAMPLES[0]!, electronics: { ...SAMPLES[0]!.electronics, current: second!.name } };
    expect(SAMPLES[0]!.electronics.current).toBe(first!.name);
    expect(distances(SAMPLES[0]!)).toEqual([0.072, 0.033]);
    expect(distances(other)).toEqual([undefined, undefined]);
  });

  test('the samples lie within what each calculator takes', () => {
    const outside = linked.flatMap(([name, input, path]) =>
      SAMPLES.flatMap((record) => {
        const value = frameValue(record, path);
        if (!isQuantity(input) || typeof value !== 'number') return [];
        const fits = value >= input.min - 1e-12 && value <= input.max + 1e-12;
        return fits ? [] : [`${name}: ${value} of ${record.name} ${record.revision}`];
      }),
    );
    // A frame without a sleeve has none to work out.
    expect(outside.filter((text) => !/sleeveWall: 0 /.test(text))).toEqual([]);
  });
});
