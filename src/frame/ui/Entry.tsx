import { formatForField, unitFor, type QuantityKind, type Unit, type UnitChoice } from '@frameworthy/shared/quantity';
import { useLayoutEffect, useState } from 'preact/hooks';
import type { QuantityInput } from '~/island/declaration.ts';
import { readEntry, stepped } from '~/island/entry.ts';
import { markUnread } from './unread.ts';

export interface EntryRange {
  kind: QuantityKind;
  min: number;
  max: number;
  step: number;
}

interface Props extends EntryRange {
  id: string;
  label: string;
  /** SI. */
  value: number;
  units: UnitChoice;
  onValue: (value: number) => void;
  /** Where it is explained. */
  href?: string;
  help?: string;
  /** What is wrong with it together with others. */
  problem?: string;
}

const asInput = ({ kind, min, max, step }: EntryRange) => ({ quantity: kind, min, max, step }) as QuantityInput;

/** A typed quantity in one row. What was typed stays until it is understood; up and down move it by steps. */
export function Entry({ id, label, value, units, onValue, href, help, problem, ...range }: Props) {
  const [draft, setDraft] = useState<{ text: string; unit: Unit }>();
  const input = asInput(range);
  const unit = unitFor(range.kind, units);
  const read = draft && readEntry(input, draft.text, draft.unit);
  const unread = read && !read.ok ? read.problem : undefined;
  const wrong = unread ?? problem;
  // At once: the next key may be the one for undo.
  useLayoutEffect(() => (unread === undefined ? undefined : markUnread(id, () => setDraft(undefined))), [id, unread]);
  // Where the value was changed from elsewhere since, by undo or in another tab, the text is no longer what it is.
  const overtaken = read?.ok && read.value !== value;
  const type = (text: string) => {
    setDraft({ text, unit });
    const next = readEntry(input, text, unit);
    if (next.ok && next.value !== value) onValue(next.value);
  };
  const step = (event: KeyboardEvent) => {
    const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (way === 0) return;
    event.preventDefault();
    setDraft(undefined);
    onValue(stepped(input, value, way * (event.shiftKey ? 10 : 1)));
  };
  const notes = [wrong && `${id}-problem`, help && `${id}-help`].filter(Boolean).join(' ');
  return (
    <div class={wrong ? 'row wrong' : 'row'}>
      <label for={id}>
        {label}
        {unit.symbol && <span class="visually-hidden">{`, in ${unit.symbol}`}</span>}
      </label>
      <span class="typed">
        <input
          id={id}
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={draft && !overtaken ? draft.text : formatForField(value, unit)}
          aria-invalid={wrong ? 'true' : undefined}
          aria-describedby={notes || undefined}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={() => read?.ok && setDraft(undefined)}
          onKeyDown={step}
        />
        <span class="unit" aria-hidden="true">
          {unit.symbol}
        </span>
      </span>
      {href && (
        <a class="why" href={href} aria-label={`Explained: ${label}`}>
          why
        </a>
      )}
      {wrong && (
        <p class="problem" id={`${id}-problem`}>
          {wrong}
        </p>
      )}
      {help && (
        <p class="help" id={`${id}-help`}>
          {help}
        </p>
      )}
    </div>
  );
}

interface ChoiceProps {
  id: string;
  label: string;
  value: string;
  choices: Readonly<Record<string, string>>;
  onValue: (value: string) => void;
  href?: string;
  /** What is wrong with it together with others. */
  problem?: string;
}

/** One of a few named things, in one row. */
export function Choice({ id, label, value, choices, onValue, href, problem }: ChoiceProps) {
  return (
    <div class={problem ? 'row choice wrong' : 'row choice'}>
      <label for={id}>{label}</label>
      <select
        id={id}
        autocomplete="off"
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onChange={(event) => onValue(event.currentTarget.value)}
      >
        {Object.entries(choices).map(([key, text]) => (
          <option key={key} value={key} selected={key === value}>
            {text}
          </option>
        ))}
      </select>
      {href && (
        <a class="why" href={href} aria-label={`Explained: ${label}`}>
          why
        </a>
      )}
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
    </div>
  );
}

interface TextProps {
  id: string;
  label: string;
  value: string;
  onValue: (value: string) => void;
  long?: boolean;
  most: number;
  /** What is wrong with it. */
  problem?: string;
}

/** Free text. */
export function Text({ id, label, value, onValue, long, most, problem }: TextProps) {
  const shared = {
    id,
    value,
    maxLength: most,
    autocomplete: 'off',
    'aria-invalid': problem ? 'true' : undefined,
    'aria-describedby': problem ? `${id}-problem` : undefined,
  } as const;
  return (
    <div class={`row text${long ? ' long' : ''}${problem ? ' wrong' : ''}`}>
      <label for={id}>{label}</label>
      {long ? (
        <textarea {...shared} rows={3} onInput={(event) => onValue(event.currentTarget.value)} />
      ) : (
        <input {...shared} type="text" onInput={(event) => onValue(event.currentTarget.value)} />
      )}
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
    </div>
  );
}
