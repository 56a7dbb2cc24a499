import { QUANTITY_KINDS, STANDARD_GRAVITY, type QuantityKind } from '../../shared/src/quantity/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';

/** What one of a unit is in SI, as the reader's fields use it. */
function factor(kind: QuantityKind, symbol: string): number {
  const found = QUANTITY_KINDS[kind].find((unit) => unit.symbol === symbol);
  if (!found) throw new Error(`${kind} has no unit ${symbol}`);
  return found.factor;
}

const exact = {
  topic: 'quantity',
  kind: 'from memory',
  source: 'nist-2008-sp811',
  where: 'Appendix B, exact definitions',
  given: '1',
  tolerance: { relative: 1e-12 },
  because: 'exact by definition; only the rounding of a double is allowed',
} as const;
const derived = {
  ...exact,
  where: 'Appendix B, conversion factors',
  tolerance: { relative: 1e-9 },
  because: 'the value is recalled to about ten digits',
} as const;

export const cases: PublishedCase[] = [
  {
    ...exact,
    id: 'unit-standard-gravity',
    what: 'Standard gravity',
    unit: 'm/s²',
    expected: 9.80665,
    compute: () => STANDARD_GRAVITY,
  },
  { ...exact, id: 'unit-inch', what: 'Inch', unit: 'm', expected: 0.0254, compute: () => factor('length', 'in') },
  { ...exact, id: 'unit-pound', what: 'Pound', unit: 'kg', expected: 0.45359237, compute: () => factor('mass', 'lb') },
  {
    ...exact,
    id: 'unit-pound-force',
    what: 'Pound-force',
    unit: 'N',
    expected: 4.4482216152605,
    compute: () => factor('force', 'lbf'),
  },
  {
    ...derived,
    id: 'unit-psi',
    what: 'Pound-force per square inch',
    unit: 'Pa',
    expected: 6894.757293,
    compute: () => factor('stress', 'psi'),
  },
  {
    ...derived,
    id: 'unit-ounce',
    what: 'Ounce',
    unit: 'g',
    expected: 28.349523125,
    compute: () => factor('mass', 'oz') / 1e-3,
  },
  {
    ...derived,
    id: 'unit-horsepower',
    what: 'Horsepower of 550 foot-pounds a second',
    unit: 'W',
    expected: 745.69987,
    compute: () => factor('power', 'hp'),
    tolerance: { relative: 1e-8 },
    because: 'the value is recalled to eight digits',
  },
];

export const missing: MissingCheck[] = [
  {
    topic: 'quantity',
    what: 'unit factors read in the printed guide',
    instead: 'factors recalled, identical to the constants table of a general scientific library',
  },
];
