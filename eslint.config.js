import astro from 'eslint-plugin-astro';
import { importX } from 'eslint-plugin-import-x';
import tseslint from 'typescript-eslint';

/** Imports go one way: pages -> calculators -> island -> shared. Each zone: what `target` must not import from. */
const oneWay = [
  { target: './shared', from: ['./src', './content', './tests'], message: 'The package knows nothing of the site.' },
  {
    target: './src/island',
    from: [
      './src/calculators',
      './src/drawings',
      './src/frame',
      './src/components',
      './src/layouts',
      './src/pages',
      './src/site',
      './tests',
    ],
    message: 'The island renders any calculator and knows none.',
  },
  {
    target: './src/drawings',
    from: [
      './src/calculators',
      './src/frame',
      './src/components',
      './src/layouts',
      './src/pages',
      './src/site',
      './tests',
    ],
    message: 'Views of a frame are drawn from its outline alone.',
  },
  {
    target: './src/calculators',
    from: ['./src/frame', './src/components', './src/layouts', './src/pages', './src/site', './tests'],
    message: 'A calculator is a declaration: it builds on the island and the package alone.',
  },
  {
    target: './src/frame',
    from: ['./src/calculators', './src/components', './src/layouts', './src/pages', './src/site', './tests'],
    message: 'A reader’s frames know nothing of the pages that show them, nor of any calculator.',
  },
];

export default tseslint.config(
  { ignores: ['dist', '.astro', 'node_modules'] },
  ...tseslint.configs.strict,
  ...astro.configs.recommended,
  {
    plugins: { 'import-x': importX },
    rules: {
      'import-x/no-restricted-paths': ['error', { zones: oneWay }],
      // Matrix code indexes where bounds are plain from the loop; a check there would hide the formula.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      'no-console': ['error', { allow: ['info', 'error'] }],
    },
  },
  {
    // The package runs anywhere: no import from outside itself, not even a library.
    files: ['shared/src/**'],
    rules: {
      'no-restricted-imports': ['error', { patterns: [{ regex: '^[^.]', message: 'The package has no dependency.' }] }],
    },
  },
);
