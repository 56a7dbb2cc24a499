import { readdir } from 'node:fs/promises';
import { sep } from 'node:path';

/** Files below a folder with this ending, as paths relative to it with forward slashes. */
export async function filesBelow(folder: string, ending: string): Promise<string[]> {
  const all = await readdir(folder, { recursive: true });
  return all
    .filter((file) => file.endsWith(ending))
    .map((file) => file.split(sep).join('/'))
    .sort();
}
