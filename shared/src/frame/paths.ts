import { FIELDS, type LeafPath } from './fields/index.ts';
import type { FrameRecord, Spread } from './record.ts';

export type LeafValue = number | string | Spread;

const parts = (path: string): string[] => path.split('.');

/**
 * The value at a dotted path. Own properties alone are looked at.
 * @param record - any value
 * @param path - dotted path
 * @returns the value, or nothing where there is none
 * @derivation look-up
 */
export function valueAt(record: unknown, path: string): unknown {
  return parts(path).reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null && Object.hasOwn(at, key)
        ? (at as Record<string, unknown>)[key]
        : undefined,
    record,
  );
}

/** The value of a single field of a valid record. */
export const leafOf = (record: FrameRecord, path: LeafPath): LeafValue => valueAt(record, path) as LeafValue;

/**
 * A copy of a record with another value at a path.
 * @param record - a record that has all objects on the way
 * @param path - dotted path
 * @param value - what stands there afterwards
 * @returns the copy; what does not lie on the way is shared with the record
 * @derivation replacement
 */
export function withValue<T>(record: T, path: string, value: unknown): T {
  const [key, ...rest] = parts(path) as [string, ...string[]];
  const held = record as Record<string, unknown>;
  return { ...held, [key]: rest.length === 0 ? value : withValue(held[key], rest.join('.'), value) } as T;
}

export const LEAF_PATHS = Object.keys(FIELDS) as readonly LeafPath[];
