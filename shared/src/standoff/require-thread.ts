import { InputError } from '../error.ts';
import { requirePositive } from '../require.ts';

/** A thread and its screw go by the same size; more than rounding between them is two sizes [m]. */
const SAME_SIZE = 0.2e-3;

/**
 * Refuses a standoff whose thread is not that of its screw.
 * @param bore - major diameter of the standoff's thread [m]
 * @param screwDiameter - nominal diameter of the screw [m]
 * @throws InputError when they are of two sizes
 */
export function requireThread(bore: number, screwDiameter: number): void {
  requirePositive(screwDiameter, { parameter: 'screw', quantity: 'diameter of the screw', kind: 'length' });
  if (Math.abs(bore - screwDiameter) > SAME_SIZE + 1e-9)
    throw new InputError({
      parameter: 'bore',
      quantity: 'thread of the standoff',
      value: bore,
      rule: 'must be that of its screw',
      limit: screwDiameter,
      kind: 'length',
    });
}
