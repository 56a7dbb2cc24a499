import type { ChoiceInput } from './declaration.ts';
import type { CalculatorState } from './state.ts';

interface Props {
  id: string;
  name: string;
  input: ChoiceInput;
  state: CalculatorState;
  /** Its value is that of the reader's frame. */
  framed?: boolean;
}

/** One row with a choice of a few named things. */
export function ChoiceField({ id, name, input, state, framed }: Props) {
  const problem = state.problems[name];
  return (
    <div class={problem ? 'field choice wrong' : 'field choice'}>
      <label for={id}>
        {input.label}
        {framed && <span class="framed">frame</span>}
      </label>
      <select
        id={id}
        data-frame={input.frameField}
        autocomplete="off"
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={[problem && `${id}-problem`, `${id}-about`].filter(Boolean).join(' ')}
        onChange={(event) => state.set(name, event.currentTarget.value)}
      >
        {Object.entries(input.choices).map(([key, text]) => (
          <option key={key} value={key} selected={key === state.values[name]}>
            {text}
          </option>
        ))}
      </select>
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      <p class="help always" id={`${id}-about`}>
        {input.help}
      </p>
    </div>
  );
}
