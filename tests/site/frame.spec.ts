import { field, keptNames, mass, notices, openSheet, outcome, press, refuseStorage } from './sheet.ts';
import { expect, test } from './site.ts';

for (const place of ['http', 'disk'] as const) {
  test(`${place}: a value changed by keyboard moves mass, drawing and what breaks first, and stays`, async ({
    page: tab,
    places,
  }) => {
    await openSheet(tab, `${places[place]}frame.html`);
    const before = await outcome(tab);
    const spacing = field(tab, 'Arm screws, spacing');
    await spacing.focus();
    await tab.keyboard.press('ArrowUp');
    await tab.keyboard.press('Shift+ArrowUp');
    await expect(spacing).toHaveValue('29.5');
    await expect(spacing).toBeFocused();
    const after = await outcome(tab);
    for (const part of ['mass', 'drawn', 'first'] as const) expect(after[part], part).not.toBe(before[part]);
    // Typed with a unit of the other system, and tidied when the field is left.
    await spacing.fill('1 in');
    await spacing.blur();
    await expect(spacing).toHaveValue('25.4');
    await tab.reload();
    await expect(field(tab, 'Arm screws, spacing')).toHaveValue('25.4');
    expect(await keptNames(tab)).toEqual(['Dunnock D']);
  });
}

test('undo goes back step by step, by key from a field and by button, also after the page was opened anew', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  const start = await mass(tab);
  const wall = field(tab, 'Tube, wall');
  await wall.fill('1.5');
  const heavier = await mass(tab);
  expect(heavier).not.toBe(start);
  await field(tab, 'Standoffs, length').press('ArrowUp');
  await tab.keyboard.press('Control+z');
  await expect(field(tab, 'Standoffs, length')).toHaveValue('22');
  expect(await mass(tab)).toBe(heavier);
  await tab.reload();
  await expect.poll(() => mass(tab)).toBe(heavier);
  await press(tab, 'Undo');
  await expect(wall).toHaveValue('1');
  expect(await mass(tab)).toBe(start);
  await expect(tab.getByRole('button', { name: 'Undo', exact: true })).toHaveAttribute('aria-disabled', 'true');
  // In a field of words the browser's own undo stands.
  await field(tab, 'What changed in it').fill('Thicker plates');
  await tab.keyboard.press('Control+z');
  await expect(field(tab, 'What changed in it')).not.toHaveValue('Thicker plates');
});

test('nonsense in a field is named there, the text stays, the last outcome stands greyed, and undo gives the text up', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  const good = await outcome(tab);
  const wall = field(tab, 'Tube, wall');
  for (const text of ['', 'abc', '-7', '1e308', '5 parsec', '<img src=x onerror=alert(1)>', '9'.repeat(400)]) {
    await wall.fill(text);
    await wall.blur();
    await expect(wall).toHaveValue(text);
    await expect(wall).toHaveAttribute('aria-invalid', 'true');
    const described = (await wall.getAttribute('aria-describedby'))?.split(' ')[0];
    await expect(tab.locator(`[id="${described}"]`)).toHaveText(/\S{3}/);
    await expect(tab.locator('.desk')).toHaveClass(/stale/);
    await expect(tab.locator('.stale-note')).toHaveText(/\S{3}/);
    expect(await outcome(tab)).toEqual(good);
  }
  await press(tab, 'Undo');
  await expect(wall).toHaveValue('1');
  await expect(tab.locator('.desk')).not.toHaveClass(/stale/);
  await wall.fill('abc');
  await tab.keyboard.press('Control+z');
  await expect(wall).toHaveValue('1');
  expect(await keptNames(tab)).toEqual(['Dunnock D (sample)']);
});

