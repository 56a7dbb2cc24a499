import { render } from 'preact-render-to-string';
import { afterEach, describe, expect, test, vi } from 'vitest';
import Calculator from '~/island/Calculator.tsx';
import type { AnyCalculator, Input } from '~/island/declaration.ts';
import { leaveOutServerWords } from '../../src/open-from-disk/leave-out.ts';
import { declarations, standingWords } from '../../src/open-from-disk/standing-words.ts';

const root = `${process.cwd()}/`;
const modules = import.meta.glob<{ default: AnyCalculator }>('../../src/calculators/*/index.ts', { eager: true });
const calculators = Object.values(modules).map((module) => module.default);

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };

/** The text of the element with this id in a page, as a browser gives it. */
function textIn(page: string, id: string): string | undefined {
  const inside = new RegExp(`<(\\w+)[^>]*\\sid="${id}"[^>]*>([^<]*)</\\1>`).exec(page)?.[2];
  return inside?.replace(/&(\w+);/g, (_, name: string) => NAMED[name] ?? '?');
}

afterEach(() => vi.unstubAllGlobals());

describe('a page’s script, without the words that stand on the page', () => {
  test.each(calculators)(
    '$id: shows all that the server shows, and keeps the help of fields that come later',
    async (whole) => {
      const words = standingWords([whole]);
      const [carried] = await declarations([whole.id], root, [leaveOutServerWords(words)]);
      const page = render(<Calculator calculator={whole} />);
      const asked: string[] = [];
      vi.stubGlobal('document', {
        getElementById(name: string) {
          asked.push(name);
          const textContent = textIn(page, name);
          return textContent === undefined ? null : { textContent };
        },
      });
      // The figure is made with the other copy of the library.
      const script = { ...carried!, Figure: whole.Figure, maps: whole.maps };
      expect(render(<Calculator calculator={script} />)).toBe(page);
      expect(asked.length).toBeGreaterThan(4);
      for (const [key, input] of Object.entries<Input>(whole.inputs))
        if (input.shownWhen) expect((script.inputs as Record<string, Input>)[key]!.help, key).toBe(input.help);
    },
  );
});
