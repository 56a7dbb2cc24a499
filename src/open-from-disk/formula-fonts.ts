import { readFile, rm, writeFile } from 'node:fs/promises';
import { filesBelow } from './files.ts';

const FACE = /@font-face\{[^}]*font-family:"?(KaTeX_\w+)"?[^}]*\}/g;

/**
 * KaTeX brings twenty faces in three formats. Keeps woff2 alone, and only the families whose classes stand on some page.
 */
export async function trimFormulaFonts(dist: string, pages: readonly string[]): Promise<void> {
  for (const file of await filesBelow(dist, '.css')) {
    const css = await readFile(dist + file, 'utf8');
    if (!css.includes('KaTeX_')) continue;
    const used = usedFamilies(css, pages);
    const trimmed = css
      .replace(FACE, (face, family: string) => (used.has(family) ? face : ''))
      .replace(/,\s*url\([^)]*\)\s*format\("?(?:woff|truetype)"?\)/g, '');
    await writeFile(dist + file, trimmed);
    for (const ending of ['.woff', '.ttf', '.woff2']) {
      for (const font of await filesBelow(dist, ending)) {
        const name = font.split('/').at(-1) as string;
        if (name.startsWith('KaTeX_') && !trimmed.includes(name)) await rm(dist + font);
      }
    }
  }
}

/** Families that some rule of the stylesheet sets for a class that occurs on a page. */
function usedFamilies(css: string, pages: readonly string[]): Set<string> {
  const classes = new Set(
    pages.flatMap((html) =>
      [...html.matchAll(/class="([^"]*)"/g)].flatMap((match) => (match[1] as string).split(/\s+/)),
    ),
  );
  const used = new Set(['KaTeX_Main']);
  for (const [, selectors = '', body = ''] of css.replace(FACE, '').matchAll(/([^{}]+)\{([^{}]*)\}/g)) {
    const family = /font(?:-family)?:[^;]*?(KaTeX_\w+)/.exec(body)?.[1];
    const needed = (selector: string) =>
      [...selector.matchAll(/\.([\w-]+)/g)].every((match) => classes.has(match[1] as string));
    if (family && selectors.split(',').some(needed)) used.add(family);
  }
  return used;
}
