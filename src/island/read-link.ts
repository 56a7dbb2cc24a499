import { isBareNumber, parseQuantity, unitsOf } from '@frameworthy/shared/quantity';
import type { AnyCalculator, Input } from './declaration.ts';
import { readEntry } from './entry.ts';
import { isQuantity, type ValueSet } from './values.ts';

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

/** A link that names no calculator of this page: said at the first one, so that it is not lost without a word. */
function strayLink(known: readonly string[]): string | undefined {
  const link = splitLink(location.hash);
  if (link)
    return known.includes(link.id)
      ? undefined
      : `The link holds values for "${link.id.slice(0, 40)}", a calculator that is not on this page.`;
  const name = location.hash.slice(1);
  const cut = name !== '' && !document.getElementById(name) && known.some((id) => id.startsWith(name));
  return cut ? 'The link is cut short: it holds no values.' : undefined;
}

/** What an address holds for a calculator: values, and what could not be used, in words. */
export interface FollowedLink {
  values?: ValueSet;
  problems: readonly string[];
  /** It names this calculator. */
  own: boolean;
}

/** Reads the address. `others` are all calculators of the page, given for the first of them: it speaks up for links that name none. */
export function followLink(
  calculator: AnyCalculator,
  start: ValueSet,
  others: readonly string[] | undefined,
): FollowedLink {
  const link = splitLink(location.hash);
  if (link?.id !== calculator.id) {
    const stray = others && strayLink(others);
    return { problems: stray ? [stray] : [], own: false };
  }
  // A frame in the link fills the calculator by itself: see use-frame.
  const parts = link.parts.filter((part) => !part.startsWith('frame='));
  const { values, problems } = readLink(calculator, parts, start);
  return {
    ...(parts.length > 0 ? { values } : {}),
    problems: problems.map((problem) => `Skipped from the link: ${problem}`),
    own: true,
  };
}
