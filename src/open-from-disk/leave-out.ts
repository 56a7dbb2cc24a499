import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';
import ts from 'typescript';
import { withPureCalls } from './pure-calls.ts';
import type { StandingWords } from './standing-words.ts';

/**
 * Words that the server has typeset already and no script reads: formulas of the worked steps, assumptions, sources, and
 * where a material number comes from.
 * The declarations keep them, the pages' scripts do not carry them.
 */
const LEFT_OUT: readonly { file: RegExp; names: ReadonlySet<string> }[] = [
  { file: /src\/calculators\/(?:[^/]+\/steps[^/]*|[^/]+-steps?)\.ts$/, names: new Set(['says', 'formula', 'numbers']) },
  { file: /src\/calculators\/[^/]+\/index\.ts$/, names: new Set(['assumptions', 'sources', 'formulas']) },
  { file: /shared\/src\/material\/[^/]+\.ts$/, names: new Set() },
];

const isText = (node: ts.Node): boolean =>
  ts.isStringLiteralLike(node) || (ts.isBinaryExpression(node) && isText(node.left) && isText(node.right));
const isListOfText = (node: ts.Node): boolean => ts.isArrayLiteralExpression(node) && node.elements.every(isText);

/** Kind, source and note of a material number. */
const isOrigin = (node: ts.Node): boolean =>
  isText(node) && ts.isCallExpression(node.parent) && node.parent.expression.getText() === 'materialValue';

/** What literal text says, put together where it is written in pieces. */
const said = (node: ts.Node): string =>
  ts.isBinaryExpression(node) ? said(node.left) + said(node.right) : (node as ts.StringLiteralLike).text;

/** The file with those words and sentences emptied. Only literal text goes: what is computed stays. */
export function withoutServerWords(
  text: string,
  names: ReadonlySet<string>,
  sentences: ReadonlySet<string> = new Set(),
  kind = ts.ScriptKind.TS,
): string {
  const tree = ts.createSourceFile('file.ts', text, ts.ScriptTarget.Latest, true, kind);
  const cuts: { from: number; to: number; by: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node) && names.has(node.name.getText())) {
      const { initializer } = node;
      const by = isText(initializer) ? "''" : isListOfText(initializer) ? '[]' : undefined;
      if (by) return void cuts.push({ from: initializer.getStart(), to: initializer.getEnd(), by });
    }
    if (isOrigin(node) || (isText(node) && sentences.has(said(node))))
      return void cuts.push({ from: node.getStart(), to: node.getEnd(), by: "''" });
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return cuts.reverse().reduce((held, { from, to, by }) => held.slice(0, from) + by + held.slice(to), text);
}

/** Esbuild's door to it, for a page on which these words stand already. */
export const leaveOutServerWords = ({ sentences, labels }: StandingWords): Plugin => ({
  name: 'leave-out-server-words',
  setup({ onLoad }) {
    onLoad({ filter: /src[\\/](calculators|material)[\\/].*\.tsx?$/ }, async ({ path }) => {
      const file = path.replaceAll('\\', '/');
      const names = LEFT_OUT.find((rule) => rule.file.test(file))?.names ?? new Set();
      const [loader, kind] = path.endsWith('x')
        ? (['tsx', ts.ScriptKind.TSX] as const)
        : (['ts', ts.ScriptKind.TS] as const);
      const words = file.endsWith('inputs.ts') ? new Set([...sentences, ...labels]) : sentences;
      const left = withoutServerWords(await readFile(path, 'utf8'), names, words, kind);
      // What only the server read falls away with its words.
      return { contents: withPureCalls(left, kind), loader };
    });
  },
});
