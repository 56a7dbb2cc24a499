import type { Locator, Page } from '@playwright/test';
import { expect, guides, test } from './site.ts';

const calculators = (tab: Page) => tab.locator('[data-calculator]');
const fields = (calculator: Locator) => calculator.locator('.fields input[type=text]');
const amounts = async (calculator: Locator) => (await calculator.locator('.results').innerText()).replace(/\s+/g, ' ');
const slots = async (calculator: Locator) => (await calculator.locator('[data-slot]').allTextContents()).join('|');
const drawing = async (calculator: Locator) =>
  (await calculator.locator('.figure, .plot').allInnerTexts()).join() +
  (await calculator.locator('.figure svg').first().innerHTML());

/** The link that the button copies: from the clipboard, or from the box that opens where the browser has none. */
async function copiedLink(tab: Page, calculator: Locator): Promise<string> {
  await tab
    .context()
    .grantPermissions(['clipboard-read', 'clipboard-write'])
    .catch(() => undefined);
  await calculator.getByRole('button', { name: 'Copy link' }).click();
  const message = calculator.locator('.message');
  await expect(message).not.toHaveText('');
  const byHand = calculator.locator('.by-hand');
  return (await byHand.count()) > 0 ? byHand.inputValue() : tab.evaluate(() => navigator.clipboard.readText());
}

for (const place of ['http', 'disk'] as const) {
  for (const guide of guides) {
    test(`${guide} (${place}): a value changed by keyboard moves results, steps and drawing; its link opens fresh with the same numbers`, async ({
      page: tab,
      places,
      context,
    }) => {
      await tab.goto(places[place] + guide);
      for (const calculator of await calculators(tab).all()) {
        const before = {
          amounts: await amounts(calculator),
          slots: await slots(calculator),
          drawing: await drawing(calculator),
        };
        // Some inputs change nothing that is shown at the defaults: the first that does is the one.
        let changed = false;
        for (const field of await fields(calculator).all()) {
          await field.focus();
          await tab.keyboard.press('ArrowUp');
          await tab.keyboard.press('ArrowUp');
          await expect(calculator.getByRole('button', { name: 'Undo' })).toHaveAttribute('aria-disabled', /false|true/);
          changed = (await amounts(calculator)) !== before.amounts && (await slots(calculator)) !== before.slots;
          if (changed) break;
        }
        expect(changed).toBe(true);
        expect(await drawing(calculator)).not.toBe(before.drawing);
        const after = await amounts(calculator);
        const link = await copiedLink(tab, calculator);
        expect(link).toContain(`#${await calculator.getAttribute('data-calculator')}?`);
        expect(link.split('?')[1]).toMatch(/^[^<>\s]+$/);

        const fresh = await context.newPage();
        await fresh.goto(link);
        await expect
          .poll(() => amounts(fresh.locator(`[data-calculator="${link.split('#')[1]?.split('?')[0]}"]`)))
          .toBe(after);
        await fresh.close();

        await calculator.getByRole('button', { name: 'Reset' }).click();
        await expect.poll(() => amounts(calculator)).toBe(before.amounts);
        await calculator.getByRole('button', { name: 'Undo' }).click();
        await expect.poll(() => amounts(calculator)).toBe(after);
      }
    });
  }
}

const NONSENSE = ['', 'abc', '-', '1.2.3', '1e308', '5 parsec', '<img src=x onerror=alert(1)>', '9'.repeat(400), '-7'];

// Fields are the island's, alike in all guides: one in three is driven here.
for (const guide of guides.filter((_, i) => i % 3 === 0)) {
  test(`${guide}: nonsense in a field is named there, the last good result stays greyed, and nothing typed is lost`, async ({
    page: tab,
    places,
  }) => {
    await tab.goto(places.http + guide);
    for (const calculator of await calculators(tab).all()) {
      const good = await calculator.locator('.results').innerText();
      const field = calculator.locator('.fields input[type=text]').first();
      const proper = await field.inputValue();
      for (const text of NONSENSE) {
        await field.fill(text);
        if ((await field.getAttribute('aria-invalid')) !== 'true') {
          // "-7" is a proper angle or offset in some calculators; everything else is wrong everywhere.
          expect(text).toBe('-7');
          continue;
        }
        const described = (await field.getAttribute('aria-describedby'))?.split(' ')[0];
        await expect(tab.locator(`[id="${described}"]`)).toHaveText(/\S{3}/);
        await expect(calculator.locator('.calc')).toHaveClass(/stale/);
        expect(await calculator.locator('.results').innerText()).toBe(good);
        await field.blur();
        await expect(field).toHaveValue(text);
      }
      await field.fill(proper);
      await expect(calculator.locator('.calc')).not.toHaveClass(/stale/);
    }
  });
}

