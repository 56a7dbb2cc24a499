/** Where the built site is found by the tests: over http at the root, under a sub-path, and in an awkward folder. */
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { test as base, expect, type Page } from '@playwright/test';
import { listen, staticServer } from '../../src/open-from-disk/serve.ts';

export const DIST = resolve('dist');

/** Every page of the build, as paths with forward slashes. */
export const pages = readdirSync(DIST, { recursive: true })
  .map((file) => String(file).split(sep).join('/'))
  .filter((file) => file.endsWith('.html'))
  .sort();

export const formulaPages = pages.filter((page) => page.startsWith('formulas/'));
/** Everything but the listings of code, which are all made alike. */
export const readingPages = pages.filter((page) => !page.startsWith('formulas/'));
/** Articles with calculators. */
export const guides = readingPages.filter((page) => page.includes('/'));

interface Places {
  /** Address of the site over http, ending in a slash. */
  http: string;
  /** The same under a sub-path. */
  below: string;
  /** The same from a folder with a space and a letter outside Latin in its path. */
  disk: string;
}

export const test = base.extend<{ complaints: string[] }, { places: Places }>({
  places: [
    async ({}, use) => {
      const root = staticServer(DIST);
      const below = staticServer(DIST, '/some/place/');
      const awkward = await mkdtemp(join(tmpdir(), 'my frames ж '));
      const folder = join(awkward, 'frameworthy');
      await cp(DIST, folder, { recursive: true });
      await use({
        http: `http://localhost:${await listen(root, 0)}/`,
        below: `http://localhost:${await listen(below, 0)}/some/place/`,
        disk: `${pathToFileURL(folder).href}/`,
      });
      root.close();
      below.close();
      await rm(awkward, { recursive: true });
    },
    { scope: 'worker' },
  ],
  /** What the console said, what threw, what was asked for outside the site. Checked empty after each test. */
  complaints: [
    async ({ page, places }, use) => {
      const complaints: string[] = [];
      watch(page, places, complaints);
      await use(complaints);
      expect(complaints).toEqual([]);
    },
    { auto: true },
  ],
});

export function watch(page: Page, places: Places, complaints: string[]): void {
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`threw: ${error.message}`));
  page.on('dialog', (dialog) => {
    complaints.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => {
    const inside =
      Object.values(places).some((place: string) => request.url().startsWith(place)) ||
      /^(data|blob):/.test(request.url());
    if (!inside) complaints.push(`asked for ${request.url()}`);
  });
  page.on('requestfailed', (request) => {
    // Leaving a page while its icon is on the way cuts that request short; that is no fault of the site.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') complaints.push(`failed: ${request.url()}`);
  });
}

export { expect };
