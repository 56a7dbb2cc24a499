import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './site.ts';

const PAGE = 'body/drawings.html';
const save = (calculator: Locator) => calculator.getByRole('button', { name: 'Save at full size' });

/** What a fresh page of its own makes of the file: sizes in CSS millimetres, as a browser prints them. */
async function opened(tab: Page, svg: string) {
  const fresh = await tab.context().newPage();
  const complaints: string[] = [];
  fresh.on('request', (request) => complaints.push(request.url()));
  await fresh.setContent(svg);
  const measured = await fresh.evaluate(() => {
    const mm = 96 / 25.4;
    const middle = (name: string) => {
      const box = document.querySelector(`[data-name="${name}"] circle`)!.getBoundingClientRect();
      return { x: (box.x + box.width / 2) / mm, y: (box.y + box.height / 2) / mm };
    };
    const [a, b] = [middle('motor, front right'), middle('motor, rear left')];
    const texts = [...document.querySelectorAll('text')].map((text) => parseFloat(getComputedStyle(text).fontSize));
    const scale = (element: Element) => {
      const { a, b } = (element as SVGGraphicsElement).getScreenCTM()!;
      return Math.hypot(a, b) / mm;
    };
    return {
      apart: Math.hypot(a.x - b.x, a.y - b.y),
      heights: [...document.querySelectorAll('text')].map((text, i) => texts[i]! * scale(text)),
      width: document.querySelector('svg')!.getBoundingClientRect().width / mm,
    };
  });
  await fresh.close();
  return { ...measured, complaints };
}

for (const place of ['http', 'disk'] as const) {
  test(`a drawing is saved at full size (${place}), and follows the values`, async ({ page: tab, places }) => {
    await tab.goto(places[place] + PAGE);
    const calculator = tab.locator('[data-calculator="frame-drawing"]');
    for (const [gap, wheelbase] of [
      [undefined, 159 * Math.SQRT2],
      ['11', 140 * Math.SQRT2],
    ] as const) {
      if (gap) {
        await calculator.locator('#frame-drawing-tipGap').fill(gap);
        await calculator.locator('#frame-drawing-armLength').fill('60');
      }
      const [download] = await Promise.all([tab.waitForEvent('download'), save(calculator).click()]);
      expect(download.suggestedFilename()).toBe('frame-drawing.svg');
      const svg = readFileSync(await download.path(), 'utf8');
      const { apart, heights, width, complaints } = await opened(tab, svg);
      expect(Math.abs(apart - wheelbase)).toBeLessThan(0.05);
      expect(Math.min(...heights)).toBeGreaterThan(2.4);
      expect(Math.max(...heights)).toBeLessThan(5.5);
      expect(width).toBeGreaterThan(apart);
      expect(complaints).toEqual([]);
      await expect(calculator.locator('.save-drawing [role=status]')).toContainText('frame-drawing.svg');
      // For a reader whose browser swallows downloads without a word.
      expect(await calculator.locator('.save-drawing textarea').inputValue()).toBe(svg);
    }
  });
}

test('where the browser refuses, the text stands there to be copied', async ({ page: tab, places }) => {
  await tab.addInitScript(() => {
    URL.createObjectURL = () => {
      throw new Error('refused');
    };
  });
  await tab.goto(places.http + PAGE);
  const calculator = tab.locator('[data-calculator="frame-drawing"]');
  await save(calculator).click();
  const text = calculator.locator('.save-drawing textarea');
  await expect(text).toBeVisible();
  expect(await text.inputValue()).toMatch(/^<svg xmlns/);
});

test('dark pages save a light drawing; a figure that is no drawing to scale offers none', async ({
  page: tab,
  places,
}) => {
  await tab.emulateMedia({ colorScheme: 'dark' });
  await tab.goto(places.http + PAGE);
  const calculator = tab.locator('[data-calculator="frame-drawing"]');
  await save(calculator).click();
  const svg = await calculator.locator('.save-drawing textarea').inputValue();
  expect(svg).toContain('stroke="#000"');
  expect(svg).not.toMatch(/var\(|currentColor|class=/);
  await tab.goto(`${places.http}materials/laminates.html`);
  await expect(save(tab.locator('[data-calculator="laminate"]'))).toBeHidden();
});
