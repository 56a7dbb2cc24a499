import type { ColumnForces } from '../standoff/index.ts';
import { currentArrangement } from './arrangement.ts';
import type { FrameBalance } from './balance.ts';
import { noseOf } from './checks/nose.ts';
import type { FrameRecord } from './record.ts';

/** One standoff in the nose-first hit. */
export interface StandoffForces extends Pick<ColumnForces, 'shear' | 'axial' | 'footMoment' | 'headMoment'> {
  /** Forward and to the left [m]. */
  x: number;
  y: number;
}

/**
 * What each standoff of a frame carries at the peak of its nose-first hit, wherever they stand.
 * @param record - a valid record
 * @param balance - its mass and plan
 * @returns shear and pull [N] and end moments [N·m], in the order of the arrangement in use
 * @validity as noseHit
 * @throws InputError where the standoffs leave the top plate free to move
 * @derivation noseHit, filled from the record
 */
export function standoffForces(
  record: FrameRecord,
  balance: Pick<FrameBalance, 'properties' | 'plan'>,
): StandoffForces[] {
  const { columns } = noseOf(record, balance).hit.plate;
  return currentArrangement(record).standoffs.map(({ x, y }, i) => ({ ...columns[i]!, x, y }));
}
