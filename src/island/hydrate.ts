import { h, hydrate } from 'preact';
import Calculator from './Calculator.tsx';
import { completed } from './completed.ts';
import type { AnyCalculator } from './declaration.ts';
import { slotTexts, updateSlots } from './slots.ts';
import type { ValueSet } from './values.ts';

function overridesOf(section: Element): ValueSet {
  return JSON.parse(section.getAttribute('data-props') ?? '{}') as ValueSet;
}

/** Brings the calculators of this page to life where the server rendered them. */
export function hydrateAll(calculators: readonly AnyCalculator[]): void {
  const here = calculators.flatMap((calculator) => {
    const section = document.querySelector(`[data-calculator="${calculator.id}"]`);
    const root = section?.querySelector('[data-island]');
    return section && root ? [{ calculator: completed(calculator), section, root }] : [];
  });
  const ids = here.map(({ calculator }) => calculator.id);
  document.documentElement.classList.add('scripted');
  here.forEach(({ calculator, section, root }, i) => {
    const props = {
      calculator,
      overrides: overridesOf(section),
      others: i === 0 ? ids : undefined,
      onShown: ({
        values,
        result,
        show,
        stale,
      }: {
        values: ValueSet;
        result: unknown;
        show: Parameters<typeof slotTexts>[3];
        stale: boolean;
      }) => {
        section.classList.toggle('stale-steps', stale);
        updateSlots(section.querySelector('.steps') ?? section, slotTexts(calculator, values, result, show));
      },
    };
    hydrate(h(Calculator, props), root);
  });
}
