import { InputError } from '@frameworthy/shared';
import type { AnyCalculator, Show } from './declaration.ts';
import { inputsOf, isQuantity, type ValueSet } from './values.ts';

/** A result that can be shown, or why there is none. */
export type Evaluation = { ok: true; values: ValueSet; result: unknown } | { ok: false; error: unknown };

export function evaluate(calculator: AnyCalculator, values: ValueSet): Evaluation {
  try {
    return { ok: true, values, result: calculator.compute(values) };
  } catch (error) {
    return { ok: false, error };
  }
}

/** Where an error belongs, in the reader's words and units. Without a field it concerns the values together. */
export function explain(calculator: AnyCalculator, error: unknown, show: Show): { field?: string; text: string } {
  if (!(error instanceof InputError))
    return { text: 'These values together cannot be computed. Change one of them back.' };
  const { parameter, quantity, value, rule, limit } = error;
  const inputs = inputsOf(calculator);
  const [field, input] =
    inputs.find(([key]) => key === parameter) ??
    inputs.find(([, candidate]) => candidate.parameters?.includes(parameter)) ??
    [];
  const kind = error.kind ?? (input && isQuantity(input) ? input.quantity : 'ratio');
  const amount = typeof value === 'number' && Number.isFinite(value) ? ` ${show(value, kind, 4)}` : '';
  const bound =
    limit === undefined
      ? ''
      : / (least|most|than|below|above)$/.test(rule)
        ? ` ${show(limit, kind, 4)}`
        : ` (${show(limit, kind, 4)})`;
  return { field, text: `${quantity.charAt(0).toUpperCase()}${quantity.slice(1)}${amount} ${rule}${bound}.` };
}
