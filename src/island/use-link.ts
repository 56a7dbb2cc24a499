import { useEffect, useState } from 'preact/hooks';
import type { AnyCalculator } from './declaration.ts';
import { readLink, splitLink } from './link.ts';
import type { CalculatorState } from './state.ts';

/** A link that names no calculator of this page: said at the first one, so that it is not lost without a word. */
function strayLink(known: readonly string[]): string | undefined {
  const link = splitLink(location.hash);
  if (link)
    return known.includes(link.id)
      ? undefined
      : `The link holds values for "${link.id.slice(0, 40)}", a calculator that is not on this page.`;
  const name = location.hash.slice(1);
  const cut = name !== '' && !document.getElementById(name) && known.some((id) => id.startsWith(name));
  return cut ? 'The link is cut short: it holds no values.' : undefined;
}

/** Takes over the values of a link when the page opens and when its fragment changes. Returns what could not be used. */
export function useLink(
  calculator: AnyCalculator,
  state: CalculatorState,
  others: readonly string[] | undefined,
): readonly string[] {
  const [problems, setProblems] = useState<readonly string[]>([]);
  useEffect(() => {
    const follow = () => {
      const link = splitLink(location.hash);
      if (link?.id !== calculator.id) {
        const stray = others && strayLink(others);
        return setProblems(stray ? [stray] : []);
      }
      // A frame in the link fills the calculator by itself: see use-frame.
      const parts = link.parts.filter((part) => !part.startsWith('frame='));
      const read = readLink(calculator, parts, state.start);
      if (parts.length > 0) state.load(read.values);
      setProblems(read.problems.map((problem) => `Skipped from the link: ${problem}`));
      document.getElementById(calculator.id)?.scrollIntoView();
    };
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return problems;
}