// The contract tests take every calculator to its corners; here the browser shows that some of each chapter come through.
for (const guide of guides.filter((_, i) => i % 5 === 0)) {
  test(`${guide}: no corner of the ranges gives NaN, an empty result or an error without words`, async ({
    page: tab,
    places,
  }) => {
    await tab.goto(places.http + guide);
    for (const calculator of await calculators(tab).all()) {
      for (const slider of await calculator.locator('.fields input[type=range]').all()) {
        for (const key of ['Home', 'End']) {
          await slider.focus();
          await tab.keyboard.press(key);
          expect(await calculator.innerText()).not.toMatch(/NaN|Infinity|undefined|\[object/);
          const stale = await calculator.locator('.calc.stale').count();
          if (stale > 0) await expect(calculator.locator('.stale-note')).toHaveText(/\S{3}/);
        }
        await calculator.getByRole('button', { name: 'Reset' }).click();
      }
    }
  });
}

test('links: unknown, cut, mistyped and hostile parts are named as text, the rest is used, nothing runs', async ({
  page: tab,
  places,
}) => {
  await tab.goto(places.http + guides[0]);
  const calculator = calculators(tab).first();
  const id = await calculator.getAttribute('data-calculator');
  const key = (await fields(calculator).first().getAttribute('id'))?.slice(`${id}-`.length);
  const hostile = [
    'nosuch=3mm',
    '%E0%A4%A',
    `${key}=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E`,
    `${key}=1e308`,
    `${key}=`,
    '__proto__=1',
    'constructor=2mm',
    '<script>alert(1)</script>',
    `${key}=2kg`,
  ];
  for (const part of hostile) {
    await tab.goto('about:blank');
    await tab.goto(`${places.http}${guides[0]}#${id}?${part}`);
    await expect(calculator.locator('.notices p').first()).toHaveText(/\S{3}/);
    expect(await calculator.locator('.notices img, .notices script').count()).toBe(0);
    await expect(calculator.locator('.calc')).not.toHaveClass(/stale/);
  }
  await tab.goto('about:blank');
  await tab.goto(`${places.http}${guides[0]}#no-such-calculator?x=1mm`);
  await expect(tab.locator('.notices p').first()).toHaveText(/no-such-calculator/);
});

test('units: the choice is shown everywhere on the page, remembered, and typed units of the other system are understood', async ({
  page: tab,
  places,
}) => {
  await tab.goto(places.http + guides[0]);
  const calculator = calculators(tab).first();
  await calculator.locator('.units summary').click();
  await calculator.getByLabel('Inch', { exact: true }).check();
  for (const other of await calculators(tab).all())
    await expect(other.locator('.fields .unit').filter({ hasText: /^in$/ }).first()).toBeVisible();
  await tab.reload();
  const length = calculators(tab)
    .first()
    .locator('.entry', { has: tab.locator('.unit', { hasText: /^in$/ }) })
    .first()
    .locator('input');
  const shown = Number(await length.inputValue());
  await length.fill(`${shown * 25.4} mm`);
  await length.blur();
  expect(Number(await length.inputValue())).toBeCloseTo(shown, 4);
});

test('a plot is read by keyboard', async ({ page: tab, places }) => {
  await tab.goto(places.http + guides[0]);
  const plot = tab.locator('.plot').first();
  const svg = plot.getByRole('slider');
  const before = await plot.locator('.readout').innerText();
  await svg.focus();
  await tab.keyboard.press('ArrowRight');
  await expect(plot.locator('.readout')).not.toHaveText(before, { useInnerText: true });
  await tab.keyboard.press('Home');
  const home = await svg.getAttribute('aria-valuenow');
  await tab.keyboard.press('End');
  expect(await svg.getAttribute('aria-valuenow')).not.toBe(home);
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  for (const guide of guides) {
    test(`${guide}: reads whole, with its worked example and typeset formulas`, async ({ page: tab, places }) => {
      await tab.goto(places.disk + guide);
      expect(await tab.locator('.katex .katex-html').count()).toBeGreaterThan(3);
      expect(await tab.locator('.katex math').count()).toBeGreaterThan(3);
      expect(await tab.locator('.katex-error').count()).toBe(0);
      for (const calculator of await calculators(tab).all()) {
        expect(await calculator.innerText()).toMatch(/\d/);
        expect(await calculator.innerText()).not.toMatch(/NaN|undefined|HH\d+HH/);
        expect(await calculator.locator('[data-slot]').count()).toBeGreaterThan(1);
        await expect(calculator.getByRole('button')).toHaveCount(0);
      }
    });
  }
});
