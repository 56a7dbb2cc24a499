import { QUANTITY_KINDS, type QuantityKind, type Unit } from './kinds.ts';

export type UnitSystem = 'metric' | 'inch';

/** Which units a reader wants: a preset, and single kinds that differ from it. */
export interface UnitChoice {
  system: UnitSystem;
  /** Unit symbols by kind. */
  units?: Readonly<Partial<Record<QuantityKind, string>>>;
}

/**
 * The units in which a kind of quantity can be typed and shown.
 * @param kind - kind of quantity
 * @returns its units, the default one first
 */
export function unitsOf(kind: QuantityKind): readonly Unit[] {
  return QUANTITY_KINDS[kind];
}

/**
 * The unit that a reader's choice gives for a kind: the kind's own choice, else the first unit of the preset.
 * @param kind - kind of quantity
 * @param choice - the reader's choice, metric where not given
 * @returns the unit
 */
export function unitFor(kind: QuantityKind, choice: UnitChoice = { system: 'metric' }): Unit {
  const units = unitsOf(kind);
  const own = choice.units?.[kind];
  return (
    units.find((unit) => unit.symbol === own) ??
    units.find((unit) => unit.system === choice.system || unit.system === 'both') ??
    (units[0] as Unit)
  );
}

const PLAIN: Readonly<Record<string, string>> = {
  '²': '2',
  '³': '3',
  '⁴': '4',
  µ: 'u',
  μ: 'u',
  '″': '"',
  '”': '"',
  '°': 'deg',
  '%': 'percent',
};

/**
 * A unit in plain letters, without dots, spaces, hyphens or superscripts, as it stands in a link: `N·m` is `Nm`.
 * @param symbol - unit as shown or typed
 * @returns the same unit in plain letters
 */
export function plainUnit(symbol: string): string {
  return symbol.replace(/[²³⁴µμ″”°%]/g, (mark) => PLAIN[mark] ?? mark).replace(/[\s·⋅*.^-]/g, '');
}

/**
 * Finds a unit of a kind by any of its spellings; capitals matter only where two units would be confused.
 * @param text - unit as typed: `N*m`
 * @param kind - kind of quantity
 * @returns the unit, or undefined where the kind has none of that name
 */
export function findUnit(text: string, kind: QuantityKind): Unit | undefined {
  const plain = plainUnit(text);
  const lower = plain.toLowerCase();
  const units = unitsOf(kind);
  return (
    units.find((unit) => plainUnit(unit.symbol) === plain) ??
    units.find((unit) => [unit.symbol, ...(unit.aliases ?? [])].some((name) => plainUnit(name).toLowerCase() === lower))
  );
}
