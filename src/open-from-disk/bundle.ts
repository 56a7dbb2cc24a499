import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { build } from 'esbuild';
import { minify } from 'terser';
import { leaveOutServerWords } from './leave-out.ts';
import { pureCalls } from './pure-calls.ts';
import { declarations, standingWords } from './standing-words.ts';
import { unusedViews } from './unused-views.ts';

/** What of a page the browser brings to life. */
export interface ScriptNeeds {
  calculators: readonly string[];
  /** Live parts that are no calculators: folders of `src/site`. */
  parts: readonly string[];
}

const named = (html: string, attribute: string) =>
  [
    ...new Set(
      [...html.matchAll(new RegExp(`\\sdata-${attribute}="([a-z0-9-]+)"`, 'g'))].map((match) => match[1] as string),
    ),
  ].sort();

/** Reads off a built page which calculators and parts stand on it. @throws Error where a module script does: it would not run from disk */
export function scriptNeeds(file: string, html: string): ScriptNeeds {
  if (/<script[^>]*type="module"/.test(html)) {
    throw new Error(
      `${file} has a module script, which browsers do not load from a folder; put the code in src/site or src/island`,
    );
  }
  return { calculators: named(html, 'calculator'), parts: named(html, 'part') };
}

/** The source of a page's one script. */
export function entryFor({ calculators, parts }: ScriptNeeds): string {
  const lines = ["import './src/site/start.ts';"];
  if (calculators.length > 0) {
    lines.push("import { hydrateAll } from './src/island/hydrate.ts';");
    calculators.forEach((id, i) => lines.push(`import calculator${i} from './src/calculators/${id}/index.ts';`));
    lines.push(`hydrateAll([${calculators.map((_, i) => `calculator${i}`).join(', ')}]);`);
  }
  parts.forEach((name, i) => {
    lines.push(`import { hydratePart as part${i} } from './src/site/${name}/hydrate.ts';`);
    lines.push(`document.querySelectorAll('[data-part="${name}"]').forEach((root) => part${i}(root));`);
  });
  return lines.join('\n');
}

/** Bundles an entry into one classic script and returns its path in the build. */
export async function bundleFor(entry: string, root: string, dist: string): Promise<string> {
  const ids = [...entry.matchAll(/calculators\/([a-z0-9-]+)\/index\.ts/g)].map((match) => match[1] as string);
  const calculators = await declarations(ids, root);
  const { outputFiles } = await build({
    stdin: { contents: entry, resolveDir: root, sourcefile: 'page.ts', loader: 'ts' },
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    minify: true,
    legalComments: 'none',
    tsconfig: `${root}tsconfig.json`,
    plugins: [unusedViews(calculators), leaveOutServerWords(standingWords(calculators)), pureCalls],
    // Stylesheets are linked by the page; the server's render has seen to it.
    loader: { '.css': 'empty' },
  });
  // A second look at what is one closed script by now: a tenth less of a guide's than the bundler leaves.
  const { code: text = '' } = await minify(outputFiles[0]?.text ?? '', { ecma: 2022, toplevel: true });
  const path = `_astro/page-${createHash('sha256').update(text).digest('hex').slice(0, 10)}.js`;
  await mkdir(`${dist}_astro`, { recursive: true });
  await writeFile(dist + path, text);
  return path;
}
