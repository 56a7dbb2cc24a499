/** What the tests of frame sheet, card and revisions look at. */
import type { Locator, Page } from '@playwright/test';
import { expect } from './site.ts';

/** A field of the record; the link beside it, which explains it, has the same words in its name. */
export const field = (tab: Page, label: string): Locator =>
  tab.locator('.record').getByLabel(label).and(tab.locator('input, textarea, select'));

/** The figure beside a name, such as `All-up mass`. */
export const figure = (tab: Page, name: string): Locator =>
  tab.locator('.figures div', { has: tab.locator('dt', { hasText: name }) }).locator('dd');

export const mass = (tab: Page): Promise<string> => figure(tab, 'All-up mass').innerText();

/** All that follows from a frame, as text and lines. */
export const outcome = async (tab: Page) => ({
  mass: await mass(tab),
  drawn: (await tab.locator('.figure svg').evaluateAll((all) => all.map((svg) => svg.innerHTML))).join(),
  first: (await tab.locator('.cases').innerText()).replace(/\s+/g, ' '),
});

export const press = async (tab: Page, name: string | RegExp) =>
  tab
    .locator('.desk')
    .getByRole('button', { name, exact: typeof name === 'string' })
    .click();

export const notices = (tab: Page): Locator => tab.locator('.bar .notices');

export const keptNames = (tab: Page): Promise<string[]> => tab.locator('#frame-choice option').allInnerTexts();

/** Waits until the script has taken over: without one the bar is hidden. */
export async function openSheet(tab: Page, address: string): Promise<void> {
  await tab.goto(address);
  await expect(tab.locator('.desk').getByRole('button', { name: 'Undo', exact: true })).toBeVisible();
}

/** The link that a button copies: from the clipboard, or from the box that opens where the browser has none. */
export async function copied(tab: Page, button: string): Promise<string> {
  await tab
    .context()
    .grantPermissions(['clipboard-read', 'clipboard-write'])
    .catch(() => undefined);
  await press(tab, button);
  await expect(notices(tab)).toContainText(/copied|copy it from there/);
  const byHand = tab.locator('.bar .by-hand');
  return (await byHand.count()) > 0 ? byHand.inputValue() : tab.evaluate(() => navigator.clipboard.readText());
}

/** Makes the browser refuse to keep anything. */
export const refuseStorage = () => {
  Object.defineProperty(window, 'localStorage', {
    get() {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    },
  });
};
