import { DERIVED, withTypical } from './derived/index.ts';
import { FIELDS, type Field, type LeafPath } from './fields/index.ts';
import { leafOf, withValue } from './paths.ts';
import type { FrameRecord } from './record.ts';

/** Parts of the record that say nothing about a frame with the other kind of arm. */
const OF_TUBES = /^(arm\.(tube|sleeve)|mount|materials\.tube)\./;
const OF_STRIPS = /^arm\.strip\./;

const isField = (path: string): path is LeafPath => Object.hasOwn(FIELDS, path);

/** Whether a path names something that a record has or from which it follows. */
export const isFrameField = (path: string): boolean => isField(path) || Object.hasOwn(DERIVED, path);

/** Whether a path is of the kind of arm that a record does not have. */
export const isOfOtherArm = (record: FrameRecord, path: string): boolean =>
  (record.arm.kind === 'tube' ? OF_STRIPS : OF_TUBES).test(path);

/**
 * The value that a calculator's field takes from a record.
 * @param record - a valid record
 * @param path - dotted path of a field or of a value that follows from the record
 * @returns SI number or key of a choice; nothing where the frame has no such thing
 * @validity materials give their typical value
 * @throws InputError where the record cannot be worked out
 * @derivation look-up
 */
export function frameValue(record: FrameRecord, path: string): number | string | undefined {
  if (isOfOtherArm(record, path)) return undefined;
  if (Object.hasOwn(DERIVED, path)) return DERIVED[path]!.get(record);
  if (!isField(path)) return undefined;
  const value = leafOf(record, path);
  return typeof value === 'object' ? value.typical : value;
}

/** Whether a calculator can write this value back. */
export const isWritable = (path: string): boolean =>
  Object.hasOwn(DERIVED, path) ? DERIVED[path]!.set !== undefined : isField(path);

/**
 * The record in which a value is as a calculator has it.
 * @param record - a valid record
 * @param path - dotted path
 * @param value - SI number or key of a choice
 * @returns the changed record; the same where the value cannot be written
 * @validity the value lies within the range of its field: the door checks that again
 * @throws InputError where the record cannot be worked out
 * @derivation replacement; a value that follows from others is reached by the one that a maker would change
 */
export function withFrameValue(record: FrameRecord, path: string, value: number | string): FrameRecord {
  if (Object.hasOwn(DERIVED, path)) return DERIVED[path]!.set?.(record, Number(value)) ?? record;
  if (!isField(path)) return record;
  const field: Field = FIELDS[path];
  if ('spread' in field) return withTypical(record, path, Number(value));
  return withValue(record, path, value);
}
