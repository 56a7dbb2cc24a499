import { readFileSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import puppeteer from 'puppeteer-core';
import { packRecord } from '../../src/frame/compress.ts';
import { readText } from '../../src/frame/read.ts';
import { firefox } from './browsers.ts';
import { copied, field, keptNames, mass, notices, openSheet, press, refuseStorage } from './sheet.ts';
import { expect, test } from './site.ts';

const GUIDE = 'arms/arm-joints.html';
const ROOT = 'two-screw-root';

const root = (tab: Page) => tab.locator(`[data-calculator="${ROOT}"]`);
const spacing = (tab: Page) => root(tab).locator(`#${ROOT}-screwSpacing`);
const frameLine = (tab: Page) => root(tab).locator('.frame-line');
const marked = (tab: Page) => root(tab).locator('.field', { has: tab.locator('.framed') });

/** A kept frame whose screws stand 27.5 mm apart, which no sample and no calculator has. */
async function keep(tab: Page, address: string): Promise<void> {
  await openSheet(tab, address);
  await field(tab, 'Arm screws, spacing').fill('27.5');
  await expect(tab.locator('#frame-choice')).toHaveText('Dunnock D');
}

test('revisions: two kept frames side by side, what changed, what it did, and the same in the release notes', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  await press(tab, 'Next revision');
  await field(tab, 'What changed in it').fill('Longer sleeves after the first season.');
  await field(tab, 'Sleeve, length').fill('60');
  await tab.locator('#sheet-battery > summary').click();
  await field(tab, 'Battery lies').selectOption('lengthwise');
  const heavier = await mass(tab);
  await tab.getByRole('link', { name: 'Revisions' }).click();
  await expect(tab.locator('#first-frame option:checked')).toHaveText('Dunnock D');
  await expect(tab.locator('#second-frame option:checked')).toHaveText('Dunnock E');
  const changed = tab.getByRole('group', { name: 'What changed' }).locator('tbody tr');
  await expect(changed).toHaveText([/^Battery lies\s*crosswise\s*lengthwise$/, /^Sleeve, length\s*48\smm\s*60\smm$/]);
  await expect(tab.getByRole('row', { name: /^All-up mass/ })).toContainText(heavier);
  const words = await tab.getByRole('textbox', { name: 'Release notes' }).inputValue();
  for (const part of [
    'Dunnock E, compared with Dunnock D',
    'Longer sleeves after the first season.',
    /Battery lies: crosswise → lengthwise/,
    /Sleeve, length: 48\smm → 60\smm/,
    new RegExp(`All-up mass ${heavier.replace(/\s/, '\\s')} \\(\\+`),
    /Estimates/,
  ])
    expect(words).toMatch(part);
  // A third one beside them, and a comparison of a frame with itself.
  await tab.locator('#third-frame').selectOption('Dunnock Flat A (sample)');
  await expect(tab.getByRole('columnheader', { name: 'Dunnock Flat A (sample)' })).toHaveCount(2);
  await tab.locator('#third-frame').selectOption('none');
  await tab.locator('#second-frame').selectOption('Dunnock D');
  await expect(tab.locator('#changed + p')).toContainText('Nothing differs');
  expect(await tab.locator('.desk').innerText()).not.toMatch(/NaN|undefined|Infinity/);
});

