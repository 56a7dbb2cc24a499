import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import { firefox } from './browsers.ts';
import { expect, guides, pages, test } from './site.ts';

const executablePath = firefox();
if (!executablePath) console.info('Firefox was not found: its journey from disk is left out of this run.');

// Where there is no Firefox there is nothing to declare; the browsers script has said so.
if (executablePath) {
  test('Firefox, from a folder: every page loads clean, and a guide answers to a key', async ({ places }) => {
    test.setTimeout(180_000);
    const browser = await puppeteer.launch({
      browser: 'firefox',
      executablePath,
      headless: true,
      userDataDir: await mkdtemp(join(tmpdir(), 'firefox-')),
    });
    const tab = await browser.newPage();
    const complaints: string[] = [];
    tab.on('console', (message) => {
      if (['error', 'warn'].includes(message.type())) complaints.push(message.text());
    });
    tab.on('pageerror', (error) => complaints.push(String(error)));
    tab.on('request', (request) => {
      if (!request.url().startsWith(places.disk) && !/^(data|about|blob):/.test(request.url()))
        complaints.push(`asked for ${request.url()}`);
    });
    for (const page of pages.filter((name) => !name.startsWith('formulas/'))) {
      await tab.goto(places.disk + page);
      expect(await tab.$eval('h1', (heading) => heading.textContent)).toMatch(/\S/);
      expect(await tab.evaluate(async () => (await document.fonts.ready).check('16px "STIX Two Text"'))).toBe(true);
    }
    await tab.goto(places.disk + guides[0]);
    const text = () => tab.$eval('[data-calculator] .results', (results) => results.textContent);
    const before = await text();
    await tab.focus('[data-calculator] .fields input[type=text]');
    await tab.keyboard.press('ArrowUp');
    await tab.keyboard.press('ArrowUp');
    await tab.waitForFunction(
      (old) => document.querySelector('[data-calculator] .results')?.textContent !== old,
      { timeout: 10_000 },
      before,
    );
    expect(await text()).not.toBe(before);
    expect(complaints).toEqual([]);
    await browser.close();
  });
}
