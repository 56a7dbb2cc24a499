import type { AnyCalculator, Onward } from './declaration.ts';
import { carryingLink } from './link.ts';
import type { ValueSet } from './values.ts';

interface Props {
  calculator: AnyCalculator;
  values: ValueSet;
  result: unknown;
}

/** Links to the calculators that can use these values, with the values in them. */
export function GoOn({ calculator, values, result }: Props) {
  const onward = (calculator.carriesTo ?? []) as readonly Onward<ValueSet, unknown>[];
  const links = onward.flatMap(({ calculator: id, page, says, values: pick }) => {
    const carried = pick(result, values);
    return carried ? [{ href: page + carryingLink(id, carried), says }] : [];
  });
  if (links.length === 0) return null;
  return (
    <nav class="go-on" aria-label={`Go on with these values: ${calculator.title}`}>
      <h3>Go on with these values</h3>
      <ul>
        {links.map(({ href, says }) => (
          <li key={says}>
            <a href={href}>{says}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
