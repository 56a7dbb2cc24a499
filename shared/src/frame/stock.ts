import type { PropertyClassName } from '../joint/index.ts';
import type { LeafPath } from './fields/index.ts';
import { leafOf } from './paths.ts';
import type { FrameRecord } from './record.ts';

/** Sizes that are sold, and how one step goes from one to the next. */
export const MM = 1e-3;
/** Outside diameters and walls that tube is sold in, 8 to 20 mm; common practice, no source. */
export const STOCK_TUBES: readonly number[] = [8, 10, 12, 14, 16, 18, 20].map((d) => d * MM);
export const STOCK_WALLS: readonly number[] = [0.5, 0.75, 1, 1.25, 1.5, 2].map((t) => t * MM);
export const STANDOFF_SIZES: readonly number[] = [4, 4.5, 5, 5.5, 6, 7].map((d) => d * MM);

const ROUNDING = 1e-9;
export const next = (values: readonly number[], value: number) => values.find((one) => one > value + ROUNDING);
export const before = (values: readonly number[], value: number) =>
  values.filter((one) => one < value - ROUNDING).at(-1);
/** As it is said and ordered. */
export const mm = (value: number) => `${Math.round(value * 1e5) / 100} mm`;
/** Decimal sums without a tail of rounding. */
export const plus = (value: number, by: number) => Math.round((value + by) * 1e7) / 1e7;

export interface StepMarks {
  /** The record has one price for all sizes, alloys or classes of the part, or none: what another one costs is not known. */
  unpriced?: true;
  /** Weighed with the hardware, or with an outline that only a drawing shows: what the step adds is not known. */
  unweighed?: true;
}

/** Neither price nor mass is known. */
export const UNKNOWN: StepMarks = { unpriced: true, unweighed: true };

export interface Change extends StepMarks {
  says: string;
  path: string;
  value: unknown;
  /** What has to change along with it. */
  also?: readonly [path: string, value: unknown];
}

/** Makes steps of a record that lengthen, or shorten, what lies at a path by so many millimetres. */
export const grower =
  (record: FrameRecord) =>
  (path: LeafPath, by: number, words: string): Change => {
    const value = plus(leafOf(record, path) as number, by * MM);
    return { path, value, says: `${words} ${mm(value)}` };
  };

/** Property classes of screws, weakest first. */
const GRADES: readonly PropertyClassName[] = ['A2-70', '8.8', '10.9', '12.9'];

/** Screws of the next property class, where there is one. */
export function gradeChange(path: LeafPath, grade: PropertyClassName, words: string): Change[] {
  const value = GRADES[GRADES.indexOf(grade) + 1];
  return value ? [{ path, value, says: `${words} of class ${value}`, unpriced: true }] : [];
}
