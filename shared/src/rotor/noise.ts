import { requireBetween } from '../require.ts';

/**
 * Rise in sound level when one source becomes several equal ones that do not keep step.
 * $$\Delta L = 10\,\log_{10} n$$
 * @param sources - number of equal sources n [-]
 * @returns rise in level [dB]
 * @validity incoherent sources, long averaging, the same distance; what rotors do to each other's air is not in it
 * @throws InputError when the number is out of range
 * @source polyu-2021-dual, two equal rotors at long averaging
 */
export function incoherentLevelRise(sources: number): number {
  requireBetween(sources, 1, 1000, { parameter: 'sources', quantity: 'number of sources', kind: 'count' });
  return 10 * Math.log10(sources);
}
