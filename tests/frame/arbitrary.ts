import { InputError } from '@frameworthy/shared';
import {
  evaluateFrame,
  type FrameEvaluation,
  FIELDS,
  LEAF_PATHS,
  leafOf,
  withValue,
  type FrameRecord,
  type LeafPath,
  type Spread,
} from '@frameworthy/shared/frame';
import fc from 'fast-check';
import { SAMPLES } from '~/frame/samples.ts';

const clamped = (value: number, min: number, max: number): number => Math.min(Math.max(value, min), max);

/** A value of a field near the one that a sample has, within the field's range. */
function near(path: LeafPath, from: number | string | Spread): fc.Arbitrary<number | string | Spread> {
  const field = FIELDS[path];
  if ('choices' in field) return fc.constantFrom(...Object.keys(field.choices));
  const { min, max, kind, step } = field;
  const times = fc.double({ min: 0.75, max: 1.35, noNaN: true });
  if (typeof from === 'object') {
    return times.map((by) => {
      const at = (value: number) => clamped(value * by, min, max);
      return { low: at(from.low), typical: at(from.typical), high: at(from.high) };
    });
  }
  const value = from as number;
  if (kind === 'count') return fc.integer({ min: -2, max: 2 }).map((by) => clamped(value + by * step, min, max));
  // Where a sample has nothing, some steps of it.
  const moved =
    value === 0 ? fc.double({ min: -3, max: 3, noNaN: true }).map((by) => by * step) : times.map((by) => value * by);
  return moved.map((one) => clamped(one, min, max));
}

const changedBy = (record: FrameRecord, changes: readonly (readonly [LeafPath, unknown])[]): FrameRecord =>
  changes.reduce((held, [path, value]) => withValue(held, path, value), record);

/** A sample with some of its fields otherwise, still the size of a frame. Not each of them can be built. */
export const nearRecord: fc.Arbitrary<FrameRecord> = fc
  .tuple(fc.constantFrom(...SAMPLES), fc.uniqueArray(fc.constantFrom(...LEAF_PATHS), { minLength: 1, maxLength: 12 }))
  .chain(([record, paths]) =>
    fc
      .tuple(...paths.map((path) => near(path, leafOf(record, path)).map((value) => [path, value] as const)))
      .map((changes) => changedBy(record, changes)),
  );

const anywhere = (path: LeafPath): fc.Arbitrary<unknown> => {
  const field = FIELDS[path];
  if ('choices' in field) return fc.constantFrom(...Object.keys(field.choices));
  const { min, max, kind } = field;
  if (kind === 'count') return fc.integer({ min, max });
  const one = fc.oneof(fc.constantFrom(min, max), fc.double({ min, max, noNaN: true }));
  if (!('spread' in field)) return one;
  return fc.tuple(one, one, one).map((three) => {
    const [low, typical, high] = three.sort((a, b) => a - b);
    return { low, typical, high };
  });
};

/** A sample with some of its fields anywhere in the range that the door lets in. */
export const wildRecord: fc.Arbitrary<FrameRecord> = fc
  .tuple(fc.constantFrom(...SAMPLES), fc.uniqueArray(fc.constantFrom(...LEAF_PATHS), { minLength: 1, maxLength: 20 }))
  .chain(([record, paths]) =>
    fc
      .tuple(...paths.map((path) => anywhere(path).map((value) => [path, value] as const)))
      .map((changes) => changedBy(record, changes)),
  );

/** Freezes a record and all in it, so that a write to it throws. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

export const within = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** The evaluation, or nothing where the record cannot be. Any other error fails the test. */
export function evaluated(record: FrameRecord): FrameEvaluation | undefined {
  try {
    return evaluateFrame(record);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** Of a frame that takes some 20 ms to evaluate, on a busy machine. */
export const RUNS = { numRuns: Number(process.env['FRAME_RUNS'] ?? 40) };
