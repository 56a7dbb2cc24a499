import { readdir, rm } from 'node:fs/promises';
import { sep } from 'node:path';

/** Files below a folder with this ending, as paths relative to it with forward slashes. */
export async function filesBelow(folder: string, ending: string): Promise<string[]> {
  const all = await readdir(folder, { recursive: true });
  return all
    .filter((file) => file.endsWith(ending))
    .map((file) => file.split(sep).join('/'))
    .sort();
}

export async function removeUnusedScripts(folder: string, used: ReadonlySet<string>): Promise<void> {
  for (const file of await filesBelow(folder, '.js')) if (!used.has(file)) await rm(folder + file);
}
