import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, formulaPages, guides, readingPages, test } from './site.ts';

const WIDTHS = [390, 820, 1440];
/** Rows of a table are made alike: axe weighs each cell, and the Checks page has tens of thousands. */
const ROWS = 8;

const thinTables = (tab: Page) =>
  tab.evaluate((most) => {
    for (const table of document.querySelectorAll('table'))
      [...table.querySelectorAll('tbody tr')].slice(most).forEach((row) => row.remove());
  }, ROWS);

/** No frames on our pages, so axe may run in the page itself, which is much faster than its default. */
const findings = async (tab: Page, rules?: string[]) => {
  const axe = new AxeBuilder({ page: tab }).setLegacyMode(true);
  const { violations } = await (rules ? axe.withRules(rules) : axe).analyze();
  return violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes
        .map((node) => node.html)
        .slice(0, 3)
        .join(' | ')}`,
  );
};

for (const page of readingPages) {
  test(`${page}: no axe finding, light and dark; no sideways scroll at any width`, async ({ page: tab, places }) => {
    test.setTimeout(180_000);
    await tab.emulateMedia({ colorScheme: 'light' });
    await tab.goto(places.http + page);
    for (const width of WIDTHS) {
      await tab.setViewportSize({ width, height: 900 });
      expect(
        await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth),
        `at ${width} px`,
      ).toBeLessThanOrEqual(0);
    }
    await thinTables(tab);
    expect(await findings(tab), 'light').toEqual([]);
    // The same page in other colours: nothing but contrast can differ.
    await tab.emulateMedia({ colorScheme: 'dark' });
    expect(await findings(tab, ['color-contrast']), 'dark').toEqual([]);
  });
}

// One template makes them all: one in three is looked at.
test('listings of formulas: no axe finding, no sideways scroll', async ({ page: tab, places }) => {
  test.setTimeout(180_000);
  await tab.setViewportSize({ width: 390, height: 900 });
  for (const page of formulaPages.filter((_, i) => i % 3 === 0)) {
    await tab.goto(places.http + page);
    expect(await findings(tab), page).toEqual([]);
    expect(await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth), page).toBeLessThanOrEqual(0);
  }
  expect(formulaPages.length).toBeGreaterThan(10);
});

// Over http each page is loaded for its own test above.
for (const place of ['below', 'disk'] as const) {
  test(`every page loads ${place === 'disk' ? 'from a folder' : 'under a sub-path'} with its styles, scripts and fonts`, async ({
    page: tab,
    places,
  }) => {
    test.setTimeout(120_000);
    for (const page of readingPages) {
      await tab.goto(places[place] + page);
      await expect(tab.locator('h1')).toBeVisible();
      expect(await tab.evaluate(() => getComputedStyle(document.body).fontFamily)).toContain('STIX');
      await expect(tab.locator('html')).toHaveClass(/scripted/);
      expect(await tab.evaluate(async () => (await document.fonts.ready).check('16px "STIX Two Text"'))).toBe(true);
    }
  });
}

test('links lead from the home page through every guide in reading order, from a folder', async ({
  page: tab,
  places,
}) => {
  await tab.goto(`${places.disk}index.html`);
  const titles = await tab.locator('.chapters ul a').allTextContents();
  expect(titles).toHaveLength(guides.length);
  await tab.locator('.chapters ul a').first().click();
  for (const [i, title] of titles.entries()) {
    await expect(tab.locator('h1')).toHaveText(title);
    if (i < titles.length - 1) await tab.getByRole('link', { name: /^Next: / }).click();
  }
});

test('the choice of light or dark is kept from page to page', async ({ page: tab, places }) => {
  await tab.goto(`${places.http}index.html`);
  const button = tab.locator('.theme-choice');
  await button.click();
  await button.click();
  await expect(button).toHaveText('Paper: dark');
  await tab.goto(`${places.http}checks.html`);
  await expect(tab.locator('html')).toHaveAttribute('data-theme', 'dark');
});

test('the home figure answers to a pull, by keyboard and by drag', async ({ page: tab, places }) => {
  await tab.goto(`${places.disk}index.html`);
  const caption = tab.locator('.pull figcaption');
  const before = await caption.textContent();
  await tab.getByLabel('Pull at the motor').press('ArrowRight');
  await expect(caption).not.toHaveText(before ?? '');
  const afterKey = await caption.textContent();
  const handle = await tab.locator('.pull-handle circle').boundingBox();
  if (!handle) throw new Error('the handle has no size');
  await tab.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
  await tab.mouse.down();
  await tab.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2 + 40, { steps: 4 });
  await tab.mouse.up();
  await expect(caption).not.toHaveText(afterKey ?? '');
});
