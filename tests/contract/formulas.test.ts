import { createRequire } from 'node:module';
import { expect, test } from 'vitest';

const here = createRequire(import.meta.url);

test('the plugin that typesets articles uses the KaTeX whose stylesheet the pages load', () => {
  // Two versions side by side build without a word, and fractions overlap.
  const plugin = createRequire(here.resolve('rehype-katex'));
  expect(plugin.resolve('katex')).toBe(here.resolve('katex'));
});
