/** What the bundles do in a build, for `astro dev`: finds what stands on the page and brings it to life. */
import { hydrateAll } from '../island/hydrate.ts';
import type { AnyCalculator } from '../island/declaration.ts';
import '../island/full-size.ts';
import '../island/link-reader.ts';
import '../site/start.ts';

const calculators = import.meta.glob<{ default: AnyCalculator }>('../calculators/*/index.ts');
const parts = import.meta.glob<{ hydratePart: (root: Element) => void }>('../site/*/hydrate.ts');

const shown = [...document.querySelectorAll<HTMLElement>('[data-calculator]')].map(
  (element) => element.dataset['calculator'],
);
const loaded = await Promise.all([...new Set(shown)].map((id) => calculators[`../calculators/${id}/index.ts`]?.()));
hydrateAll(loaded.flatMap((module) => (module ? [module.default] : [])));

for (const root of document.querySelectorAll<HTMLElement>('[data-part]')) {
  const module = await parts[`../site/${root.dataset['part']}/hydrate.ts`]?.();
  module?.hydratePart(root);
}