test('a sleeve too thick for its tube says so at its field; the last outcome stays greyed and comes back', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  await field(tab, 'Tube, outer diameter').fill('9');
  const good = await outcome(tab);
  const sleeve = field(tab, 'Sleeve, wall');
  await sleeve.fill('4.5');
  await expect(sleeve).toHaveAttribute('aria-invalid', 'true');
  await expect(tab.locator('.row.wrong')).toHaveCount(1);
  await expect(tab.locator('.row.wrong .problem')).toContainText(/sleeve/i);
  await expect(tab.locator('.stale-note')).toContainText(/sleeve/i);
  await expect(tab.locator('.desk')).toHaveClass(/stale/);
  expect(await outcome(tab)).toEqual(good);
  await sleeve.fill('1');
  await expect(tab.locator('.desk')).not.toHaveClass(/stale/);
  // A fault in a section that is shut opens it; mending it must not shut it round the reader.
  await tab.locator('#sheet-arm > summary').click();
  const arm = field(tab, 'Arm, outer screw to motor axis');
  await expect(arm).toBeHidden();
  await field(tab, 'Propeller, diameter').fill('60');
  await expect(arm).toHaveAttribute('aria-invalid', 'true');
  await expect(arm).toBeVisible();
  await arm.fill('40');
  await expect(tab.locator('.desk')).not.toHaveClass(/stale/);
  await expect(arm).toBeFocused();
});

test('revisions, samples and removal: each stands in the list, the one before stays as it was, undo brings it back', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  const start = await mass(tab);
  await press(tab, 'Next revision');
  expect(await keptNames(tab)).toEqual(['Dunnock D', 'Dunnock E']);
  await expect(field(tab, 'Revision')).toHaveValue('E');
  await field(tab, 'Tube, wall').fill('1.5');
  expect(await mass(tab)).not.toBe(start);
  await tab.getByLabel('Frame', { exact: true }).selectOption('Dunnock D');
  await expect(field(tab, 'Tube, wall')).toHaveValue('1');
  expect(await mass(tab)).toBe(start);
  await press(tab, 'Dunnock Flat A');
  expect(await keptNames(tab)).toEqual(['Dunnock D', 'Dunnock E', 'Dunnock Flat A']);
  await expect(field(tab, 'Plate arm, width')).toBeVisible();
  await expect(field(tab, 'Tube, wall')).toHaveCount(0);
  await press(tab, 'Remove');
  expect(await keptNames(tab)).toEqual(['Dunnock D', 'Dunnock E']);
  await press(tab, 'Undo');
  expect(await keptNames(tab)).toEqual(['Dunnock D', 'Dunnock E', 'Dunnock Flat A']);
  await expect(tab.getByLabel('Frame', { exact: true }).locator('option:checked')).toHaveText('Dunnock Flat A');
});

test('a step from the table of gains keeps its promise and is taken back', async ({ page: tab, places }) => {
  await openSheet(tab, `${places.http}frame.html`);
  const drop = tab.locator('.case', { hasText: 'Flat drop on the arm ends' }).locator('.verdict').first();
  const speed = async () => Number(/about ([\d.]+)/.exec(await drop.innerText())?.[1]);
  const before = { mass: await mass(tab), speed: await speed() };
  await tab.getByLabel('Hit to get better at').selectOption('Flat drop on the arm ends');
  const row = tab.locator('.gains tbody tr', { hasText: /cross plate/i }).first();
  const [, , , gained] = await row.locator('th, td').allInnerTexts();
  await row.getByRole('button').click();
  await expect(tab.locator('.taken')).toContainText(/Taken: cross plate/i);
  const after = await speed();
  // All three are rounded to two digits.
  expect(Math.abs(after - before.speed - parseFloat(gained!))).toBeLessThan(0.11);
  expect(await mass(tab)).not.toBe(before.mass);
  await press(tab, 'Take it back');
  expect(await mass(tab)).toBe(before.mass);
  await expect(tab.getByRole('button', { name: 'Take it back' })).toHaveCount(0);
});

