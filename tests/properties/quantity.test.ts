import {
  formatForField,
  formatForLink,
  formatQuantity,
  findUnit,
  parseQuantity,
  QUANTITY_KINDS,
  type QuantityKind,
  unitsOf,
} from '@frameworthy/shared/quantity';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const kinds = Object.keys(QUANTITY_KINDS) as QuantityKind[];
const anyUnit = fc.constantFrom(
  ...kinds.filter((kind) => kind !== 'count').flatMap((kind) => unitsOf(kind).map((unit) => ({ kind, unit }))),
);
/** Any size that can be typed, from far below to far above an airframe's. */
const anyNumber = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -8, max: 4 }), fc.boolean())
  .map(([mantissa, exponent, negative]) => (negative ? -1 : 1) * mantissa * 10 ** exponent);

function read(text: string, kind: QuantityKind, preferred?: string): number {
  const parsed = parseQuantity(text, kind, preferred);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.problem}`);
  return parsed.value;
}

test('what a link holds reads back as the same value, in any unit', () => {
  fc.assert(
    fc.property(anyUnit, anyNumber, ({ kind, unit }, number) => {
      const value = number * unit.factor;
      const text = formatForLink(value, kind, { unit: unit.symbol });
      expect(text).toMatch(/^[-\w./"]+$/);
      expect(Math.abs(read(text, kind) / value - 1)).toBeLessThan(1e-15);
    }),
  );
});

test('what is shown reads back to the digits shown, in any unit', () => {
  fc.assert(
    fc.property(anyUnit, anyNumber, fc.integer({ min: 1, max: 12 }), ({ kind, unit }, number, digits) => {
      const value = number * unit.factor;
      const shown = formatQuantity(value, kind, { unit: unit.symbol, digits });
      expect(Math.abs(read(shown, kind) / value - 1)).toBeLessThanOrEqual(0.5 * 10 ** (1 - digits) * (1 + 1e-9));
    }),
  );
});

test('what a field holds reads back to five digits', () => {
  fc.assert(
    fc.property(anyUnit, anyNumber, ({ kind, unit }, number) => {
      const value = number * unit.factor;
      expect(Math.abs(read(formatForField(value, unit), kind, unit.symbol) / value - 1)).toBeLessThanOrEqual(
        0.5e-4 * (1 + 1e-9),
      );
    }),
  );
});

test('every symbol and every other spelling names its own unit', () => {
  for (const kind of kinds) {
    for (const unit of unitsOf(kind)) {
      for (const name of [unit.symbol, ...(unit.aliases ?? [])])
        expect([kind, name, findUnit(name, kind)?.symbol]).toEqual([kind, name, unit.symbol]);
    }
  }
});

test('a unit is known with or without its dots, spaces, hyphens and raised digits', () => {
  const spellings: readonly [kind: QuantityKind, symbol: string, spelled: string][] = [
    ['length', 'in', '″'],
    ['length', 'µm', 'um μm'],
    ['area', 'mm²', 'mm2 mm^2'],
    ['secondMomentOfArea', 'in⁴', 'in4 in^4'],
    ['volume', 'ml', 'cm³ cm3'],
    ['moment', 'N·m', 'nm n*m n.m n-m'],
    ['moment', 'in·lbf', 'in-lbf in*lbf lbf-in inlbf'],
    ['moment', 'N·mm', 'nmm n*mm'],
    ['stress', 'MPa', 'n/mm²'],
    ['acceleration', 'm/s²', 'm/s2 m/s^2'],
    ['angle', '°', 'deg'],
    ['angularAcceleration', '°/s²', 'deg/s2 deg/s^2'],
    ['momentOfInertia', 'kg·m²', 'kgm2'],
    ['rotationalStiffness', 'N·m/rad', 'nm/rad n*m/rad'],
    ['density', 'g/cm³', 'g/cm3'],
    ['energy', 'ft·lbf', 'ft-lbf ftlbf'],
    ['temperatureDifference', '°C', 'degC'],
  ];
  for (const [kind, symbol, spelled] of spellings)
    for (const name of spelled.split(' ')) expect([name, findUnit(name, kind)?.symbol]).toEqual([name, symbol]);
});

/** Pieces of numbers and units in any order, with some that belong to neither. */
const nonsense = fc.string({
  unit: fc.constantFrom(...'0123456789.,-−+/ ex×^⁻²½mNinkglbf·%°"<>&\u202f\0é漢\ud800'),
  maxLength: 24,
});

test('any text at all gives a value or a sentence, never a throw', () => {
  fc.assert(
    fc.property(nonsense, fc.constantFrom(...kinds), (text, kind) => {
      const parsed = parseQuantity(text, kind);
      if (parsed.ok) expect(Math.abs(parsed.value)).toBeLessThanOrEqual(1e15);
      else expect(parsed.problem).toMatch(/\.$/);
    }),
  );
});
