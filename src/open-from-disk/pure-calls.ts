import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';

/**
 * The library makes some of its functions by calls as it loads: `const blur2 = Blur2(blurf)`. It declares that loading it
 * has no effect, yet esbuild keeps each call. Marked as pure, those that a page does not use fall away.
 */
export const withPureCalls = (text: string): string =>
  text.replace(/^((?:const|let|var) \w+ = )(?=[A-Za-z]\w*\()/gm, '$1/* @__PURE__ */ ');

/** Esbuild's door to it. */
export const pureCalls: Plugin = {
  name: 'pure-calls',
  setup({ onLoad }) {
    onLoad({ filter: /node_modules[\\/]d3-(array|contour)[\\/]dist[\\/][^\\/]+\.mjs$/ }, async ({ path }) => ({
      contents: withPureCalls(await readFile(path, 'utf8')),
      loader: 'js',
    }));
  },
};
