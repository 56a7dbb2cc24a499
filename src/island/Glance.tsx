import type { AnyCalculator, Output, Show } from './declaration.ts';
import type { ValueSet } from './values.ts';

interface Props {
  calculator: AnyCalculator;
  values: ValueSet;
  result: unknown;
  show: Show;
}

/** The headline numbers at the foot of a small screen while the fields are on it. Said in full among the results. */
export function Glance({ calculator, values, result, show }: Props) {
  const headlines = (calculator.outputs as readonly Output<ValueSet, unknown>[]).filter((output) => output.headline);
  return (
    <p class="glance" aria-hidden="true">
      {headlines.map((output) => (
        <span key={output.key} class={output.verdict?.(result, values)?.level}>
          {`${output.label} `}
          <b>
            {output.impossible?.(result, values) === undefined
              ? show(output.value(result, values), output.quantity, output.digits)
              : 'none'}
          </b>
        </span>
      ))}
    </p>
  );
}
