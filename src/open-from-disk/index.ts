import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { bundleFor, entryFor, scriptNeeds } from './bundle.ts';
import { filesBelow, removeUnusedScripts } from './files.ts';
import { trimFormulaFonts } from './formula-fonts.ts';
import { relativeAddress, relativeCss, relativeHtml } from './relative.ts';

/** Fetched by a page's script where the reader asks for it, too large to come with every page: see `src/island/later.ts`. */
const LATER: Readonly<Record<string, string>> = {
  'frame-fill': './src/frame/fill.ts',
  'full-size': './src/island/full-size.ts',
  'link-reader': './src/island/link-reader.ts',
};

/**
 * Makes one build work over http, under any sub-path, and opened from a folder. Browsers load neither module scripts nor
 * absolute addresses from `file://`, so: each page gets one classic script with exactly what it shows, and every address
 * becomes relative.
 */
export function openFromDisk(): AstroIntegration {
  let root = '';
  return {
    name: 'open-from-disk',
    hooks: {
      'astro:config:setup': ({ command, injectScript, config }) => {
        root = fileURLToPath(config.root);
        if (command === 'dev') injectScript('page', "import '/src/open-from-disk/dev.ts';");
      },
      'astro:build:done': async ({ dir, logger }) => {
        const dist = fileURLToPath(dir);
        const pages = await Promise.all(
          (await filesBelow(dist, '.html')).map(async (file) => ({ file, html: await readFile(dist + file, 'utf8') })),
        );
        const scripts = new Map<string, Promise<string>>();
        const later = await Promise.all(
          Object.entries(LATER).map(async ([name, file]) => ({
            name,
            script: await bundleFor(`import '${file}';`, root, dist),
          })),
        );
        for (const page of pages) {
          const entry = entryFor(scriptNeeds(page.file, page.html));
          if (!scripts.has(entry)) scripts.set(entry, bundleFor(entry, root, dist));
          const script = `<script defer src="/${await scripts.get(entry)}"></script></head>`;
          const addresses = later.map(
            ({ name, script }) => `data-${name}="${relativeAddress(`/${script}`, page.file)}" `,
          );
          const addressed = page.html.replace('<html ', `<html ${addresses.join('')}`);
          const html = relativeHtml(addressed.replace('</head>', script), page.file);
          await writeFile(dist + page.file, html);
        }
        // Astro emits its renderer's browser half, which no page loads.
        await removeUnusedScripts(
          dist,
          new Set([...later.map(({ script }) => script), ...(await Promise.all(scripts.values()))]),
        );
        await trimFormulaFonts(
          dist,
          pages.map(({ html }) => html),
        );
        for (const file of await filesBelow(dist, '.css')) {
          await writeFile(dist + file, relativeCss(await readFile(dist + file, 'utf8'), file));
        }
        logger.info(`${pages.length} pages, ${scripts.size} scripts; opens from ${dist}index.html`);
      },
    },
  };
}
