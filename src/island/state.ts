import { unitFor, type Unit, type UnitChoice } from '@frameworthy/shared/quantity';
import { useMemo, useRef, useState } from 'preact/hooks';
import type { AnyCalculator, Input, QuantityInput, Show } from './declaration.ts';
import { readEntry } from './entry.ts';
import { evaluate, explain } from './evaluate.ts';
import { change, undone, type History } from './history.ts';
import { isQuantity, shownInputs, startValues, type ValueSet } from './values.ts';

/** Text as typed, kept until it can be taken over; `unit` stood beside the field at the time. */
interface Draft {
  text: string;
  unit: Unit;
}

interface State extends History {
  drafts: Readonly<Record<string, Draft>>;
}

function without<T>(record: Readonly<Record<string, T>>, key: string): Record<string, T> {
  return Object.fromEntries(Object.entries(record).filter(([other]) => other !== key));
}

/** All that a calculator holds while it is open: values, half-typed text, the last good result, and the way back. */
export function useCalculator(
  calculator: AnyCalculator,
  overrides: ValueSet | undefined,
  units: UnitChoice,
  show: Show,
) {
  const start = useMemo(() => startValues(calculator, overrides), [calculator, overrides]);
  const [state, setState] = useState<State>({ values: start, past: [], drafts: {} });
  const { values, drafts } = state;
  const good = useRef<{ values: ValueSet; result: unknown }>();

  const inputs = shownInputs(calculator, values);
  const problems: Record<string, string> = {};
  for (const [key, input] of inputs) {
    const draft = drafts[key];
    const entry = draft && isQuantity(input) ? readEntry(input, draft.text, draft.unit) : undefined;
    if (entry && !entry.ok) problems[key] = entry.problem;
  }
  const typedWrong = Object.keys(problems).length > 0;
  const evaluation = useMemo(() => evaluate(calculator, values), [calculator, values]);
  let problem: string | undefined;
  if (!evaluation.ok) {
    const { field, text } = explain(calculator, evaluation.error, show);
    if (field !== undefined && inputs.some(([key]) => key === field)) problems[field] ??= text;
    else problem = text;
  } else if (!typedWrong) good.current = evaluation;

  const put = (next: ValueSet, what: string, nextDrafts: State['drafts']) =>
    setState((current) => ({ ...change(current, next, what, Date.now()), drafts: nextDrafts }));

  return {
    start,
    values,
    inputs,
    problems,
    /** What is wrong with the values together, where no single field is to blame. */
    problem,
    good: good.current,
    stale: typedWrong || !evaluation.ok,
    textOf: (key: string) => drafts[key]?.text,
    type(key: string, input: QuantityInput, text: string) {
      const unit = unitFor(input.quantity, units);
      const entry = readEntry(input, text, unit);
      put(entry.ok ? { ...values, [key]: entry.value } : values, key, { ...drafts, [key]: { text, unit } });
    },
    set: (key: string, value: number | string) => put({ ...values, [key]: value }, key, without(drafts, key)),
    /** Half-typed text of other fields stays. */
    setAll: (some: ValueSet) =>
      put({ ...values, ...some }, Object.keys(some).join(), Object.keys(some).reduce(without<Draft>, drafts)),
    /** The reader leaves a field: text that was understood gives way to the tidy number. */
    leave(key: string, input: Input) {
      const draft = drafts[key];
      if (draft && isQuantity(input) && readEntry(input, draft.text, draft.unit).ok) {
        setState((current) => ({ ...current, drafts: without(current.drafts, key) }));
      }
    },
    reset: () => put(start, 'reset', {}),
    load: (next: ValueSet) => put(next, 'link', {}),
    canUndo: state.past.length > 0 || typedWrong,
    /** First takes back text that was not understood, then value by value. */
    undo: () => setState((current) => ({ ...(typedWrong ? current : undone(current)), drafts: {} })),
  };
}

export type CalculatorState = ReturnType<typeof useCalculator>;
