import type { AnyCalculator, Output, Show } from './declaration.ts';
import { isQuantity, shownInputs, type ValueSet } from './values.ts';

/** The whole calculation as plain text, for a message or a build log. */
export function asText(calculator: AnyCalculator, values: ValueSet, result: unknown, show: Show, link: string): string {
  const given = shownInputs(calculator, values).map(([key, input]) => {
    const value = values[key];
    return `  ${input.label}: ${isQuantity(input) ? show(value as number, input.quantity, 6) : (input.choices[String(value)] ?? '')}`;
  });
  const found = (calculator.outputs as readonly Output<ValueSet, unknown>[]).map((output) => {
    const verdict = output.verdict?.(result, values);
    return `  ${output.label}: ${show(output.value(result, values), output.quantity, output.digits)}${verdict ? ` (${verdict.text})` : ''}`;
  });
  const warnings = (calculator.warnings?.(result, values) ?? []).map(({ message }) => `  Note: ${message}`);
  return [
    calculator.title,
    calculator.question,
    '',
    'Given',
    ...given,
    '',
    'Result (an estimate)',
    `  ${calculator.says(result, values, show)}`,
    ...found,
    ...warnings,
    '',
    link,
  ].join('\n');
}
