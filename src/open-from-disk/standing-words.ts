import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'esbuild';
import type { AnyCalculator, Input } from '../island/declaration.ts';

/** The calculators with these ids as a script has them, with the plugins that make it. */
export async function declarations(
  ids: readonly string[],
  root: string,
  plugins: Plugin[] = [],
): Promise<AnyCalculator[]> {
  const imports = ids.map((id, i) => `import calculator${i} from './src/calculators/${id}/index.ts';`);
  const { outputFiles } = await build({
    stdin: {
      contents: `${imports.join('\n')}\nexport default [${ids.map((_, i) => `calculator${i}`).join(', ')}];`,
      resolveDir: root,
      loader: 'ts',
    },
    bundle: true,
    write: false,
    format: 'esm',
    tsconfig: `${root}tsconfig.json`,
    plugins,
    loader: { '.css': 'empty' },
  });
  const folder = await mkdtemp(join(tmpdir(), 'frameworthy-'));
  try {
    const file = join(folder, 'calculators.mjs');
    await writeFile(file, outputFiles[0]?.text ?? '');
    const module = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as { default: AnyCalculator[] };
    return module.default;
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Shorter ones save nothing, and may be a name elsewhere. */
const SHORT = 10;

/**
 * What stands on a page with these calculators from the start, whatever the values: help and place in the frame of fields,
 * meanings, captions. The island completes its declarations from there. Those of a field that may be hidden stay.
 */
export function standingWords(calculators: readonly AnyCalculator[]): ReadonlySet<string> {
  const inputs = calculators.flatMap((calculator) => Object.values(calculator.inputs as Record<string, Input>));
  const ofInputs = (some: readonly Input[]) => some.flatMap(({ help, frameField = '' }) => [help, frameField]);
  const late = new Set(ofInputs(inputs.filter((input) => input.shownWhen)));
  const words = [
    ...ofInputs(inputs),
    ...calculators.flatMap(({ figureCaption, outputs, plots, maps = [], tables = [] }) => [
      figureCaption,
      ...outputs.map((output) => output.meaning),
      ...[...plots, ...maps, ...tables].map(({ caption }) => caption),
    ]),
  ];
  return new Set(words.filter((text) => text.length >= SHORT && !late.has(text)));
}
