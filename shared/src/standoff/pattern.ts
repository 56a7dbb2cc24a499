import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';

/** Where the standoffs stand: a pair at each end, and where the further pairs go. */
export const PATTERNS = {
  four: [],
  'six-middle': [{ along: 0, across: 1 }],
  'six-front': [{ along: 0.5, across: 1 }],
  'six-wide': [{ along: 0, across: 1.5 }],
  eight: [
    { along: 1 / 3, across: 1 },
    { along: -1 / 3, across: 1 },
  ],
} as const satisfies Record<string, readonly { along: number; across: number }[]>;

export type PatternName = keyof typeof PATTERNS;

export interface Pattern {
  pattern: PatternName;
  /** Between the front pair and the rear pair [m]. */
  foreAft: number;
  /** Between the two of a pair [m]. */
  across: number;
}

/**
 * Plan positions of a usual layout, x forward and y to the left, centre at nothing.
 * $$x = \pm\tfrac{a}{2},\quad y = \pm\tfrac{b}{2}$$
 * @param pattern - name and the two spacings
 * @returns positions, front pair first
 * @validity symmetric bodies
 * @throws InputError when the name is unknown or a spacing out of range
 * @derivation corners of a rectangle; further pairs at the stated shares of its half sides
 */
export function patternPositions({ pattern, foreAft, across }: Pattern): readonly { x: number; y: number }[] {
  if (!Object.hasOwn(PATTERNS, pattern)) {
    throw new InputError({
      parameter: 'pattern',
      quantity: 'layout of the standoffs',
      value: pattern,
      rule: 'must be one of those listed',
    });
  }
  requireBetween(foreAft, 1e-4, 100, { parameter: 'foreAft', quantity: 'spacing fore and aft', kind: 'length' });
  requireBetween(across, 1e-4, 100, { parameter: 'across', quantity: 'spacing across', kind: 'length' });
  const pairs = [{ along: 1, across: 1 }, { along: -1, across: 1 }, ...PATTERNS[pattern]];
  return pairs.flatMap((pair) => [
    { x: (pair.along * foreAft) / 2, y: (pair.across * across) / 2 },
    { x: (pair.along * foreAft) / 2, y: (-pair.across * across) / 2 },
  ]);
}
