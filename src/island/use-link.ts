import { useEffect, useState } from 'preact/hooks';
import type { AnyCalculator } from './declaration.ts';
import { later } from './later.ts';
import type { CalculatorState } from './state.ts';

const UNREAD = ['The values in the link could not be read: a script did not come. Try again with a connection.'];

/** An address that leads to a place on the page, and no further. */
const isPlain = (hash: string) => hash === '' || document.getElementById(hash.slice(1)) !== null;

/** Takes over the values of a link when the page opens and when its fragment changes. Returns what could not be used. */
export function useLink(
  calculator: AnyCalculator,
  state: CalculatorState,
  others: readonly string[] | undefined,
): readonly string[] {
  const [problems, setProblems] = useState<readonly string[]>([]);
  useEffect(() => {
    const follow = async () => {
      const { hash } = location;
      if (isPlain(hash)) return setProblems([]);
      await later('link-reader');
      if (location.hash !== hash) return;
      const {
        values,
        own,
        problems: found,
      } = window.frameworthyFollow?.(calculator, state.start, others) ?? { problems: UNREAD };
      if (values) state.load(values);
      setProblems(found);
      if (own) document.getElementById(calculator.id)?.scrollIntoView();
    };
    const listen = () => void follow();
    listen();
    addEventListener('hashchange', listen);
    return () => removeEventListener('hashchange', listen);
  }, []);
  return problems;
}
