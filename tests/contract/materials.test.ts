import * as laminate from '@frameworthy/shared/laminate';
import * as materials from '@frameworthy/shared/material';
import type { MaterialValue } from '@frameworthy/shared/material';
import { describe, expect, test } from 'vitest';
import { sources } from '../../content/sources/index.ts';
import { KINDS, materialGroups } from '../../src/components/materials.ts';

const isValue = (value: unknown): value is MaterialValue =>
  typeof value === 'object' && value !== null && 'typical' in value;
const inPackage = [materials, laminate].flatMap((topic) =>
  Object.values(topic).flatMap((entry) =>
    typeof entry === 'object' && 'name' in entry
      ? Object.entries(entry)
          .filter((pair): pair is [string, MaterialValue] => isValue(pair[1]))
          .map(([key, value]) => [`${entry.name}, ${key}`, value] as const)
      : [],
  ),
);
const shown = materialGroups.flatMap((group) => group.materials);

describe('library of materials', () => {
  test.each(inPackage)('%s: low to high, with a kind and a source that exist', (_, value) => {
    const { low, typical, high, kind, source } = value;
    expect(0 < low && low <= typical && typical <= high).toBe(true);
    expect(high / low).toBeLessThan(6);
    expect(Object.keys(KINDS)).toContain(kind);
    expect(Object.keys(sources)).toContain(source);
    // Nobody's number is passed off as somebody's, and a published one names who.
    expect(kind === 'common practice', kind).toBe(source === 'common-practice' && kind !== 'estimate');
  });

  test('the page shows every value of the package, each with number and unit', () => {
    expect(shown.flatMap(({ values }) => values)).toHaveLength(inPackage.length);
    expect(inPackage.length).toBeGreaterThan(60);
    for (const { name, values } of shown) {
      for (const { key, low, typical, high, unit } of values) {
        for (const text of [low, typical, high]) expect(text, `${name}, ${key}`).toMatch(/^\d[\d.\u202f]*$/);
        expect(unit === '', `${name}, ${key}`).toBe(['friction', 'poissonRatio'].includes(key));
      }
    }
    expect(materialGroups.every((group) => group.materials.length > 0)).toBe(true);
    expect(new Set(shown.map(({ id }) => id)).size).toBe(shown.length);
  });

  test('shows numbers as they stand in the package', () => {
    const tube = shown.find(({ name }) => name === materials.ROLL_WRAPPED_TUBE.name);
    const modulus = tube?.values.find(({ key }) => key === 'youngsModulus');
    expect(modulus).toMatchObject({ low: '60', typical: '90', high: '120', unit: 'GPa' });
  });
});
