import {
  formatForLink,
  isBareNumber,
  parseQuantity,
  unitFor,
  unitsOf,
  type QuantityKind,
  type Unit,
  type UnitChoice,
} from '@frameworthy/shared/quantity';
import type { AnyCalculator, Input, Slot } from './declaration.ts';
import { readEntry } from './entry.ts';
import { inputsOf, isQuantity, type ValueSet } from './values.ts';

/** `#two-screw-root?spacing=20mm&wall=1mm`, taken apart and not yet understood. */
export interface LinkParts {
  id: string;
  parts: string[];
}

/** Undefined where the fragment is no calculator's link, such as that of a heading. */
export function splitLink(hash: string): LinkParts | undefined {
  const [id, ...rest] = hash.replace(/^#/, '').split('?');
  if (!id || rest.length === 0) return undefined;
  // Some programs encode the & of a link, or write it as in HTML.
  const parts = rest.join('?').replace(/&amp;/g, '&').split('&');
  return { id: decode(id) ?? id, parts: parts.filter((part) => part !== '') };
}

function decode(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

const LONG = 12;

const quoted = (text: string) => `"${text.length > 40 ? `${text.slice(0, 40)}…` : text}"`;

function readPart(input: Input, text: string): { value: number | string } | { problem: string } {
  if (!isQuantity(input))
    return Object.hasOwn(input.choices, text) ? { value: text } : { problem: `has no choice ${quoted(text)}` };
  const parsed = parseQuantity(text, input.quantity);
  if (!parsed.ok) return { problem: parsed.problem };
  if (isBareNumber(text) && unitsOf(input.quantity).every((unit) => unit.symbol !== ''))
    return { problem: `${quoted(text)} has no unit` };
  const entry = readEntry(input, text, parsed.unit);
  return entry.ok ? { value: entry.value } : { problem: entry.problem };
}

/** The values that a link sets, over `start`; what could not be used is named, as text. */
export function readLink(
  calculator: AnyCalculator,
  parts: readonly string[],
  start: ValueSet,
): { values: ValueSet; problems: string[] } {
  const values: Record<string, number | string> = { ...start };
  const problems: string[] = [];
  for (const part of parts) {
    const cut = part.indexOf('=');
    const key = decode(cut < 0 ? part : part.slice(0, cut));
    const text = cut < 0 ? undefined : decode(part.slice(cut + 1).replace(/\+/g, ' '));
    const input =
      key !== undefined && Object.hasOwn(calculator.inputs, key) ? (calculator.inputs[key] as Input) : undefined;
    if (key === undefined || (cut >= 0 && text === undefined)) problems.push(`${quoted(part)} is damaged.`);
    else if (!input) problems.push(`${quoted(key)} is not known here.`);
    else if (!text) problems.push(`${input.label}: the value is missing.`);
    else {
      const read = readPart(input, text);
      if ('value' in read) values[key] = read.value;
      else problems.push(`${input.label}: ${read.problem.replace(/\.$/, '')}.`);
    }
  }
  return { values, problems };
}

/** In the reader's unit, or in the one that gives a short number where that would need many digits: 21.5 N and not 4.8333923 lbf. */
function valueText(value: number, kind: QuantityKind, units: UnitChoice): string {
  const write = (unit: Unit) => formatForLink(value, kind, { unit: unit.symbol });
  const own = write(unitFor(kind, units));
  return own.length <= LONG
    ? own
    : unitsOf(kind)
        .map(write)
        .reduce((best, text) => (text.length < best.length ? text : best), own);
}

/** The fragment that holds what differs from `start`, in the reader's units. */
export function writeLink(calculator: AnyCalculator, values: ValueSet, start: ValueSet, units: UnitChoice): string {
  const parts = inputsOf(calculator)
    .filter(([key]) => values[key] !== start[key])
    .map(([key, input]) => {
      const value = values[key];
      const text = isQuantity(input)
        ? valueText(value as number, input.quantity, units)
        : encodeURIComponent(String(value));
      return `${encodeURIComponent(key)}=${text}`;
    });
  return `#${calculator.id}?${parts.join('&')}`;
}

const CARRIED = 4;

/** The fragment that fills another calculator, in metric units and few digits. */
export function carryingLink(id: string, values: Readonly<Record<string, Slot | string>>): string {
  const parts = Object.entries(values).map(([key, carried]) => {
    if (typeof carried === 'string') return `${key}=${encodeURIComponent(carried)}`;
    const { value, quantity, digits = CARRIED } = carried;
    const { factor, symbol } = unitFor(quantity, { system: 'metric' });
    const rounded = Number((value / factor).toPrecision(digits)) * factor;
    return `${key}=${formatForLink(rounded, quantity, { unit: symbol })}`;
  });
  return `#${id}?${parts.join('&')}`;
}
