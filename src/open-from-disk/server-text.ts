import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

/** Of a worked step the browser needs the slots alone: the formula is typeset at build. */
const OF_STEP = new Set(['says', 'formula', 'numbers']);
/** Of a calculator it never reads these lists: they are printed at build. */
const OF_CALCULATOR = new Set(['assumptions', 'sources', 'formulas']);

const named = (object: ts.ObjectLiteralExpression, name: string) =>
  object.properties.some((property) => property.name && ts.isIdentifier(property.name) && property.name.text === name);

/** What to leave of a property, or nothing where it stays. */
function emptied(object: ts.ObjectLiteralExpression, name: string, value: ts.Expression): string | undefined {
  const step = named(object, 'slots') && OF_STEP.has(name) && ts.isStringLiteralLike(value);
  const list = named(object, 'compute') && OF_CALCULATOR.has(name) && ts.isArrayLiteralExpression(value);
  return step ? "''" : list ? '[]' : undefined;
}

/** Kind, source and note of a material number: the list of materials prints them at build. */
const isMaterialText = (node: ts.Node): boolean =>
  ts.isStringLiteralLike(node) &&
  ts.isCallExpression(node.parent) &&
  ts.isIdentifier(node.parent.expression) &&
  node.parent.expression.text === 'materialValue';

/**
 * The source of a calculator or of materials without the text that only the build reads. What stands plainly in a
 * declaration goes; what a helper makes stays.
 */
export function withoutServerText(source: string): string {
  const tree = ts.createSourceFile('calculator.tsx', source, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const cuts: { from: number; to: number; text: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node) && ts.isIdentifier(node.name)) {
      const text = emptied(node.parent, node.name.text, node.initializer);
      if (text !== undefined) cuts.push({ from: node.initializer.getStart(), to: node.initializer.end, text });
    }
    if (isMaterialText(node)) cuts.push({ from: node.getStart(), to: node.end, text: "''" });
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return cuts.reduceRight((whole, { from, to, text }) => whole.slice(0, from) + text + whole.slice(to), source);
}

/** Leaves that text out of what the browser loads. */
export const serverText: Plugin = {
  name: 'server-text',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/](calculators|material)[\\/].*\.tsx?$/ }, async ({ path }) => ({
      contents: withoutServerText(await readFile(path, 'utf8')),
      loader: path.endsWith('x') ? 'tsx' : 'ts',
    }));
  },
};