for (const place of ['http', 'disk'] as const) {
  test(`${place}: a guide takes the kept frame's values, marks them, writes one back, and undo takes it out again`, async ({
    page: tab,
    places,
  }) => {
    await keep(tab, `${places[place]}frame.html`);
    await tab.goto(places[place] + GUIDE);
    await expect(spacing(tab)).toHaveValue('27.5');
    await expect(frameLine(tab)).toContainText('Dunnock D fills');
    const before = await marked(tab).count();
    expect(before).toBeGreaterThan(4);
    await expect(marked(tab).filter({ hasText: /spacing/i })).toHaveCount(1);
    await spacing(tab).fill('31');
    await expect(marked(tab)).toHaveCount(before - 1);
    await expect(frameLine(tab)).toContainText(/31\smm \(frame: 27\.5\smm\)/);
    await root(tab)
      .getByRole('button', { name: /^Write .*spacing.* to Dunnock D$/i })
      .click();
    await expect(frameLine(tab)).toContainText('Written to Dunnock D');
    await expect(marked(tab)).toHaveCount(before);
    await openSheet(tab, `${places[place]}frame.html`);
    await expect(field(tab, 'Arm screws, spacing')).toHaveValue('31');
    await press(tab, 'Undo');
    await expect(field(tab, 'Arm screws, spacing')).toHaveValue('27.5');
  });
}

test('fields that hold the frame’s values follow it: through a write, its undo, and a change in another tab', async ({
  page: tab,
  places,
  context,
}) => {
  await keep(tab, `${places.http}frame.html`);
  await tab.goto(places.http + GUIDE);
  await expect(spacing(tab)).toHaveValue('27.5');
  await spacing(tab).fill('31');
  await root(tab)
    .getByRole('button', { name: /^Write/ })
    .click();
  await root(tab).getByRole('button', { name: 'Undo in the frame' }).click();
  await expect(spacing(tab)).toHaveValue('27.5');
  // The trial is one step back, and the frame can be taken over it again.
  await root(tab).getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(frameLine(tab)).toContainText(/31\smm \(frame: 27\.5\smm\)/);
  await root(tab)
    .getByRole('button', { name: /^Take Dunnock D/ })
    .click();
  await expect(spacing(tab)).toHaveValue('27.5');
  const sheet = await context.newPage();
  await openSheet(sheet, `${places.http}frame.html`);
  await field(sheet, 'Arm screws, spacing').fill('29');
  await expect(spacing(tab)).toHaveValue('29');
});

test('a link with its own values is not overridden by the frame; without a frame nothing is marked or fetched', async ({
  page: tab,
  places,
}) => {
  await tab.goto(places.http + GUIDE);
  await expect(root(tab).getByRole('button', { name: 'Copy link' })).toBeVisible();
  await expect(frameLine(tab)).toHaveCount(0);
  expect(await tab.evaluate(() => 'frameworthyFill' in window)).toBe(false);
  await keep(tab, `${places.http}frame.html`);
  await tab.goto(`${places.http}${GUIDE}#${ROOT}?screwSpacing=33mm`);
  await expect(frameLine(tab)).toContainText(/33\smm \(frame: 27\.5\smm\)/);
  await expect(spacing(tab)).toHaveValue('33');
});

test('a card from a stranger fills the guides it leads to, without being kept', async ({
  page: tab,
  places,
  browser,
}) => {
  await keep(tab, `${places.http}frame.html`);
  const card = await copied(tab, 'Copy link to its card');
  const buyer = await browser.newContext();
  const read = await buyer.newPage();
  await read.goto(card);
  await expect(read.locator('h1')).toHaveText('Dunnock D');
  await expect(read.locator('.reason')).toHaveCount(0);
  await read.goto(`${places.http}${GUIDE}?frame=${card.split('frame=')[1]}`);
  await expect(spacing(read)).toHaveValue('27.5');
  await read.goto(card);
  const link = read
    .getByRole('row', { name: /^Blow at a motor, up or down/ })
    .getByRole('link')
    .last();
  await link.click();
  await expect(read.locator('.frame-line').first()).toContainText('Dunnock D fills');
  expect(await read.evaluate(() => localStorage.getItem('frameworthy.frames'))).toBeNull();
  await buyer.close();
});

