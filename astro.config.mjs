import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { reachableFormulas } from './src/components/reachable-formulas.ts';
import { openFromDisk } from './src/open-from-disk/index.ts';

export default defineConfig({
  output: 'static',
  // Files, not folders: a folder's address needs a server to find its index.
  build: { format: 'file', inlineStylesheets: 'never' },
  markdown: {
    syntaxHighlight: false,
    remarkPlugins: [remarkMath],
    rehypePlugins: [[rehypeKatex, { strict: 'error' }], reachableFormulas],
  },
  integrations: [mdx(), preact(), openFromDisk()],
  devToolbar: { enabled: false },
});
