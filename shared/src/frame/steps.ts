import { currentArrangement } from './arrangement.ts';
import { FIELDS, type LeafPath } from './fields/index.ts';
import { withValue } from './paths.ts';
import type { FrameRecord } from './record.ts';
import { armChanges } from './steps-arm.ts';
import { bodyChanges } from './steps-body.ts';
import type { Change, StepMarks } from './stock.ts';

/** One sensible change of one dimension. */
export interface DesignStep extends StepMarks {
  /** What is done: `tube 16 mm outside`. Lengths in millimetres, as a maker orders them. */
  says: string;
  /** Of the field that the step is about, and of no other step; a hole may change with its thread, a price with its tube. */
  path: string;
  record: FrameRecord;
}

/** A further pair of standoffs, midway between the foremost and the rearmost. */
function morePairs(record: FrameRecord): DesignStep[] {
  const { name, standoffs } = currentArrangement(record);
  const xs = standoffs.map(({ x }) => x);
  const middle = (Math.max(...xs) + Math.min(...xs)) / 2;
  const across = Math.max(...standoffs.map(({ y }) => Math.abs(y)));
  if (xs.some((x) => Math.abs(x - middle) < record.body.standoff.outerDiameter)) return [];
  const added = [...standoffs, { x: middle, y: across }, { x: middle, y: -across }];
  const arrangements = record.electronics.arrangements.map((one) =>
    one.name === name ? { ...one, standoffs: added } : one,
  );
  return [
    {
      says: 'a further pair of standoffs in the middle, its screws not counted',
      path: 'electronics.arrangements',
      record: withValue(record, 'electronics.arrangements', arrangements),
    },
  ];
}

/** No step leaves what the field takes. */
function isWithin([path, value]: readonly [path: string, value: unknown]): boolean {
  const field = FIELDS[path as LeafPath];
  return typeof value !== 'number' || !('min' in field) || (value >= field.min && value <= field.max);
}

/** A step of single values, where each stays within its field's range. */
function stepOf(record: FrameRecord, { value, also, ...rest }: Change): DesignStep[] {
  const values = [[rest.path, value] as const, ...(also ? [also] : [])];
  return values.every(isWithin)
    ? [{ ...rest, record: values.reduce((held, [path, one]) => withValue(held, path, one), record) }]
    : [];
}

/**
 * For each dimension of a frame one step that a maker would take next.
 * @param record - a valid record
 * @returns the changed records, each value within the range of its field; nothing says that each of them can be built
 * @validity stock sizes and steps are common practice, no source. Another tube takes its price per metre along, in
 * proportion to its mass; the share left after cutouts has no step: what to cut is a drawing's matter
 * @derivation next size of a list, or a fixed step
 */
export function designSteps(record: FrameRecord): DesignStep[] {
  const changes = [...armChanges(record), ...bodyChanges(record)];
  return [...changes.flatMap((change) => stepOf(record, change)), ...morePairs(record)];
}
