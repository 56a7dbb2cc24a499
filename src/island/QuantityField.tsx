import { formatForField, unitFor, type UnitChoice } from '@frameworthy/shared/quantity';
import { useState } from 'preact/hooks';
import type { QuantityInput, Show } from './declaration.ts';
import { atNotch, notches, notchOf, stepped } from './entry.ts';
import type { CalculatorState } from './state.ts';
import { MathSymbol } from './symbol.tsx';

interface Props {
  id: string;
  name: string;
  input: QuantityInput;
  state: CalculatorState;
  /** Its value is that of the reader's frame. */
  framed?: boolean;
  units: UnitChoice;
  show: Show;
}

const PAGE = 10;

/** One row: name, typed value with its unit, slider, help, and what is wrong with it. */
export function QuantityField({ id, name, input, state, units, show, framed }: Props) {
  const [open, setOpen] = useState(false);
  const unit = unitFor(input.quantity, units);
  const value = state.values[name] as number;
  const problem = state.problems[name];
  const described = [problem && `${id}-problem`, `${id}-help`].filter(Boolean).join(' ');

  const step = (event: KeyboardEvent) => {
    const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (way === 0) return;
    event.preventDefault();
    state.set(name, stepped(input, value, way * (event.shiftKey ? PAGE : 1)));
  };

  return (
    <div class={problem ? 'field wrong' : 'field'}>
      <label for={id}>
        {input.label}
        {unit.symbol && <span class="visually-hidden">{`, in ${unit.symbol}`}</span>}
        {input.symbol && <MathSymbol tex={input.symbol} />}
        {framed && <span class="framed">frame</span>}
      </label>
      <span class="entry">
        <input
          id={id}
          data-frame={input.frameField}
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={state.textOf(name) ?? formatForField(value, unit)}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={described}
          onInput={(event) => state.type(name, input, event.currentTarget.value)}
          onBlur={() => state.leave(name, input)}
          onKeyDown={step}
        />
        <span class="unit" aria-hidden="true">
          {unit.symbol}
        </span>
      </span>
      <button
        type="button"
        class="about"
        aria-expanded={open}
        aria-controls={`${id}-help`}
        onClick={() => setOpen(!open)}
      >
        <span aria-hidden="true">?</span>
        <span class="visually-hidden">{`About: ${input.label}`}</span>
      </button>
      <input
        class="slider"
        type="range"
        autocomplete="off"
        min={0}
        max={notches(input)}
        value={notchOf(input, value)}
        aria-label={`${input.label}, slider`}
        aria-valuetext={show(value, input.quantity, 4)}
        onInput={(event) => state.set(name, atNotch(input, Number(event.currentTarget.value)))}
      />
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      <p class="help" id={`${id}-help`} hidden={!open}>
        <span id={`${id}-about`}>{input.help}</span>
        {` From ${show(input.min, input.quantity, 4)} to ${show(input.max, input.quantity, 4)}.`}
      </p>
    </div>
  );
}