test('from disk, with storage refused: links between the pages take the frame along, and back to the sheet', async ({
  page: tab,
  places,
}) => {
  await tab.addInitScript(refuseStorage);
  await keep(tab, `${places.disk}frame.html`);
  await expect(notices(tab)).toContainText(/does not let the page keep/);
  await tab.getByRole('link', { name: 'Explained: Arm screws, spacing' }).click();
  await expect(spacing(tab)).toHaveValue('27.5');
  // On through another guide, and back.
  await tab.getByRole('link', { name: /^Next: / }).click();
  await expect(tab.locator('h1')).not.toHaveText('');
  await tab.getByRole('navigation', { name: 'Site' }).getByRole('link', { name: 'Frame sheet' }).click();
  await expect(field(tab, 'Arm screws, spacing')).toHaveValue('27.5');
  await tab.getByRole('navigation', { name: 'Site' }).getByRole('link', { name: 'Revisions' }).click();
  await expect(tab.locator('#second-frame option:checked')).toHaveText('Dunnock D (from the link)');
});

/** The sample with screws 27.5 mm apart, packed: what a link from someone else brings. */
async function word(): Promise<string> {
  const sample = JSON.parse(readFileSync('content/frames/dunnock-d.json', 'utf8')) as { arm: { root: object } };
  const root = { ...sample.arm.root, screwSpacing: '27.5 mm' };
  const reading = readText(JSON.stringify({ ...sample, arm: { ...sample.arm, root } }));
  if (!reading.ok) throw new Error(reading.problems.join(' '));
  return packRecord(reading.record);
}

const bringing = async (place: 'http' | 'disk', address: string) =>
  `${address}${place === 'disk' ? '?' : '#'}frame=${await word()}`;

/** Waits for the script that takes the frame along; pages without a calculator show nothing of it. */
const carries = (tab: Page) =>
  tab.waitForFunction(() => (window as { frameworthyFill?: Promise<unknown> }).frameworthyFill?.then(() => true));

const write = (tab: Page) => root(tab).getByRole('button', { name: /^Write .*spacing.* to Dunnock D$/i });

