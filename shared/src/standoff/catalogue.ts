import { InputError } from '../error.ts';
import { requireNotNegative, requirePositive } from '../require.ts';

/** Lengths that standoffs are sold in, common practice [m]. */
export const CATALOGUE_LENGTHS = [0.015, 0.018, 0.02, 0.022, 0.025, 0.028, 0.03, 0.032, 0.035] as const;

export interface Stack {
  /** Everything between the two plates, one on the other [m]. */
  height: number;
  /** Air over it when nothing moves [m]. */
  clearance: number;
  /** How far the plates come together, or the mounts let the stack rise, in a hit [m]. */
  movement: number;
}

export interface ClearingLength {
  /** Stack, clearance and movement [m]. */
  needed: number;
  /** Shortest length sold that clears [m]. */
  length: number;
  /** Air left over what was asked for [m]. */
  spare: number;
  /** Next length up; undefined for the longest [m]. */
  next: number | undefined;
}

/** Less than a hair: a stack that needs 20 mm to the last digit fits under 20 mm. */
const ROUNDING = 1e-9;

/**
 * Shortest standoff sold that clears the electronics.
 * $$L \ge h + c + u$$
 * @param stack - height, clearance, movement
 * @returns needed height, catalogue length, spare
 * @validity the lengths of common practice
 * @throws InputError when a number is out of range or no length sold is long enough
 * @derivation heights on one line add
 */
export function shortestThatClears({ height, clearance, movement }: Stack): ClearingLength {
  requirePositive(height, { parameter: 'height', quantity: 'height of the stack', kind: 'length' });
  requireNotNegative(clearance, { parameter: 'clearance', quantity: 'clearance', kind: 'length' });
  requireNotNegative(movement, { parameter: 'movement', quantity: 'movement in a hit', kind: 'length' });
  const needed = height + clearance + movement;
  const index = CATALOGUE_LENGTHS.findIndex((length) => length >= needed - ROUNDING);
  const length = CATALOGUE_LENGTHS[index];
  if (length === undefined) {
    const limit = CATALOGUE_LENGTHS.at(-1)!;
    throw new InputError({
      parameter: 'height',
      quantity: 'height between the plates',
      value: needed,
      rule: 'is more than the longest standoff sold',
      limit,
      kind: 'length',
    });
  }
  return { needed, length, spare: Math.max(0, length - needed), next: CATALOGUE_LENGTHS[index + 1] };
}
