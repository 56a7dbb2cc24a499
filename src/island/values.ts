import type { AnyCalculator, Input, QuantityInput } from './declaration.ts';

/** Values by input key: SI numbers, and the keys of choices. */
export type ValueSet = Readonly<Record<string, number | string>>;

export const isQuantity = (input: Input): input is QuantityInput => 'quantity' in input;

export function inputsOf(calculator: AnyCalculator): [string, Input][] {
  return Object.entries(calculator.inputs as Record<string, Input>);
}

/** The values a calculator starts from: its defaults, with those that the page sets. */
export function startValues(calculator: AnyCalculator, overrides: ValueSet = {}): ValueSet {
  return Object.fromEntries(inputsOf(calculator).map(([key, input]) => [key, overrides[key] ?? input.default]));
}

/** The inputs that have an effect with these values. */
export function shownInputs(calculator: AnyCalculator, values: ValueSet): [string, Input][] {
  return inputsOf(calculator).filter(([, input]) => input.shownWhen?.(values) ?? true);
}
