import { QUANTITY_KINDS, type QuantityKind } from './kinds.ts';

/** Those that are not called as they are written in code. */
const CALLED: Readonly<Partial<Record<QuantityKind, string>>> = {
  moment: 'moment or torque',
  linearDensity: 'mass per length',
  rotationalSpeed: 'speed of rotation',
  cureTime: 'curing time',
  temperatureDifference: 'difference of temperature',
  percent: 'percentage',
  ratio: 'plain number',
  count: 'whole number',
};

function named(kind: QuantityKind): string {
  const name = CALLED[kind] ?? kind.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}

/** Each kind in words, as it stands in a sentence: `g is a mass, this field wants a length`. */
export const KIND_NAMES = Object.fromEntries(
  (Object.keys(QUANTITY_KINDS) as QuantityKind[]).map((kind) => [kind, named(kind)]),
) as Readonly<Record<QuantityKind, string>>;
