import { FIELDS, type LeafPath } from './fields/index.ts';
import type { FrameRecord, Spread } from './record.ts';

export type LeafValue = number | string | Spread;

const parts = (path: string): string[] => path.split('.');

/** The value at a path, or undefined where the record has none. Own properties alone are looked at. */
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

/** A copy of the record with another value at a path; all that does not lie on the way is shared. */
export function withValue<T>(record: T, path: string, value: unknown): T {
  const [key, ...rest] = parts(path) as [string, ...string[]];
  const held = record as Record<string, unknown>;
  return { ...held, [key]: rest.length === 0 ? value : withValue(held[key], rest.join('.'), value) } as T;
}

export const LEAF_PATHS = Object.keys(FIELDS) as readonly LeafPath[];
