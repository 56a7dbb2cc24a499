import type { AnyCalculator, Input } from '~/island/declaration.ts';
import type { FrameView } from '~/island/frame-fill.ts';
import { isFrames } from '~/island/FrameLine.tsx';
import type { CalculatorState } from '~/island/state.ts';
import { isQuantity, type ValueSet } from '~/island/values.ts';

/** The current frame, as far as a calculator's fields go. */
export interface FrameAccess {
  /** `Dunnock D`; nothing where there is none any more. */
  title: () => string | undefined;
  /** Value at a frame field, SI or key of a choice; nothing where the frame has none. */
  value: (path: string) => number | string | undefined;
  writable: (path: string) => boolean;
  /** Kind of arms of which this path is and the frame has none. */
  ofOtherArm: (path: string) => 'tube' | 'strip' | undefined;
  /** Writes values back. What it says is wrong; nothing where all went well. */
  write: (changes: readonly (readonly [path: string, value: number | string])[]) => readonly string[];
  /** Takes the last write back. Only while `stamp` is what it was after it: else it takes back another's change. */
  undo: () => void;
  /** Differs after each change of the reader's frames, whoever made it. */
  stamp: () => unknown;
  /** Why the frame that the address carries was not taken, in words; nothing where it was, or there is none. */
  problems: readonly string[];
  /** Called after each change of the frame. Returns how to stop. */
  subscribe: (listener: () => void) => () => void;
}

const fits = (input: Input, value: number | string): boolean =>
  isQuantity(input)
    ? typeof value === 'number' && value >= input.min - 1e-12 && value <= input.max + 1e-12
    : Object.hasOwn(input.choices, value);

/** The calculator that the address names, or else the first of the page, speaks of what is wrong with the address. */
function isSpeaker({ id }: AnyCalculator): boolean {
  const all = [...document.querySelectorAll<HTMLElement>('[data-calculator]')].map((one) => one.dataset['calculator']);
  const named = location.hash.slice(1).split(/[?&]/)[0];
  return id === (all.includes(named) ? named : all[0]);
}

function viewOf(calculator: AnyCalculator, frame: FrameAccess, problems: readonly string[]): FrameView | undefined {
  const title = frame.title();
  const values: Record<string, number | string> = {};
  const outside: string[] = [];
  for (const [key, input] of Object.entries(calculator.inputs as Record<string, Input>)) {
    const value = input.frameField === undefined ? undefined : frame.value(input.frameField);
    if (value === undefined) continue;
    if (fits(input, value)) values[key] = value;
    else outside.push(input.label);
  }
  if (Object.keys(values).length > 0) return { title, values, outside, problems };
  return problems.length > 0 ? { title: undefined, values: {}, outside: [], problems } : undefined;
}

/** New values of fields that hold what the frame said before: they follow it. */
function followed(values: ValueSet, before: ValueSet, now: ValueSet): ValueSet {
  return Object.fromEntries(
    Object.entries(now).filter(([key, value]) => isFrames(values[key], before[key]) && !isFrames(values[key], value)),
  );
}

/** The frame's values, but for fields that the reader was quicker to change than the frame was to come. */
function fillIn(state: CalculatorState, framed: ValueSet): void {
  const { values, start, textOf, load, setAll } = state;
  const quicker = Object.keys(values).filter((key) => values[key] !== start[key] || textOf(key) !== undefined);
  if (quicker.length === 0) load({ ...start, ...framed });
  else setAll(Object.fromEntries(Object.entries(framed).filter(([key]) => !quicker.includes(key))));
}

/**
 * Fills a calculator from the frame when the page opens, unless its link brings values of its own. Fields that hold the
 * frame's value follow it, whether it is changed here, on the same page or in another tab. Returns how to stop.
 */
export function attend(
  frame: FrameAccess,
  calculator: AnyCalculator,
  state: () => CalculatorState,
  show: (view: FrameView | undefined) => void,
): () => void {
  const problems = isSpeaker(calculator) ? frame.problems : [];
  const read = () => {
    const next = viewOf(calculator, frame, problems);
    show(next);
    return next;
  };
  const first = read();
  let before = first;
  const stop = frame.subscribe(() => {
    const now = read();
    const follow = before && now ? followed(state().values, before.values, now.values) : {};
    if (Object.keys(follow).length > 0) state().setAll(follow);
    before = now;
  });
  const [id, brought = ''] = location.hash.slice(1).split('?');
  const linked = id === calculator.id && brought.split('&').some((part) => part && !part.startsWith('frame='));
  if (first?.title !== undefined && !linked) fillIn(state(), first.values);
  return stop;
}
