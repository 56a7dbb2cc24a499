import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnyCalculator, Input } from './declaration.ts';
import { loadFrame, type FrameFill } from './frame-fill.ts';
import { isFrames } from './FrameLine.tsx';
import type { CalculatorState } from './state.ts';
import { isQuantity, type ValueSet } from './values.ts';

/** What the current frame says of a calculator's fields. */
export interface FrameView {
  title: string;
  /** By input, what the frame has and this calculator can take. */
  values: ValueSet;
  /** Labels of fields whose value in the frame lies outside what this calculator takes. */
  outside: readonly string[];
  fill: FrameFill;
}

const fits = (input: Input, value: number | string): boolean =>
  isQuantity(input)
    ? typeof value === 'number' && value >= input.min - 1e-12 && value <= input.max + 1e-12
    : Object.hasOwn(input.choices, value);

function viewOf(calculator: AnyCalculator, fill: FrameFill): FrameView | undefined {
  const title = fill.title();
  if (title === undefined) return undefined;
  const values: Record<string, number | string> = {};
  const outside: string[] = [];
  for (const [key, input] of Object.entries(calculator.inputs as Record<string, Input>)) {
    const value = input.frameField === undefined ? undefined : fill.value(input.frameField);
    if (value === undefined) continue;
    if (fits(input, value)) values[key] = value;
    else outside.push(input.label);
  }
  return Object.keys(values).length > 0 ? { title, values, outside, fill } : undefined;
}

/** New values of fields that hold what the frame said before: they follow it. */
function followed(values: ValueSet, before: ValueSet, now: ValueSet): ValueSet {
  return Object.fromEntries(
    Object.entries(now).filter(([key, value]) => isFrames(values[key], before[key]) && !isFrames(values[key], value)),
  );
}

/**
 * Fills a calculator from the reader's frame when the page opens, unless its link brings values of its own. Fields that
 * hold the frame's value follow it, whether it is changed here, on the same page or in another tab.
 */
export function useFrame(calculator: AnyCalculator, state: CalculatorState): FrameView | undefined {
  const [view, setView] = useState<FrameView>();
  const latest = useRef(state);
  latest.current = state;
  useEffect(() => {
    let stop: (() => void) | undefined;
    let gone = false;
    void loadFrame().then((fill) => {
      if (!fill || gone) return;
      const read = () => {
        const next = viewOf(calculator, fill);
        setView(next);
        return next;
      };
      const first = read();
      let before = first;
      stop = fill.subscribe(() => {
        const now = read();
        const follow = before && now ? followed(latest.current.values, before.values, now.values) : {};
        if (Object.keys(follow).length > 0) latest.current.setAll(follow);
        before = now;
      });
      const [id, brought = ''] = location.hash.slice(1).split('?');
      const linked = id === calculator.id && brought.split('&').some((part) => part && !part.startsWith('frame='));
      if (first && !linked) state.load({ ...state.start, ...first.values });
    });
    return () => {
      gone = true;
      stop?.();
    };
  }, []);
  return view;
}
