import { QUANTITY_KINDS, type QuantityKind, type Unit } from './kinds.ts';
import { KIND_NAMES } from './names.ts';
import { parseNumber } from './number.ts';
import { findUnit, unitFor, unitsOf } from './units.ts';

/** A value in SI with the unit it was typed in, or a plain sentence that says what is wrong. */
export type ParsedQuantity = { ok: true; value: number; unit: Unit } | { ok: false; problem: string };

/** The size in SI from which on the package refuses to compute; see `require.ts`. */
const LARGEST = 1e15;

function unknownUnit(text: string, kind: QuantityKind): string {
  const other = (Object.keys(QUANTITY_KINDS) as QuantityKind[]).find((candidate) => findUnit(text, candidate));
  if (other) return `${text} is ${KIND_NAMES[other]}, this field wants ${KIND_NAMES[kind]}.`;
  const known = unitsOf(kind)
    .map((unit) => unit.symbol)
    .filter(Boolean)
    .join(', ');
  return known
    ? `"${text}" is not a unit known here; known: ${known}.`
    : `"${text}" is too much; this field wants ${KIND_NAMES[kind]}.`;
}

/**
 * Reads a quantity as a person types it: `12.5 mm`, `0,5in`, `1 1/2 in`, `3 N·m`. Without a unit it is in the preferred one.
 * SI value = number × factor of the unit.
 *
 * @param text - what was typed
 * @param kind - kind of quantity that is wanted
 * @param preferred - symbol of the unit meant where none is typed; the kind's first unit where not given
 * @returns the value [SI] and its unit, or the problem in a plain sentence
 * @source nist-2008-sp811, Appendix B (factors)
 */
export function parseQuantity(text: string, kind: QuantityKind, preferred?: string): ParsedQuantity {
  const number = parseNumber(text);
  if (!number.ok) return number;
  const unit = number.rest === '' ? (findUnit(preferred ?? '', kind) ?? unitFor(kind)) : findUnit(number.rest, kind);
  if (!unit) return { ok: false, problem: unknownUnit(number.rest, kind) };
  const value = number.value * unit.factor;
  if (!Number.isFinite(value) || Math.abs(value) > LARGEST)
    return { ok: false, problem: `"${text.trim()}" is too large to compute with.` };
  if (kind === 'count' && !Number.isInteger(value)) return { ok: false, problem: 'This must be a whole number.' };
  return { ok: true, value, unit };
}

/**
 * Whether a text is a number alone, without a unit: `0,02`, `1 ½`, `2 × 10⁻²`.
 * @param text - what was typed
 * @returns true where nothing stands after the number
 */
export function isBareNumber(text: string): boolean {
  const number = parseNumber(text);
  return number.ok && number.rest === '';
}
