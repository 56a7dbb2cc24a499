import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

/** Whether esbuild would keep it, as what might have an effect: all but plain values and functions. */
function mayAct(node: ts.Node): boolean {
  if (ts.isFunctionLike(node)) return false;
  if (ts.isPropertyAccessExpression(node)) return !/^(Math|Number)\./.test(node.getText());
  if (ts.isCallExpression(node) || ts.isNewExpression(node) || ts.isElementAccessExpression(node)) return true;
  if (ts.isSpreadAssignment(node) || ts.isSpreadElement(node) || ts.isTemplateExpression(node)) return true;
  return ts.forEachChild(node, mayAct) ?? false;
}

/**
 * A library that makes its constants by calls as it loads, `const blur2 = Blur2(blurf)`, with each of them marked: nothing
 * happens but that value, so those that a page does not use may fall away.
 */
export function withPureCalls(text: string, kind = ts.ScriptKind.TS): string {
  const tree = ts.createSourceFile('file.ts', text, ts.ScriptTarget.Latest, true, kind);
  const made = tree.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) => [...declarationList.declarations])
    .flatMap(({ initializer }) => (initializer && mayAct(initializer) ? [initializer] : []));
  return made.reduceRight((held, value) => {
    const [from, to] = [value.getStart(), value.getEnd()];
    return `${held.slice(0, from)}/* @__PURE__ */ (() => (${held.slice(from, to)}))()${held.slice(to)}`;
  }, text);
}

/** Esbuild's door to it, for libraries of functions and values: loading them has no effect. */
export const pureCalls: Plugin = {
  name: 'pure-calls',
  setup({ onLoad }) {
    onLoad(
      { filter: /(node_modules[\\/]d3-(array|contour)[\\/]dist|shared[\\/]src)[\\/].*\.m?[jt]s$/ },
      async ({ path }) => ({ contents: withPureCalls(await readFile(path, 'utf8')), loader: 'ts' }),
    );
  },
};