test('lists: a part added has mass, a standoff added is drawn, an arrangement is copied and renamed', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  const start = parseFloat(await mass(tab));
  await tab.locator('#sheet-hardware > summary').click();
  await tab.locator('#sheet-hardware').getByRole('button', { name: 'Add a part' }).click();
  const part = tab.locator('#sheet-hardware .item').last();
  await part.locator('summary').click();
  await part.getByRole('textbox', { name: 'Mass of one' }).fill('50 g');
  await expect.poll(async () => parseFloat(await mass(tab))).toBe(start + 50);
  const posts = tab.locator('[data-name^="standoff screw"], [data-name^="standoff"]');
  const drawn = await posts.count();
  await press(tab, 'Add a standoff');
  await expect.poll(() => posts.count()).toBeGreaterThan(drawn);
  await press(tab, 'Another arrangement, from this one');
  await field(tab, 'Its name').fill('For the long flights');
  await expect(tab.locator('.fit')).toContainText('For the long flights');
  await expect(tab.locator('.fit')).toContainText('Stack centred, small transmitter');
});

test('parts of the electronics: refused at the field to change; propellers that strike the body are told', async ({
  page: tab,
  places,
}) => {
  await openSheet(tab, `${places.http}frame.html`);
  const fit = tab.locator('.fit');
  await expect(fit).toContainText('their circles clear body, standoffs and battery');
  const board = tab.locator('#sheet-electronics .item').nth(1);
  await board.locator('summary').click();
  // Boards on 25.5 mm have holes for M2.
  await board.getByLabel('Hole pattern').first().selectOption('25.5x25.5');
  const screws = board.locator('select[id$="-screw"]');
  await screws.selectOption('M3');
  await expect(screws).toHaveAttribute('aria-invalid', 'true');
  await expect(board.locator('.problem')).toContainText(/Board stack|hole/i);
  await screws.selectOption('M2');
  await expect(board.locator('.problem')).toHaveCount(0);
  await board.getByRole('textbox', { name: 'Room for plugs, front and rear' }).fill('9');
  await expect(fit).toContainText(/reaches 7\s*mm into the room for wires of Board stack: 7\s*mm rearward clears it/);
  await board.getByRole('textbox', { name: 'Name' }).fill('Camera');
  await expect(board.locator('.problem')).toContainText('is another part’s already');
  await press(tab, 'Undo');
  await field(tab, 'Gap between propeller tips').fill('2');
  await expect(fit).toContainText(
    /Standoff 1 stands .* inside a propeller’s circle, in the height of the blades: they strike it/,
  );
});

test('storage refused: the sheet works for the session, says so, and nothing is thrown', async ({
  page: tab,
  places,
}) => {
  await tab.addInitScript(refuseStorage);
  await openSheet(tab, `${places.http}frame.html`);
  await expect(notices(tab)).toContainText(/does not let the page keep/);
  const before = await mass(tab);
  await field(tab, 'Tube, wall').fill('1.5');
  expect(await mass(tab)).not.toBe(before);
  await press(tab, 'Undo');
  expect(await mass(tab)).toBe(before);
});

test('storage full: the sheet says so with the change that could not be kept', async ({ page: tab, places }) => {
  await tab.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await openSheet(tab, `${places.http}frame.html`);
  await field(tab, 'Tube, wall').fill('1.5');
  await expect(notices(tab)).toContainText(/does not let the page keep/);
});

test('a second tab follows the first', async ({ page: tab, places, context }) => {
  await openSheet(tab, `${places.http}frame.html`);
  const other = await context.newPage();
  await openSheet(other, `${places.http}frame.html`);
  await field(tab, 'Tube, wall').fill('1.5');
  await expect(field(other, 'Tube, wall')).toHaveValue('1.5');
  expect(await mass(other)).toBe(await mass(tab));
  await field(other, 'Standoffs, length').fill('24');
  await expect(field(tab, 'Standoffs, length')).toHaveValue('24');
  await expect(field(tab, 'Tube, wall')).toHaveValue('1.5');
});
