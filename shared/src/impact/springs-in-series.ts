import { InputError } from '../error.ts';
import { requirePositive } from '../require.ts';

/**
 * Springs one behind the other: the softest decides.
 * $$\frac1k = \sum \frac{1}{k_i}$$
 * @param stiffnesses - of each spring [N/m]
 * @returns stiffness of the row [N/m]
 * @validity all springs carry the same force
 * @throws InputError when there is none or one is not positive
 * @derivation the same force through all, deflections add
 */
export function springsInSeries(stiffnesses: readonly number[]): number {
  if (!Array.isArray(stiffnesses) || stiffnesses.length === 0) {
    throw new InputError({
      parameter: 'stiffnesses',
      quantity: 'springs',
      value: stiffnesses,
      rule: 'must be at least one',
    });
  }
  const compliance = stiffnesses.reduce((sum: number, stiffness: number) => {
    requirePositive(stiffness, { parameter: 'stiffness', quantity: 'stiffness', kind: 'stiffness' });
    return sum + 1 / stiffness;
  }, 0);
  return 1 / compliance;
}
