import {
  formatForLink,
  unitFor,
  unitsOf,
  type QuantityKind,
  type Unit,
  type UnitChoice,
} from '@frameworthy/shared/quantity';
import type { AnyCalculator, Slot } from './declaration.ts';
import { inputsOf, isQuantity, type ValueSet } from './values.ts';

const LONG = 12;

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
