import { FIELDS, frameValue, isFrameField, isWritable, type LeafPath } from '@frameworthy/shared/frame';
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
