import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readText } from '../../src/frame/read.ts';
import { copied, field, figure, keptNames, mass, notices, openSheet, outcome, press } from './sheet.ts';
import { expect, test } from './site.ts';

const sampleText = readFileSync('content/frames/dunnock-c.json', 'utf8');

/** The sample as a file, with changes at its top. */
const record = (changes: object = {}) => JSON.stringify({ ...(JSON.parse(sampleText) as object), ...changes });

const asFile = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

const open = (tab: Page, text: string, name = 'mine.frame.json') =>
  tab.locator('.bar input[type=file]').setInputFiles(asFile(name, text));

for (const place of ['http', 'disk'] as const) {
  test(`${place}: saved as a file, and the file opened again, is the same frame`, async ({ page: tab, places }) => {
    await openSheet(tab, `${places[place]}frame.html`);
    await field(tab, 'Tube, wall').fill('1.25');
    await tab.locator('#f-name').fill('Bunting');
    const shown = await outcome(tab);
    const download = tab.waitForEvent('download');
    await press(tab, 'Save as a file');
    const file = await download;
    expect(file.suggestedFilename()).toBe('bunting-d.frame.json');
    const text = readFileSync(await file.path(), 'utf8');
    const reading = readText(text);
    expect(reading).toMatchObject({
      ok: true,
      notices: [],
      record: { name: 'Bunting', arm: { tube: { wall: 1.25e-3 } } },
    });
    await press(tab, 'Remove');
    expect(await keptNames(tab)).toEqual(['Dunnock D (sample)']);
    await open(tab, text);
    await expect(notices(tab)).toContainText('Bunting D taken from mine.frame.json');
    expect(await outcome(tab)).toEqual(shown);
  });
}

test('a file dragged in is taken; one undo takes it away again', async ({ page: tab, places }) => {
  await openSheet(tab, `${places.http}frame.html`);
  const before = await mass(tab);
  const data = await tab.evaluateHandle(
    (text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], 'dragged.json', { type: 'application/json' }));
      return transfer;
    },
    record({ name: 'Siskin' }),
  );
  await tab.dispatchEvent('.outcome', 'dragover', { dataTransfer: data });
  await tab.dispatchEvent('.outcome', 'drop', { dataTransfer: data });
  await expect(notices(tab)).toContainText('Siskin C taken from dragged.json');
  expect(await mass(tab)).not.toBe(before);
  await press(tab, 'Undo');
  expect(await mass(tab)).toBe(before);
  expect(await keptNames(tab)).toEqual(['Dunnock D (sample)']);
});

const parsed = JSON.parse(sampleText) as { arm: { tube: object }; hardware: object[] };
const JUNK: readonly [what: string, text: string, says: RegExp][] = [
  ['no JSON', 'Dear workshop, the frame is attached.', /no JSON text/],
  ['an empty file', '', /no JSON text/],
  ['a list', '[1, 2, 3]', /no frame record/],
  ['a newer version', record({ version: 99 }), /version: .*99.*newer pages/],
  ['another kind of record', record({ format: 'recipe' }), /format: /],
  ['a wrong unit', record({ arm: { ...parsed.arm, tube: { ...parsed.arm.tube, wall: '2 kg' } } }), /arm\.tube\.wall: /],
  [
    'a wall of a metre',
    record({ arm: { ...parsed.arm, tube: { ...parsed.arm.tube, wall: 1 } } }),
    /arm\.tube\.wall: .*at most/,
  ],
  ['a missing part', record({ battery: undefined }), /battery: .*missing/],
  ['a list item at fault', record({ hardware: [...parsed.hardware, { name: 'x' }] }), /hardware\.\d+\.(count|mass): /],
  ['markup', record({ name: '<img src=x onerror=alert(1)>'.repeat(9) }), /name: .*characters/],
  ['5 MB', ' '.repeat(5_000_000), /5\.0 MB/],
  ['1.5 MB', `"${'x'.repeat(1_500_000)}"`, /1\.5 MB/],
];

