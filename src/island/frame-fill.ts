import type { AnyCalculator } from './declaration.ts';
import type { FrameLineProps } from './FrameLine.tsx';
import { later } from './later.ts';
import type { CalculatorState } from './state.ts';
import type { ValueSet } from './values.ts';

/** What the current frame says of a calculator's fields. */
export interface FrameView {
  /** Nothing where there is no frame, or this calculator takes nothing of it: then only `problems` are said. */
  title: string | undefined;
  /** By input, what the frame has and this calculator can take. */
  values: ValueSet;
  /** Labels of fields whose value in the frame lies outside what this calculator takes. */
  outside: readonly string[];
  /** Why the frame that the address carries was not taken; given to one calculator of the page. */
  problems: readonly string[];
}

/**
 * The reader's own frame, as far as calculators need it. The script that knows frames is large, so it is fetched only
 * where this browser keeps a frame, or the address carries one: see `src/frame/fill.ts`.
 */
export interface FrameFill {
  /** Fills the calculator, and goes on doing so; shows what the frame says at first and after each change. Returns how to stop. */
  attend: (
    calculator: AnyCalculator,
    state: () => CalculatorState,
    show: (view: FrameView | undefined) => void,
  ) => () => void;
  /** Says in the element which fields the frame fills and where they differ from it, with the way back into it. */
  tell: (place: Element, props: FrameLineProps) => void;
}

declare global {
  interface Window {
    frameworthyFill?: Promise<FrameFill | undefined>;
  }
}

/** Also in `src/frame/shelf.ts`, which must not be bundled with every page; a test holds them together. */
export const SHELF_KEY = 'frameworthy.frames';

/** Whether the address carries a frame. */
export const isFrameBrought = (): boolean => /[#?&]frame=/.test(location.href);

function wanted(): boolean {
  if (isFrameBrought()) return true;
  try {
    return localStorage.getItem(SHELF_KEY) !== null;
  } catch {
    return false;
  }
}

let loading: Promise<FrameFill | undefined> | undefined;

/** The reader's frame, or nothing where there is none. */
export function loadFrame(): Promise<FrameFill | undefined> {
  loading ??= wanted() ? later('frame-fill').then(() => window.frameworthyFill) : Promise.resolve(undefined);
  return loading;
}
