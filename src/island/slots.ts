import type { AnyCalculator, Show, Slot } from './declaration.ts';
import type { ValueSet } from './values.ts';

/** Text by `stepId.slotName`. */
export function slotTexts(
  calculator: AnyCalculator,
  values: ValueSet,
  result: unknown,
  show: Show,
): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const step of calculator.steps) {
    const slots = step.slots(values, result) as Record<string, Slot>;
    for (const [name, { value, quantity, digits }] of Object.entries(slots))
      texts[`${step.id}.${name}`] = show(value, quantity, digits);
  }
  return texts;
}

/** Puts values into the typeset steps: into the copy that is seen and into the one that is read out. */
export function updateSlots(root: ParentNode, texts: Readonly<Record<string, string>>): void {
  for (const node of root.querySelectorAll('[data-slot]')) {
    const text = texts[node.getAttribute('data-slot') ?? ''];
    if (text !== undefined && node.textContent !== text) node.textContent = text;
  }
}
