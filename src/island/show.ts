import { formatQuantity, unitFor, type UnitChoice } from '@frameworthy/shared/quantity';
import type { Show } from './declaration.ts';

/** Writes values in the reader's units. */
export function showIn(units: UnitChoice): Show {
  return (value, quantity, digits = 3) =>
    formatQuantity(value, quantity, { unit: unitFor(quantity, units).symbol, digits });
}

/** The same for columns of results: zeros at the end stay. */
export function showPaddedIn(units: UnitChoice): Show {
  return (value, quantity, digits = 3) =>
    formatQuantity(value, quantity, { unit: unitFor(quantity, units).symbol, digits, padded: quantity !== 'count' });
}