for (const place of ['http', 'disk'] as const) {
  test(`${place}: a frame from a link goes along over pages without a calculator, and headings are found`, async ({
    page: tab,
    places,
    context,
  }) => {
    await tab.setViewportSize({ width: 1000, height: 500 });
    await tab.goto(await bringing(place, places[place] + GUIDE));
    await expect(spacing(tab)).toHaveValue('27.5');
    await tab.locator('a[href$="index.html#arms"]').first().click();
    await expect(tab.locator('#arms')).toBeInViewport();
    expect(await tab.evaluate(() => scrollY)).toBeGreaterThan(0);
    for (const [link, file] of [
      ['Words', 'glossary.html'],
      ['Materials', 'materials.html'],
      ['Checks', 'checks.html'],
      ['Using the results', 'using-results.html'],
      ['Chapters', 'index.html'],
    ] as const) {
      await carries(tab);
      await tab.getByRole('navigation', { name: 'Site' }).getByRole('link', { name: link }).click();
      await tab.waitForURL((url) => url.pathname.endsWith(file));
      expect(tab.url(), file).toContain('frame=');
    }
    await carries(tab);
    const guide = tab.locator(`main a[href^="${GUIDE}"]`).first();
    // With the middle button, in a tab of its own.
    const opened = context.waitForEvent('page');
    await guide.click({ button: 'middle' });
    const beside = await opened;
    await expect(spacing(beside)).toHaveValue('27.5');
    await beside.close();
    await guide.click();
    await expect(spacing(tab)).toHaveValue('27.5');
    expect(await tab.evaluate(() => localStorage.getItem('frameworthy.frames'))).toBeNull();
  });

  test(`${place}: what was written to a frame from a link outlives opening the page anew, and is no second frame`, async ({
    page: tab,
    places,
  }) => {
    await tab.goto(await bringing(place, places[place] + GUIDE));
    await expect(spacing(tab)).toHaveValue('27.5');
    await spacing(tab).fill('31');
    await write(tab).click();
    await expect(frameLine(tab)).toContainText('Written to Dunnock D');
    await expect(tab).not.toHaveURL(/frame=/);
    // Taken back, it is the link's frame again, and not kept.
    await root(tab).getByRole('button', { name: 'Undo in the frame' }).click();
    await expect(spacing(tab)).toHaveValue('27.5');
    await expect(tab).toHaveURL(/frame=/);
    await tab.reload();
    await expect(spacing(tab)).toHaveValue('27.5');
    await spacing(tab).fill('32');
    await write(tab).click();
    await expect(tab).not.toHaveURL(/frame=/);
    await tab.reload();
    await expect(spacing(tab)).toHaveValue('32');
    await tab.getByRole('navigation', { name: 'Site' }).getByRole('link', { name: 'Frame sheet' }).click();
    await expect(field(tab, 'Arm screws, spacing')).toHaveValue('32');
    expect(await keptNames(tab)).toEqual(['Dunnock D']);
  });

  test(`${place}, storage refused: the address takes what was written`, async ({ page: tab, places }) => {
    await tab.addInitScript(refuseStorage);
    const address = await bringing(place, places[place] + GUIDE);
    await tab.goto(address);
    await expect(spacing(tab)).toHaveValue('27.5');
    await spacing(tab).fill('31');
    await write(tab).click();
    await expect(tab).not.toHaveURL(address);
    await tab.reload();
    await expect(spacing(tab)).toHaveValue('31');
  });

  test(`${place}, storage refused: a link that was followed before carries the frame as it is now`, async ({
    page: tab,
    places,
    context,
  }) => {
    await context.addInitScript(refuseStorage);
    await keep(tab, `${places[place]}frame.html`);
    const link = tab.getByRole('link', { name: 'Explained: Arm screws, spacing' });
    const follow = async (value: string) => {
      const opened = context.waitForEvent('page');
      await link.click({ modifiers: ['Control'] });
      const guide = await opened;
      await expect(spacing(guide)).toHaveValue(value);
      await guide.close();
    };
    await follow('27.5');
    await field(tab, 'Arm screws, spacing').fill('29');
    await follow('29');
    await press(tab, 'Undo');
    await follow('27.5');
  });

  test(`${place}: a link cut in half is named once on a guide and on the revisions; they go on without it`, async ({
    page: tab,
    places,
  }) => {
    await tab.goto(places[place] + GUIDE);
    const usual = await spacing(tab).inputValue();
    for (const cut of [
      '#frame=abc',
      `#${ROOT}?frame=abc`,
      '?frame=abc',
      '#frame=',
      `#frame=${(await word()).slice(0, 300)}`,
    ]) {
      for (const page of [GUIDE, 'revisions.html']) {
        await tab.goto('about:blank');
        await tab.goto(places[place] + page + cut);
        const said = tab.locator('.stale-note');
        await expect(said, page + cut).toHaveText(/^The frame in the link was not taken\. The link is damaged/);
        if (page === GUIDE) await expect(spacing(tab)).toHaveValue(usual);
        else await expect(tab.locator('#changed')).toBeVisible();
      }
    }
    // The one that the link names speaks.
    await tab.goto('about:blank');
    await tab.goto(`${places[place]}${GUIDE}#${ROOT}?frame=abc`);
    await expect(frameLine(tab).locator('.stale-note')).toHaveCount(1);
  });
}

test('what the reader types before the frame has come stays; the other fields take the frame’s values', async ({
  page: tab,
  places,
}) => {
  await keep(tab, `${places.http}frame.html`);
  await tab.goto(places.http + GUIDE);
  const fill = await tab.locator('[data-frame-fill]').first().getAttribute('data-frame-fill');
  let come = () => {};
  const typed = new Promise<void>((resolve) => (come = resolve));
  await tab.route(`**/${fill!.split('/').pop()}`, async (route) => {
    await typed;
    await route.continue();
  });
  await tab.reload({ waitUntil: 'domcontentloaded' });
  const edge = root(tab).locator(`#${ROOT}-endDistance`);
  await edge.fill('13');
  await root(tab).locator(`#${ROOT}-horizontalForce`).fill('5xx');
  come();
  await expect(spacing(tab)).toHaveValue('27.5');
  await expect(edge).toHaveValue('13');
  await expect(root(tab).locator(`#${ROOT}-horizontalForce`)).toHaveValue('5xx');
});

