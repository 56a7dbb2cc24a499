import type { QuantityKind, Unit } from './kinds.ts';
import { findUnit, plainUnit, unitFor, unitsOf, type UnitSystem } from './units.ts';

export interface FormatOptions {
  /** Symbol of the unit to show. */
  unit?: string;
  /** The preset that gives the unit where none is named. */
  system?: UnitSystem;
  /** Significant digits, 3 where not given. */
  digits?: number;
  /** Keeps zeros at the end, for columns of results: `2.00`. */
  padded?: boolean;
}

const NARROW_SPACE = '\u202f';
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** In the shown unit, sizes below this are rounding noise of a result that is zero. */
const NOISE = 1e-10;

function power(exponent: number): string {
  const digits = [...String(Math.abs(exponent))].map((digit) => RAISED[Number(digit)]).join('');
  return `10${exponent < 0 ? '⁻' : ''}${digits}`;
}

const grouped = (whole: string) => (whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, NARROW_SPACE));

/**
 * A number with so many significant digits, a true minus sign, and a power of ten only for sizes out of the ordinary.
 * @param value - any number
 * @param digits - significant digits
 * @param padded - keeps zeros at the end
 * @returns the text; a dash where there is no number
 */
export function formatNumber(value: number, digits = 3, padded = false): string {
  if (!Number.isFinite(value)) return '—';
  if (Math.abs(value) < NOISE) return '0';
  const [mantissa = '', exponentText = '0'] = Math.abs(value)
    .toExponential(digits - 1)
    .split('e');
  const exponent = Number(exponentText);
  const ordinary = exponent >= -4 && exponent < 7;
  // Number() turns the rounded text into a plain decimal, which toFixed then writes without an exponent.
  const text = ordinary ? Number(`${mantissa}e${exponent}`).toFixed(Math.max(0, digits - 1 - exponent)) : mantissa;
  const [whole = '', decimals = ''] = text.split('.');
  const kept = padded ? decimals : decimals.replace(/0+$/, '');
  const times = ordinary ? '' : ` × ${power(exponent)}`;
  return `${value < 0 ? '−' : ''}${grouped(whole)}${kept && `.${kept}`}${times}`;
}

function chosen(kind: QuantityKind, options: { unit?: string; system?: UnitSystem }): Unit {
  const { unit } = options;
  const named =
    unit === undefined ? undefined : (unitsOf(kind).find(({ symbol }) => symbol === unit) ?? findUnit(unit, kind));
  return named ?? unitFor(kind, { system: options.system ?? 'metric' });
}

/**
 * A quantity as shown to a reader: `12.5 mm`. Number shown = SI value / factor of the unit.
 *
 * @param value - quantity [SI]
 * @param kind - kind of quantity
 * @param options - unit or system, significant digits
 * @returns number, narrow no-break space, unit
 * @source nist-2008-sp811, Appendix B (factors)
 */
export function formatQuantity(value: number, kind: QuantityKind, options: FormatOptions = {}): string {
  const unit = chosen(kind, options);
  const shown = value / unit.factor;
  const number =
    kind === 'count' && Number.isInteger(shown)
      ? formatNumber(shown, 15)
      : formatNumber(shown, options.digits, options.padded);
  const tight = unit.symbol === '' || unit.symbol === '°';
  return `${number}${tight ? '' : NARROW_SPACE}${unit.symbol}`;
}

/** Digits of a number that was converted from another unit, and would have no end. */
const CONVERTED = 5;
const TYPED = 7;

/**
 * The bare number for an entry field: whole where it is short, as when it was typed; 5 digits where it comes from another unit.
 * @param value - quantity [SI]
 * @param unit - the unit that stands beside the field
 * @returns text that reads back as the value, to 5 digits or more
 */
export function formatForField(value: number, unit: Unit): string {
  const shown = value / unit.factor;
  const typed = Number(shown.toPrecision(TYPED));
  const number = Math.abs(typed - shown) <= 1e-12 * Math.abs(shown) ? typed : Number(shown.toPrecision(CONVERTED));
  return String(number).replace(/^-/, '−');
}

/**
 * A quantity for a link: plain letters, no space, and the fewest digits that read back as the same value.
 * @param value - quantity [SI]
 * @param kind - kind of quantity
 * @param options - unit or system to write it in
 * @returns such as `20mm` or `0.45Nm`
 */
export function formatForLink(
  value: number,
  kind: QuantityKind,
  options: Pick<FormatOptions, 'unit' | 'system'> = {},
): string {
  const unit = chosen(kind, options);
  const shown = value / unit.factor;
  let text = '';
  for (let digits = 1; digits <= 17; digits++) {
    text = String(Number(shown.toPrecision(digits)));
    if (Number(text) * unit.factor === value) break;
  }
  return text + plainUnit(unit.symbol);
}
