import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: {
    alias: {
      '~': fileURLToPath(new URL('./src', import.meta.url)),
      content: fileURLToPath(new URL('./content', import.meta.url)),
    },
  },
  esbuild: { jsx: 'automatic', jsxImportSource: 'preact' },
  test: { include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'], exclude: ['tests/site/**', 'node_modules/**'] },
});
