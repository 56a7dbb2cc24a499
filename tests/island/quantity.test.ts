import {
  formatForField,
  formatForLink,
  formatNumber,
  formatQuantity,
  parseQuantity,
  unitFor,
} from '@frameworthy/shared/quantity';
import { describe, expect, test } from 'vitest';

/** Spaces as shown, made plain so that expectations can be read. */
const plain = (text: string) => text.replace(/\u202f/g, ' ');

const value = (...args: Parameters<typeof parseQuantity>) => {
  const parsed = parseQuantity(...args);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
};

const problem = (...args: Parameters<typeof parseQuantity>) => {
  const parsed = parseQuantity(...args);
  return parsed.ok ? `read as ${parsed.value}` : parsed.problem;
};

describe('parseQuantity reads what people type', () => {
  // Inch, pound and pound-force as defined in NIST SP 811 (2008), Appendix B.
  test.each([
    ['12.5 mm', 'length', 0.0125],
    ['12,5mm', 'length', 0.0125],
    ['.5 in', 'length', 0.0127],
    ['0.5in', 'length', 0.0127],
    ['1/2 in', 'length', 0.0127],
    ['1 1/2 in', 'length', 0.0381],
    ['1-1/2"', 'length', 0.0381],
    ['1½ in', 'length', 0.0381],
    ['-1 1/2 in', 'length', -0.0381],
    ['20', 'length', 0.02],
    ['1e1 mm', 'length', 0.01],
    ['2 × 10⁻² m', 'length', 0.02],
    ['1\u202f250 mm', 'length', 1.25],
    ['−3 N', 'force', -3],
    ['3 N·m', 'moment', 3],
    ['3 N*m', 'moment', 3],
    ['3 Nm', 'moment', 3],
    ['10 in-lbf', 'moment', 1.1298483],
    ['70 GPa', 'stress', 70e9],
    ['25 mph', 'speed', 11.176],
    ['45', 'percent', 0.45],
    ['4', 'count', 4],
  ] as const)('%s as %s', (text, kind, expected) => {
    expect(value(text, kind)).toBeCloseTo(expected, 7);
  });

  test('without a unit it is in the preferred one', () => {
    expect(value('2', 'length', 'in')).toBeCloseTo(0.0508, 12);
  });
});

describe('parseQuantity says plainly what is wrong', () => {
  test.each([
    ['', 'length', 'Type a number.'],
    ['  ', 'length', 'Type a number.'],
    ['abc', 'length', '"abc" is not a number.'],
    ['mm', 'length', '"mm" is not a number.'],
    ['<b>1</b>', 'length', '"<b>1</b>" is not a number.'],
    ['1.2.3 mm', 'length', '"1.2.3 mm" has two decimal points.'],
    ['1,2.3', 'length', '"1,2.3" has two decimal points.'],
    ['1 2 mm', 'length', '"1 2 mm" holds two numbers; one is wanted.'],
    ['1/0 in', 'length', '"1/0 in" divides by zero.'],
    ['5 g', 'length', 'g is a mass, this field wants a length.'],
    ['5 N', 'moment', 'N is a force, this field wants a moment or torque.'],
    ['1e308', 'length', '"1e308" is too large to compute with.'],
    ['1e999', 'length', '"1e999" is too large to compute with.'],
    ['2.5', 'count', 'This must be a whole number.'],
  ] as const)('%j as %s', (text, kind, expected) => {
    expect(problem(text, kind)).toBe(expected);
  });

  test('an unknown unit names the known ones', () => {
    expect(problem('3 furlong', 'length')).toBe('"furlong" is not a unit known here; known: mm, in, m, cm, µm.');
  });
});

describe('formatQuantity', () => {
  test.each([
    [0.0125, 'length', {}, '12.5 mm'],
    [0.012, 'length', {}, '12 mm'],
    [0.012, 'length', { padded: true }, '12.0 mm'],
    [0.0127, 'length', { system: 'inch' }, '0.5 in'],
    [-3.14159, 'force', { digits: 4 }, '−3.142 N'],
    [0, 'force', { padded: true }, '0 N'],
    [3e-17, 'force', {}, '0 N'],
    [123456, 'force', {}, '123 000 N'],
    [0.99951, 'force', {}, '1 N'],
    [0.45, 'percent', {}, '45 %'],
    [Math.PI / 2, 'angle', {}, '90°'],
    [8, 'count', {}, '8'],
    [1e-9, 'momentOfInertia', { unit: 'kg·m²' }, '1 × 10⁻⁹ kg·m²'],
    [Number.NaN, 'force', {}, '— N'],
  ] as const)('%d %s %o', (amount, kind, options, expected) => {
    expect(plain(formatQuantity(amount, kind, options))).toBe(expected);
  });

  test('numbers of ordinary size have no exponent', () => {
    expect([0.000123, 0.5, 1234, 9994999].map((size) => plain(formatNumber(size)))).toEqual([
      '0.000123',
      '0.5',
      '1230',
      '9 990 000',
    ]);
  });
});

test('values for links and fields are plain', () => {
  expect(formatForLink(0.02, 'length')).toBe('20mm');
  expect(formatForLink(0.45, 'moment')).toBe('0.45Nm');
  expect(formatForLink(0.45, 'percent')).toBe('45percent');
  expect(formatForLink(0.0127, 'length', { system: 'inch' })).toBe('0.5in');
  expect(formatForField(0.0127, unitFor('length', { system: 'inch' }))).toBe('0.5');
  expect(formatForField(-0.1 - 0.2, unitFor('force'))).toBe('−0.3');
  expect(formatForField(1234.567, unitFor('force'))).toBe('1234.567');
  expect(formatForField(21.5, unitFor('force', { system: 'inch' }))).toBe('4.8334');
});
