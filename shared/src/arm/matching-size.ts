import { ridders } from '../bisect.ts';
import { InputError } from '../error.ts';
import { requireBelow, requireFinite, requirePositive } from '../require.ts';

export interface MatchSearch {
  /** What is to be matched, by size: must rise with it. */
  of: (size: number) => number;
  /** The value to reach, in the unit of `of`. */
  target: number;
  /** Sizes between which to search [m]. */
  from: number;
  to: number;
}

/** A size, or on which side of the range the value to reach lies. */
export type Match = { size: number } | { outOfReach: 'below the smallest' | 'above the largest' };

/**
 * The size at which something reaches a given value: the strip width that is as stiff as a tube, the wall that is as
 * heavy as a strip.
 * $$f(s) = f^*,\quad s \in [s_0, s_1]$$
 * @param search - what rises with size, the value to reach, range of sizes [m]
 * @returns the size [m], or on which side of the range it would lie
 * @validity `of` rises all the way; where it does not, one of the sizes that match is found
 * @throws InputError when the range is empty or a number is out of range
 * @derivation Ridders' rule, a bisection that takes shorter ways, to a part in 10¹²
 */
export function matchingSize({ of, target, from, to }: MatchSearch): Match {
  requireFinite(target, { parameter: 'target', quantity: 'value to match' });
  requirePositive(to, { parameter: 'to', quantity: 'largest size', kind: 'length' });
  requirePositive(from, { parameter: 'from', quantity: 'smallest size', kind: 'length' });
  requireBelow(from, to, 'must be smaller than the largest', {
    parameter: 'from',
    quantity: 'smallest size',
    kind: 'length',
  });
  const over = (size: number): number => {
    const value = of(size);
    if (Number.isFinite(value)) return value - target;
    throw new InputError({ parameter: 'of', quantity: 'what is to be matched', value, rule: 'must be a number' });
  };
  if (over(from) > 0) return { outOfReach: 'below the smallest' };
  if (over(to) < 0) return { outOfReach: 'above the largest' };
  return { size: ridders(over, from, to) };
}
