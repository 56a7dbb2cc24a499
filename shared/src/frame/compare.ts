import type { CaseName, Check } from './check.ts';
import type { FrameEvaluation } from './evaluate.ts';
import { FIELDS, type Field, type LeafPath } from './fields/index.ts';
import { firstToGive } from './gains.ts';
import { LEAF_PATHS, leafOf, type LeafValue } from './paths.ts';
import type { FrameRecord } from './record.ts';

/** A single value that differs between two records. */
export interface ChangedField {
  path: LeafPath;
  field: Field;
  before: LeafValue;
  after: LeafValue;
}

/** Rounding of units is no change. */
const SAME = 1e-9;

function same(a: LeafValue, b: LeafValue): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
  if (typeof a === 'object' && typeof b === 'object')
    return same(a.low, b.low) && same(a.typical, b.typical) && same(a.high, b.high);
  return a === b;
}

const TUBE_ALONE = /^(arm\.(tube|sleeve)|mount|materials\.(tube|tow))\./;
const STRIP_ALONE = /^arm\.strip\./;
const concerns = ({ arm }: FrameRecord, path: string): boolean =>
  !(arm.kind === 'tube' ? STRIP_ALONE : TUBE_ALONE).test(path);

/**
 * What differs between two records, field by field.
 * @param before - a valid record
 * @param after - another
 * @returns changed single values in the order of the record; those of a kind of arm that neither has are left out
 * @validity lists and texts are not compared here: see changedLists
 * @derivation comparison of each field
 */
export function changedFields(before: FrameRecord, after: FrameRecord): ChangedField[] {
  return LEAF_PATHS.filter((path) => concerns(before, path) || concerns(after, path)).flatMap((path) => {
    const [old, now] = [leafOf(before, path), leafOf(after, path)];
    return same(old, now) ? [] : [{ path, field: FIELDS[path], before: old, after: now }];
  });
}

/** The first thing to give in one case, before and after. */
export interface ChangedCase {
  case: CaseName;
  before: Check;
  after: Check;
}

/**
 * The first to give in each case, before and after.
 * @param before - evaluation of a frame
 * @param after - of another
 * @returns cases that load both, in the order of `CASES`
 * @validity as evaluateFrame
 * @derivation firstToGive of each
 */
export function changedCases(before: FrameEvaluation, after: FrameEvaluation): ChangedCase[] {
  const now = new Map(firstToGive(after).map((check) => [check.case, check]));
  return firstToGive(before).flatMap((old) => {
    const other = now.get(old.case);
    return other ? [{ case: old.case, before: old, after: other }] : [];
  });
}
