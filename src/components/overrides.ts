import type { AnyCalculator, Input } from '~/island/declaration.ts';
import { parseQuantity } from '@frameworthy/shared/quantity';

/**
 * A calculator's default values with some of them set as a reader would type them: `{ spacing: '20 mm' }`.
 * @throws Error that names the input, so that a slip in an article stops the build
 */
export function valuesWith(
  tool: AnyCalculator,
  typed: Readonly<Record<string, string>>,
): Record<string, number | string> {
  const inputs = Object.entries(tool.inputs as Record<string, Input>);
  const unknown = Object.keys(typed).filter((key) => !(key in tool.inputs));
  if (unknown.length > 0) throw new Error(`${tool.id} has no input ${unknown.join(', ')}`);
  return Object.fromEntries(
    inputs.map(([key, input]) => [
      key,
      typed[key] === undefined ? input.default : parsed(tool.id, key, input, typed[key]),
    ]),
  );
}

function parsed(id: string, key: string, input: Input, text: string): number | string {
  if ('choices' in input) {
    if (!(text in input.choices)) throw new Error(`${id}.${key} has no choice "${text}"`);
    return text;
  }
  const result = parseQuantity(text, input.quantity);
  if (!result.ok) throw new Error(`${id}.${key}: "${text}" ${result.problem}`);
  return result.value;
}
