import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { field, figure, openSheet, press } from './sheet.ts';
import { expect, test } from './site.ts';

const PAGES = ['frame.html', 'revisions.html', 'card.html'];

const unfold = (tab: Page, which = 'details') =>
  tab.locator(which).evaluateAll((all) => all.forEach((one) => ((one as HTMLDetailsElement).open = true)));

test('a phone: sections start shut, the answer stays at the foot, and no focus goes under it or unseen', async ({
  page: tab,
  places,
}) => {
  await tab.setViewportSize({ width: 390, height: 700 });
  await openSheet(tab, `${places.http}frame.html`);
  await expect(tab.locator('.record > details[open]')).toHaveCount(0);
  await tab.locator('#sheet-root > summary').click();
  await tab.locator('#sheet-standoffs > summary').click();
  await expect(tab.locator('.glance')).toBeInViewport();
  await tab.locator('#frame-choice').focus();
  const reached: string[] = [];
  for (let i = 0; i < 110; i++) {
    await tab.keyboard.press('Tab');
    const seen = await tab.evaluate(() => {
      const at = document.activeElement as HTMLElement;
      const { left, top, width, height } = at.getBoundingClientRect();
      const hit = document.elementFromPoint(left + Math.min(width, 20) / 2, top + height / 2);
      return {
        id: at.id || at.textContent.trim(),
        uncovered: hit !== null && (at.contains(hit) || hit.contains(at)),
        outlined: getComputedStyle(at).outlineStyle !== 'none',
      };
    });
    expect(seen, `tab ${i}`).toMatchObject({ uncovered: true, outlined: true });
    reached.push(seen.id);
    if (seen.id.startsWith('All-up')) break;
  }
  // Bar first, then the record from top to bottom, then the answer.
  const order = ['Next revision', 'Save as a file', 'Arms', 'f-arm-root-screwSpacing', 'f-body-standoff-length'];
  expect(reached.filter((id) => order.includes(id))).toEqual(order);
  expect(reached.at(-1)).toMatch(/^All-up/);
});

test('the record unfolded, with a field at fault: no axe finding, and contrast enough in the dark', async ({
  page: tab,
  places,
}) => {
  test.setTimeout(120_000);
  await openSheet(tab, `${places.http}frame.html`);
  await press(tab, 'Next revision');
  await unfold(tab, '.record details, .case:first-child details');
  await field(tab, 'Tube, wall').fill('abc');
  for (const colorScheme of ['light', 'dark'] as const) {
    await tab.emulateMedia({ colorScheme });
    const axe = new AxeBuilder({ page: tab }).setLegacyMode(true);
    const { violations } = await (colorScheme === 'light' ? axe : axe.withRules(['color-contrast'])).analyze();
    expect(
      violations.map(
        ({ id, nodes }) =>
          `${id}: ${nodes
            .map(({ html }) => html)
            .slice(0, 3)
            .join(' | ')}`,
      ),
      colorScheme,
    ).toEqual([]);
  }
});

test('everything unfolded: no sideways scroll on any of the pages at any width', async ({ page: tab, places }) => {
  for (const page of PAGES) {
    await tab.goto(places.http + page);
    for (const width of [390, 820, 1440]) {
      await tab.setViewportSize({ width, height: 900 });
      await unfold(tab);
      const over = await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, `${page} at ${width} px`).toBeLessThanOrEqual(0);
    }
  }
});

test('three revisions: each neighbouring pair is drawn and told, and the page says which', async ({
  page: tab,
  places,
}) => {
  await tab.goto(`${places.http}revisions.html`);
  const drawn = async () =>
    (await tab.locator('.figure svg').evaluateAll((all) => all.map((svg) => svg.innerHTML))).join();
  const told = tab.getByRole('textbox', { name: 'Release notes' });
  const pair = tab.getByLabel('Pair to draw and to tell');
  await expect(tab.locator('.which').first()).toHaveText('Before: Dunnock C (sample). After: Dunnock D (sample).');
  await expect(told).toHaveValue(/^Dunnock D, compared with Dunnock C\n/);
  await expect(pair).toHaveCount(0);
  const two = await drawn();
  await tab.getByLabel('And beside them').selectOption('Dunnock Flat A (sample)');
  await expect(pair.locator('option')).toHaveText([
    'Dunnock C (sample), then Dunnock D (sample)',
    'Dunnock D (sample), then Dunnock Flat A (sample)',
  ]);
  expect(await drawn()).toBe(two);
  await pair.selectOption({ index: 1 });
  await expect(told).toHaveValue(/^Dunnock Flat A, compared with Dunnock D\n/);
  await expect(tab.locator('.which')).toHaveText([
    'Before: Dunnock D (sample). After: Dunnock Flat A (sample).',
    'From Dunnock D (sample) to Dunnock Flat A (sample).',
  ]);
  expect(await drawn()).not.toBe(two);
  // Without the third there is one pair again.
  await tab.getByLabel('And beside them').selectOption('none');
  await expect(told).toHaveValue(/^Dunnock D, compared with Dunnock C\n/);
  await expect(pair).toHaveCount(0);
  expect(await drawn()).toBe(two);
});

test('what a gram buys: says where the record has no price or no mass, and how prices of tubes go', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  await unfold(tab, '.outcome details, details:has(.gains)');
  const cells = (step: RegExp) => tab.locator('.gains tbody tr', { hasText: step }).locator('td').allInnerTexts();
  expect((await cells(/standoff screws of class/))[5]).toBe('not priced');
  const thread = await cells(/arm screws M4/);
  expect([thread[3], thread[5]]).toEqual(['not weighed', 'not priced']);
  expect(Number((await cells(/next stock tube/))[5])).toBeGreaterThan(0);
  await expect(tab.getByText(/takes its price per metre along, in proportion to mass/)).toHaveCount(1);
});

test('the card prints on two sheets of A4 at most, dark on white whatever the reader chose', async ({
  page: tab,
  places,
}) => {
  await tab.goto(`${places.http}card.html`);
  await tab.evaluate(() => (document.documentElement.dataset['theme'] = 'dark'));
  const pdf = (await tab.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(2);
  await tab.emulateMedia({ media: 'print' });
  const ink = await tab.evaluate(() => getComputedStyle(document.querySelector('h1') as Element).color);
  expect(Math.max(...(ink.match(/\d+/g) ?? ['255']).map(Number))).toBeLessThan(80);
  await expect(tab.locator('.site-head')).toBeHidden();
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  for (const page of PAGES) {
    test(`${page}: shows the sample whole, and no button that does nothing`, async ({ page: tab, places }) => {
      await tab.goto(places.disk + page);
      const text = await tab.locator('.desk').innerText();
      for (const word of ['612', 'Flat drop on the arm ends', 'Nose-first hit']) expect(text).toContain(word);
      expect(text).not.toMatch(/NaN|undefined|Infinity/);
      expect(await tab.locator('.figure svg').count()).toBe(2);
      await expect(tab.locator('.desk').getByRole('button')).toHaveCount(0);
      if (page === 'frame.html') {
        await expect(field(tab, 'Tube, wall')).toHaveValue('1');
        await expect(figure(tab, 'Wheelbase')).toHaveText(/225/);
      }
    });
  }
});
