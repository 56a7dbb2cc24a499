import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bundleFor, entryFor } from '../../src/open-from-disk/bundle.ts';

/** A word of each part of the island that no other part has. */
const MARKS = { Plot: 'reading along', ContourMap: 'Click on the map', DataTable: 'table-scroll', GoOn: 'go-on' };

test('a page’s script holds the parts that its calculators are shown with, and no others', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'views-'));
  const parts = async (...calculators: string[]) => {
    const file = await bundleFor(entryFor({ calculators, parts: [] }), `${process.cwd()}/`, `${folder}/`);
    const script = await readFile(join(folder, file), 'utf8');
    return Object.entries(MARKS).flatMap(([part, mark]) => (script.includes(mark) ? [part] : []));
  };
  try {
    expect(await parts('two-screw-root')).toEqual(['Plot']);
    expect(await parts('two-screw-root', 'laminate')).toEqual(['Plot', 'GoOn']);
    expect(await parts('tube-or-plate')).toEqual(['Plot', 'ContourMap', 'DataTable']);
  } finally {
    await rm(folder, { recursive: true });
  }
});
