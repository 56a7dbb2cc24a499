import { formatQuantity, parseQuantity, type Unit } from '@frameworthy/shared/quantity';
import type { QuantityInput } from './declaration.ts';

export type Entry = { ok: true; value: number } | { ok: false; problem: string };

/** Room for rounding where a limit is typed in a unit other than SI's. */
const TOLERANCE = 1e-9;

/** Reads what was typed into a field, and holds it against the field's range. `unit` is the one beside the field. */
export function readEntry(input: QuantityInput, text: string, unit: Unit): Entry {
  const parsed = parseQuantity(text, input.quantity, unit.symbol);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  const slack = TOLERANCE * Math.max(Math.abs(input.min), Math.abs(input.max));
  const show = (limit: number) => formatQuantity(limit, input.quantity, { unit: unit.symbol, digits: 4 });
  if (value < input.min - slack)
    return { ok: false, problem: `${show(value)} is too small: at least ${show(input.min)}.` };
  if (value > input.max + slack)
    return { ok: false, problem: `${show(value)} is too large: at most ${show(input.max)}.` };
  return { ok: true, value: Math.min(Math.max(value, input.min), input.max) };
}

/** `value` moved by whole steps, within the range, without the dust of binary fractions. */
export function stepped(input: QuantityInput, value: number, steps: number): number {
  const next = Number((value + steps * input.step).toPrecision(12));
  return Math.min(Math.max(next, input.min), input.max);
}

/** The slider counts whole notches from the minimum, so that it never rounds a typed value. */
export const notches = (input: QuantityInput) => Math.max(1, Math.round((input.max - input.min) / input.step));
export const notchOf = (input: QuantityInput, value: number) => Math.round((value - input.min) / input.step);
export const atNotch = (input: QuantityInput, notch: number) =>
  notch >= notches(input) ? input.max : stepped(input, input.min, notch);
