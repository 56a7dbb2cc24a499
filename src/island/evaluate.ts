import { InputError } from '@frameworthy/shared';
import type { QuantityKind } from '@frameworthy/shared/quantity';
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

/** What is wrong, in the reader's words and units; `kind` where the error itself does not say what its numbers are. */
export function errorText(
  { quantity, value, rule, limit, kind: own }: InputError,
  kind: QuantityKind,
  show: Show,
): string {
  const shown = (number: number) => show(number, own ?? kind, 4);
  const amount = typeof value === 'number' && Number.isFinite(value) ? ` ${shown(value)}` : '';
  const bound =
    limit === undefined ? '' : / (least|most|than|below|above)$/.test(rule) ? ` ${shown(limit)}` : ` (${shown(limit)})`;
  return `${quantity.charAt(0).toUpperCase()}${quantity.slice(1)}${amount} ${rule}${bound}.`;
}

/** Where an error belongs, in the reader's words and units. Without a field it concerns the values together. */
export function explain(calculator: AnyCalculator, error: unknown, show: Show): { field?: string; text: string } {
  if (!(error instanceof InputError))
    return { text: 'These values together cannot be computed. Change one of them back.' };
  const { parameter } = error;
  const inputs = inputsOf(calculator);
  const [field, input] =
    inputs.find(([key]) => key === parameter) ??
    inputs.find(([, candidate]) => candidate.parameters?.includes(parameter)) ??
    [];
  return { field, text: errorText(error, input && isQuantity(input) ? input.quantity : 'ratio', show) };
}
