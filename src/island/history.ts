import type { ValueSet } from './values.ts';

export interface History {
  values: ValueSet;
  past: readonly ValueSet[];
  /** The last change: further changes of the same field soon after it are one step to undo. */
  last?: { what: string; at: number };
}

const ONE_GESTURE = 1000;
const DEEPEST = 200;

/** Takes new values over; `what` names the field or command, `at` is a time in milliseconds. */
export function change(history: History, next: ValueSet, what: string, at: number): History {
  const same = Object.keys(next).every((key) => next[key] === history.values[key]);
  if (same) return history;
  const goesOn = history.last?.what === what && at - history.last.at < ONE_GESTURE;
  const past = goesOn ? history.past : [...history.past, history.values].slice(-DEEPEST);
  return { values: next, past, last: { what, at } };
}

export function undone(history: History): History {
  const values = history.past.at(-1);
  return values ? { values, past: history.past.slice(0, -1) } : history;
}
