import { describe, expect, test } from 'vitest';
import { sources } from '../../content/sources/index.ts';
import { cases, missing } from './index.ts';

describe('the package against sources outside the project', () => {
  test.each(cases.map((row) => [row.id, row] as const))('%s', (_, row) => {
    const ours = row.compute();
    const allowed =
      'relative' in row.tolerance ? row.tolerance.relative * Math.abs(row.expected) : row.tolerance.absolute;
    expect(
      Math.abs(ours - row.expected),
      `${row.what}: expected ${row.expected} ${row.unit} ± ${allowed}, got ${ours} (${sources[row.source].title}, ${row.where})`,
    ).toBeLessThanOrEqual(allowed);
  });

  test('ids are unique', () => {
    expect(new Set(cases.map((row) => row.id)).size).toBe(cases.length);
  });

  test('a published number names a real publication, not practice or our own work', () => {
    const wrong = cases.filter(
      (row) => row.kind.startsWith('published') && ['practice', 'own'].includes(sources[row.source].type),
    );
    expect(wrong.map((row) => row.id)).toEqual([]);
  });

  test('the count of each kind of evidence is reported', () => {
    const counts = Map.groupBy(cases, (row) => row.kind);
    for (const [kind, rows] of counts) console.info(`${kind}: ${rows.length}`);
    console.info(`written down as missing: ${missing.length}`);
    expect([...counts.values()].flat()).toHaveLength(cases.length);
  });
});
