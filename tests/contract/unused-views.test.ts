import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { bundleFor, entryFor } from '../../src/open-from-disk/bundle.ts';

/** Words of each part of the island that no other part has, by what a calculator declares to be shown with it. */
const MARKS = {
  plots: 'reading along',
  maps: 'Click on the map',
  tables: 'table-scroll',
  carriesTo: 'Go on with these values',
} as const;
const KEYS = Object.keys(MARKS) as (keyof typeof MARKS)[];

test('a page’s script holds the parts that its calculators are shown with, and no others', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'views-'));
  const seen = new Set<string>();
  try {
    for (const ids of [['two-screw-root'], ['two-screw-root', 'laminate'], ['tube-or-plate'], ['frame-drawing']]) {
      const file = await bundleFor(entryFor({ calculators: ids, parts: [] }), `${process.cwd()}/`, `${folder}/`);
      const script = await readFile(join(folder, file), 'utf8');
      for (const key of KEYS) {
        const declared = ids.some((id) => calculators[id]?.[key]?.length);
        expect(script.includes(MARKS[key]), `${key} of ${ids.join()}`).toBe(declared);
        seen.add(`${key} ${declared}`);
      }
    }
  } finally {
    await rm(folder, { recursive: true });
  }
  // Each of them once with and once without, or this proves nothing.
  expect(seen.size).toBe(2 * KEYS.length);
});
