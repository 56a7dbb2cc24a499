import { render } from 'preact-render-to-string';
import { describe, expect, test, vi } from 'vitest';
import Calculator from '~/island/Calculator.tsx';
import { completed } from '~/island/completed.ts';
import type { AnyCalculator } from '~/island/declaration.ts';
import { leaveOutServerWords } from '../../src/open-from-disk/leave-out.ts';
import { declarations, standingWords } from '../../src/open-from-disk/standing-words.ts';

const root = `${process.cwd()}/`;
const modules = import.meta.glob<{ default: AnyCalculator }>('../../src/calculators/*/index.ts', { eager: true });
const calculators = Object.values(modules).map((module) => module.default);

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };

const decoded = (html: string) => html.replace(/&(\w+);/g, (_, name: string) => NAMED[name] ?? '?');

/** The text of the element with this id in a page, as a browser gives it. */
function textIn(page: string, id: string): string | undefined {
  const inside = new RegExp(`<(\\w+)[^>]*\\sid="${id}"[^>]*>([^<]*)</\\1>`).exec(page)?.[2];
  return inside && decoded(inside);
}

describe('a page’s script, without the words that stand on the page', () => {
  test.each(calculators)('$id: is completed to all that the server has', async (whole) => {
    const [carried] = await declarations([whole.id], root, [leaveOutServerWords(standingWords([whole]))]);
    const page = render(<Calculator calculator={whole} />);
    const asked: string[] = [];
    vi.stubGlobal('document', {
      getElementById(id: string) {
        asked.push(id);
        const [field] = new RegExp(`<(input|select) id="${id}"[^>]*>`).exec(page) ?? [];
        if (field) return { dataset: { frame: / data-frame="([^"]*)"/.exec(field)?.[1] } };
        const textContent = textIn(page, id);
        return textContent === undefined ? null : { textContent };
      },
      querySelector(selector: string) {
        asked.push(selector);
        const textContent = new RegExp(`<label ${/for="[^"]*"/.exec(selector)?.[0]}>([^<]*)`).exec(page)?.[1];
        return textContent === undefined ? null : { firstChild: { textContent: decoded(textContent) } };
      },
    });
    const script = completed(carried!);
    vi.unstubAllGlobals();
    // These stand on other copies of the libraries.
    const { Figure } = whole;
    const maps = script.maps?.map((map, i) => ({ ...map, at: whole.maps![i]!.at }));
    expect(render(<Calculator calculator={{ ...script, Figure, maps }} />)).toBe(page);
    expect(asked.length).toBeGreaterThan(4);
    expect(new Set(asked).size).toBe(asked.length);
    const words = ({ inputs, outputs }: AnyCalculator) => JSON.stringify([inputs, outputs]);
    expect(words(script)).toBe(words(whole));
  });
});