test('the undo of a write goes once someone else changes the frame', async ({ page: tab, places, context }) => {
  await keep(tab, `${places.http}frame.html`);
  await tab.goto(places.http + GUIDE);
  await spacing(tab).fill('31');
  await write(tab).click();
  const undo = root(tab).getByRole('button', { name: 'Undo in the frame' });
  await expect(undo).toBeVisible();
  const sheet = await context.newPage();
  await openSheet(sheet, `${places.http}frame.html`);
  await field(sheet, 'Tube, wall').fill('1.25');
  await expect(undo).toHaveCount(0);
  await expect(spacing(tab)).toHaveValue('31');
});

const executablePath = firefox();
if (executablePath) {
  test('Firefox, from a folder: the sheet is edited, a guide takes its value, and links keep it', async ({
    places,
  }) => {
    test.setTimeout(120_000);
    const browser = await puppeteer.launch({
      browser: 'firefox',
      executablePath,
      headless: true,
      userDataDir: await mkdtemp(join(tmpdir(), 'firefox-')),
    });
    const tab = await browser.newPage();
    await tab.setViewport({ width: 1280, height: 800 });
    const complaints: string[] = [];
    tab.on('console', (message) => {
      if (['error', 'warn'].includes(message.type())) complaints.push(message.text());
    });
    tab.on('pageerror', (error) => complaints.push(String(error)));
    const value = (selector: string) => tab.$eval(selector, (input) => (input as HTMLInputElement).value);
    await tab.goto(`${places.disk}frame.html`);
    await tab.waitForSelector('html.scripted #f-arm-root-screwSpacing');
    await tab.focus('#f-arm-root-screwSpacing');
    for (let i = 0; i < 3; i++) await tab.keyboard.press('ArrowUp');
    await tab.waitForFunction(() => document.querySelector('#frame-choice')?.textContent === 'Dunnock D');
    expect(await value('#f-arm-root-screwSpacing')).toBe('25.5');
    await Promise.all([tab.waitForNavigation(), tab.click('a[aria-label="Explained: Arm screws, spacing"]')]);
    await tab.waitForSelector(`[data-calculator="${ROOT}"] .frame-line`);
    expect(await tab.$eval(`[data-calculator="${ROOT}"] .frame-line`, (line) => line.textContent)).toContain(
      'Dunnock D',
    );
    const shown = await tab.$$eval(`[data-calculator="${ROOT}"] .fields input[type=text]`, (all) =>
      all.map((input) => (input as HTMLInputElement).value),
    );
    expect(shown).toContain('25.5');
    await Promise.all([tab.waitForNavigation(), tab.click('nav[aria-label="Site"] a[href*="frame.html"]')]);
    await tab.waitForFunction(() => document.querySelector('#frame-choice')?.textContent === 'Dunnock D');
    expect(await value('#f-arm-root-screwSpacing')).toBe('25.5');
    expect(complaints).toEqual([]);
    await browser.close();
  });
}

test('a frame with plate arms: a calculator of tubes says that its fields are not of this frame', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  await press(tab, 'Dunnock Flat A');
  await expect(tab.locator('#frame-choice')).toHaveText(/Dunnock Flat A/);
  await tab.goto(places.http + GUIDE);
  await expect(frameLine(tab)).toContainText('Dunnock Flat A has plate arms.');
  await expect(frameLine(tab)).toContainText(/keep this page’s own values: .*Tube/i);
  // What breaks first in such an arm is explained where such arms are.
  await tab.goto(`${places.http}frame.html`);
  const first = tab.locator('.case', { hasText: 'across the arm' });
  await expect(first.locator('.reason a').first()).not.toHaveAttribute('href', /two-screw-root/);
});
