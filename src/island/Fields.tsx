import type { UnitChoice } from '@frameworthy/shared/quantity';
import type { Input, Show } from './declaration.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { QuantityField } from './QuantityField.tsx';
import type { CalculatorState } from './state.ts';
import { isQuantity } from './values.ts';

interface Props {
  id: string;
  /** The calculator's title: two forms on a page need two names. */
  title: string;
  state: CalculatorState;
  units: UnitChoice;
  show: Show;
  /** Inputs whose value is that of the reader's frame. */
  framed?: ReadonlySet<string>;
}

/** Inputs that follow each other under one heading. */
function groups(inputs: readonly [string, Input][]): { name: string | undefined; inputs: [string, Input][] }[] {
  const found: { name: string | undefined; inputs: [string, Input][] }[] = [];
  for (const entry of inputs) {
    const last = found.at(-1);
    if (last && last.name === entry[1].group) last.inputs.push(entry);
    else found.push({ name: entry[1].group, inputs: [entry] });
  }
  return found;
}

/** All inputs of a calculator, as a ruled table. */
export function Fields({ id, title, state, units, show, framed }: Props) {
  return (
    <form class="fields" aria-label={`Your values: ${title}`} onSubmit={(event) => event.preventDefault()}>
      {groups(state.inputs).map((group, i) => (
        <fieldset key={group.name ?? i}>
          <legend>{group.name ?? (i === 0 ? 'Your values' : 'Further values')}</legend>
          {group.inputs.map(([name, input]) => {
            const field = `${id}-${name}`;
            return isQuantity(input) ? (
              <QuantityField
                key={name}
                id={field}
                {...{ name, input, state, units, show }}
                framed={framed?.has(name)}
              />
            ) : (
              <ChoiceField key={name} id={field} {...{ name, input, state }} framed={framed?.has(name)} />
            );
          })}
        </fieldset>
      ))}
    </form>
  );
}
