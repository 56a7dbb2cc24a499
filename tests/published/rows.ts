import type { PublishedCase } from './row.ts';

type Shared = Omit<PublishedCase, 'id' | 'what' | 'expected' | 'compute' | 'topic'>;
type Row = readonly [id: string, what: string, expected: number, compute: () => number, own?: Partial<Shared>];

/** Rows of one topic that share their source; the last part of a row overrides what is shared. */
export const rowsFor =
  (topic: string) =>
  (shared: Shared, list: readonly Row[]): PublishedCase[] =>
    list.map(([id, what, expected, compute, own]) => ({ topic, ...shared, ...own, id, what, expected, compute }));
