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
  test: {
    // Only ends a hang: beam models over hundreds of inputs take long on a busy machine.
    testTimeout: 60_000,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/site/**', 'node_modules/**'],
  },
});
