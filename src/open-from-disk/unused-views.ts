import type { Plugin } from 'esbuild';
import type { AnyCalculator } from '../island/declaration.ts';

/** Parts of the island by what a calculator must declare to be shown with them. */
const VIEWS: Readonly<Record<string, 'plots' | 'maps' | 'tables' | 'carriesTo'>> = {
  Plot: 'plots',
  ContourMap: 'maps',
  DataTable: 'tables',
  GoOn: 'carriesTo',
};

/** Names of the parts that nothing on a page with these calculators is shown with. */
export const unusedOn = (calculators: readonly AnyCalculator[]): readonly string[] =>
  Object.keys(VIEWS).filter((view) => !calculators.some((calculator) => calculator[VIEWS[view]!]?.length));

/** Leaves those parts, and the libraries that they stand on, out of the page's script. */
export const unusedViews = (calculators: readonly AnyCalculator[]): Plugin => ({
  name: 'unused-views',
  setup({ onLoad }) {
    for (const view of unusedOn(calculators))
      onLoad({ filter: new RegExp(`[\\\\/]island[\\\\/]${view}\\.tsx$`) }, () => ({
        contents: `export const ${view} = () => null;`,
      }));
  },
});
