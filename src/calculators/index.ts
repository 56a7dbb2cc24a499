/**
 * Every calculator, one folder each. The folder name is the calculator's id.
 * Built from the folders, so a new calculator is a new folder and nothing else.
 */
import type { AnyCalculator } from '~/island/declaration.ts';

const modules = import.meta.glob<{ default: AnyCalculator }>('./*/index.ts', { eager: true });

export const calculators: Readonly<Record<string, AnyCalculator>> = Object.fromEntries(
  Object.values(modules).map(({ default: calculator }) => [calculator.id, calculator]),
);

/** The calculator with this id. @throws Error that names the ids there are, so that a typo in an article stops the build. */
export function calculator(id: string): AnyCalculator {
  const found = calculators[id];
  if (!found) throw new Error(`No calculator "${id}"; there are: ${Object.keys(calculators).join(', ')}`);
  return found;
}
