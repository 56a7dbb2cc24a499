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
    const boxes = (selector: string) =>
      [...document.querySelectorAll(selector)].map((part) => part.getBoundingClientRect());
    const round = (length: number) => Math.round((length / mm) * 100) / 100;
    const posts = boxes('[data-name="standoff"] circle');
    const span = (places: number[]) => Math.max(...places) - Math.min(...places);
    // The second view: plates as bars.
    const bars = boxes('svg > g:last-of-type [data-layer="plate"] path');
    return {
      standoffs: [posts[0]!.width, span(posts.map(({ x }) => x)), span(posts.map(({ y }) => y))].map(round),
      plates: (Math.max(...bars.map(({ bottom }) => bottom)) - Math.min(...bars.map(({ top }) => top))) / mm,
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

for (const place of ['http', 'disk'] as const) {
  test(`the frame sheet saves its views at true scale in millimetres (${place})`, async ({ page: tab, places }) => {
    await tab.goto(`${places[place]}frame.html`);
    const drawn = tab.locator('section[aria-labelledby="drawn"]');
    const scripts = () => tab.locator('script[src]').count();
    const before = await scripts();
    const [download] = await Promise.all([tab.waitForEvent('download'), save(drawn).click()]);
    // What makes the file is fetched for it.
    expect(await scripts()).toBe(before + 1);
    expect(download.suggestedFilename()).toBe('dunnock-d.svg');
    const svg = readFileSync(await download.path(), 'utf8');
    const [, width, height, box] = /^<svg [^>]*width="(\d+)mm" height="(\d+)mm" viewBox="0 0 ([\d ]+)"/.exec(svg)!;
    expect(box).toBe(`${width} ${height}`);
    const paper = await opened(tab, svg);
    // Worked by hand: 5-inch true X whose motors stand 159 mm from side to side.
    expect(Math.abs(paper.apart - 159 * Math.SQRT2)).toBeLessThan(0.05);
    expect(paper.width).toBeCloseTo(Number(width), 1);
    // Standoffs of 5 mm on 72 by 33 mm, the plates and the standoffs between them 2 + 14 + 3 + 22 + 2 mm.
    expect(paper.standoffs).toEqual([5, 33, 72]);
    expect(paper.plates).toBeCloseTo(43, 1);
    expect(Math.min(...paper.heights)).toBeGreaterThan(2.4);
    expect(paper.complaints).toEqual([]);
    // What lines can't tell: 70 mm free, 24 between the screws, 10 behind them, 13 past the motor. ISO 273:1979, fine: 3.2 mm for M3.
    expect(svg).toContain('4 arms, cut to 117 mm from end to end.');
    expect(svg).toContain('8 × Ø3.2 mm: root screw.');
    expect(svg).toContain('4 × Ø3.2 mm: standoff screw.');
    expect(svg).not.toMatch(/data-source|class=/);
    // The record that it was drawn from goes with it.
    const kept = /<desc>(.*?)<\/desc>/s.exec(svg)![1]!.replace(/&lt;/g, '<').replace(/&amp;/g, '&');
    expect(JSON.parse(kept)).toMatchObject({ name: 'Dunnock', revision: 'D' });
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

test('where movement is drawn larger nothing is offered, where it is not the sheet is', async ({
  page: tab,
  places,
}) => {
  for (const [page, id] of [
    ['body/plates-and-standoffs', 'standoff-layout'],
    ['body/tongues-and-webs', 'plate-span'],
  ] as const) {
    await tab.goto(`${places.http}${page}.html`);
    const calculator = tab.locator(`[data-calculator="${id}"]`);
    await expect(calculator.locator('figure svg.drawing').first()).toContainText(/drawn \d+ times/);
    await expect(save(calculator)).toBeHidden();
  }
  const span = tab.locator('[data-calculator="plate-span"]');
  await span.locator('#plate-span-thickness').fill('0.5');
  await expect(span.locator('figure svg.drawing').first()).toContainText('to scale');
  await save(span).click();
  await expect(span.locator('.save-drawing [role=status]')).toContainText('plate-span.svg');
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
