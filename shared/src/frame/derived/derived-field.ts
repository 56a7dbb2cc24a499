import { leafOf, withValue } from '../paths.ts';
import type { LeafPath } from '../fields/index.ts';
import type { FrameRecord, Spread } from '../record.ts';

/** A value that calculators ask for and the record does not hold as such. */
export interface DerivedField {
  get: (record: FrameRecord) => number | string | undefined;
  /** The record in which it is so; absent where it follows from too much else. */
  set?: (record: FrameRecord, value: number) => FrameRecord;
}

export type DerivedFields = Readonly<Record<string, DerivedField>>;

/** What a calculator is told of the way in which the frame sheet counts. */
export const always = (choice: string): DerivedField => ({ get: () => choice });

/** Low and high follow the typical value where it leaves them behind. */
export const withTypical = (record: FrameRecord, path: LeafPath, typical: number): FrameRecord => {
  const held = leafOf(record, path) as Spread;
  const { low, high } = held;
  return withValue(record, path, { ...held, low: Math.min(low, typical), typical, high: Math.max(high, typical) });
};

export const isTube = ({ arm }: FrameRecord): boolean => arm.kind === 'tube';
