import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';

/**
 * Refuses a nut or insert that leaves no room for the screw in it.
 * @throws InputError when `value` is no length, or no wider than the screw.
 */
export function requireAround(
  value: number,
  screwDiameter: number,
  subject: { parameter: string; quantity: string },
): void {
  const length = { ...subject, kind: 'length' } as const;
  requireBetween(value, 1e-4, 1, length);
  if (value <= screwDiameter) {
    throw new InputError({ ...length, value, rule: 'must be wider than the screw', limit: screwDiameter });
  }
}
