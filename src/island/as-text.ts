import type { AnyCalculator, Output, Show, Table, TableColumn } from './declaration.ts';
import { isQuantity, shownInputs, type ValueSet } from './values.ts';

const cellText = (cell: number | string, { quantity, digits }: TableColumn, show: Show): string =>
  typeof cell === 'string' ? cell : show(cell, quantity ?? 'ratio', digits);

/** The whole calculation as plain text, for a message or a build log. */
export function asText(calculator: AnyCalculator, values: ValueSet, result: unknown, show: Show, link: string): string {
  const given = shownInputs(calculator, values).map(([key, input]) => {
    const value = values[key];
    return `  ${input.label}: ${isQuantity(input) ? show(value as number, input.quantity, 6) : (input.choices[String(value)] ?? '')}`;
  });
  const found = (calculator.outputs as readonly Output<ValueSet, unknown>[]).map((output) => {
    const impossible = output.impossible?.(result, values);
    if (impossible !== undefined) return `  ${output.label}: none (${impossible})`;
    const verdict = output.verdict?.(result, values);
    return `  ${output.label}: ${show(output.value(result, values), output.quantity, output.digits)}${verdict ? ` (${verdict.text})` : ''}`;
  });
  const tables = ((calculator.tables ?? []) as readonly Table<ValueSet, unknown>[]).flatMap((table) => [
    '',
    table.title,
    `  ${table.columns.map(({ label }) => label).join('; ')}`,
    ...table
      .rows(values, result, calculator.compute)
      .map(
        ({ cells, own }) =>
          `  ${cells.map((cell, i) => cellText(cell, table.columns[i]!, show)).join('; ')}${own ? ' (yours)' : ''}`,
      ),
  ]);
  const warnings = (calculator.warnings?.(result, values, show) ?? []).map(({ message }) => `  Note: ${message}`);
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
    ...tables,
    '',
    link,
  ].join('\n');
}
