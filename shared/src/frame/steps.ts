import { currentArrangement } from './arrangement.ts';
import { withValue } from './paths.ts';
import type { FrameRecord } from './record.ts';
import { armChanges } from './steps-arm.ts';
import { bodyChanges } from './steps-body.ts';

/** One sensible change of one dimension. */
export interface DesignStep {
  id: string;
  /** What is done: `tube 16 mm outside`. Lengths in millimetres, as a maker orders them. */
  says: string;
  /** Of the field that changes first. */
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
      id: 'standoff-pair',
      says: 'a further pair of standoffs in the middle',
      path: 'electronics.arrangements',
      record: withValue(record, 'electronics.arrangements', arrangements),
    },
  ];
}

/**
 * For each dimension of a frame one step that a maker would take next.
 * @param record - a valid record
 * @returns the changed records; nothing says that each of them can be built
 * @validity stock sizes and steps are common practice, no source
 * @derivation next size of a list, or a fixed step
 */
export function designSteps(record: FrameRecord): DesignStep[] {
  const changes = [...armChanges(record), ...bodyChanges(record)];
  return [
    ...changes.map(({ id, says, path, value }) => ({ id, says, path, record: withValue(record, path, value) })),
    ...morePairs(record),
  ];
}
