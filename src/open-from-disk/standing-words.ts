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

/** Words that a page's script need not carry. */
export interface StandingWords {
  /** Wherever a calculator writes them. */
  sentences: ReadonlySet<string>;
  /** Labels of fields: short enough to mean something else in another file, so these count in files of inputs alone. */
  labels: ReadonlySet<string>;
}

/** Shorter ones save nothing, and may be a name elsewhere. */
const SHORT = 10;

/**
 * What stands on a page with these calculators from the start, whatever the values: labels, help and places in the frame of
 * fields, meanings, captions. The island completes its declarations from there. Those of a field that may be hidden stay.
 */
export function standingWords(calculators: readonly AnyCalculator[]): StandingWords {
  const inputs = calculators.flatMap((calculator) => Object.values(calculator.inputs as Record<string, Input>));
  const ofInputs = (some: readonly Input[]) => some.flatMap(({ help, frameField = '' }) => [help, frameField]);
  const late = inputs.filter((input) => input.shownWhen);
  const stays = new Set([
    ...ofInputs(late),
    ...late.map(({ label }) => label),
    ...inputs.flatMap((input) => [input.group, ...('choices' in input ? Object.values(input.choices) : [])]),
  ]);
  const words = [
    ...ofInputs(inputs),
    ...calculators.flatMap(({ figureCaption, outputs, plots, maps = [], tables = [] }) => [
      figureCaption,
      ...outputs.map((output) => output.meaning),
      ...[...plots, ...maps, ...tables].map(({ caption }) => caption),
    ]),
  ];
  const standing = (all: readonly string[]) => new Set(all.filter((text) => text.length >= SHORT && !stays.has(text)));
  return { sentences: standing(words), labels: standing(inputs.map(({ label }) => label)) };
}