test('files that are no frame: the message names the field by its path, and nothing is lost', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  await field(tab, 'Tube, wall').fill('1.25');
  const before = await outcome(tab);
  for (const [what, text, says] of JUNK) {
    await open(tab, text, 'junk.json');
    await expect(notices(tab), what).toContainText(says);
    await expect(notices(tab), what).toContainText(/nothing was changed/i);
    expect(await notices(tab).locator('img').count()).toBe(0);
    expect(await outcome(tab), what).toEqual(before);
    expect(await keptNames(tab), what).toEqual(['Dunnock D']);
  }
  await open(tab, record());
  await expect(notices(tab)).toContainText('Dunnock C taken from');
});

test('a draft without version is brought forward, and unknown fields survive the way through the sheet', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  await open(tab, record({ version: undefined, workshop: { shelf: 7 } }));
  await expect(notices(tab)).toContainText(/Brought forward from version 0/);
  await field(tab, 'Tube, wall').fill('1.25');
  const download = tab.waitForEvent('download');
  await press(tab, 'Save as a file');
  expect(JSON.parse(readFileSync(await (await download).path(), 'utf8'))).toMatchObject({
    version: 1,
    workshop: { shelf: 7 },
  });
});

for (const place of ['http', 'disk'] as const) {
  test(`${place}: the links to sheet and card carry the whole frame to a browser that never saw it`, async ({
    page: tab,
    places,
    browser,
  }) => {
    await openSheet(tab, `${places[place]}frame.html`);
    await field(tab, 'Tube, wall').fill('1.25');
    await tab.locator('#f-name').fill('Bunting');
    const shown = await outcome(tab);
    const [sheet, card] = [await copied(tab, 'Copy link'), await copied(tab, 'Copy link to its card')];
    for (const link of [sheet, card]) expect(link).toMatch(/\.html#frame=[\w-]+$/);

    const stranger = await browser.newContext();
    const fresh = await stranger.newPage();
    await openSheet(fresh, sheet);
    await expect(fresh.locator('#f-name')).toHaveValue('Bunting');
    expect(await outcome(fresh)).toEqual(shown);
    await expect(notices(fresh)).toContainText('Bunting D came with the link');
    // A change made to it outlives opening the page anew: the address must not bring the old one back.
    await field(fresh, 'Tube, wall').fill('1.5');
    await fresh.reload();
    await expect(field(fresh, 'Tube, wall')).toHaveValue('1.5');
    expect(await keptNames(fresh)).toEqual(['Bunting D']);
    await stranger.close();

    const buyer = await browser.newContext();
    const read = await buyer.newPage();
    await read.goto(card);
    await expect(read.locator('h1')).toHaveText('Bunting D');
    expect(await figure(read, 'All-up mass').innerText()).toBe(shown.mass);
    expect(await read.evaluate(() => localStorage.getItem('frameworthy.frames'))).toBeNull();
    await press(read, 'Put it on my frame sheet');
    await openSheet(read, `${places[place]}frame.html`);
    await expect(field(read, 'Tube, wall')).toHaveValue('1.25');
    await buyer.close();
  });
}

test('a damaged link is named, and the frames here stay', async ({ page: tab, places }) => {
  await openSheet(tab, `${places.http}frame.html`);
  await field(tab, 'Tube, wall').fill('1.25');
  const link = await copied(tab, 'Copy link');
  for (const word of [link.slice(0, -40).split('#')[1], 'frame=abc', 'frame=____']) {
    await tab.goto('about:blank');
    await openSheet(tab, `${places.http}frame.html#${word}`);
    await expect(notices(tab)).toContainText('The frame in the link was not taken');
    await expect(field(tab, 'Tube, wall')).toHaveValue('1.25');
  }
  await tab.goto(`${places.http}card.html#frame=abc`);
  await expect(tab.locator('.stale-note').first()).toContainText('cannot be shown');
});
