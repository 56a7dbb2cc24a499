import type { FrameLineProps } from './FrameLine.tsx';
import { later } from './later.ts';

/**
 * The reader's own frame, as far as calculators need it. The script that knows frames is large, so it is fetched only
 * where this browser keeps a frame, or the address carries one: see `src/frame/fill.ts`.
 */
export interface FrameFill {
  /** Of the current frame: `Dunnock D`; nothing where there is none any more. */
  title: () => string | undefined;
  /** Value at a frame field, SI or key of a choice; nothing where the frame has none. */
  value: (path: string) => number | string | undefined;
  writable: (path: string) => boolean;
  /** Writes values back. What it says is wrong; nothing where all went well. */
  write: (changes: readonly (readonly [path: string, value: number | string])[]) => readonly string[];
  undo: () => void;
  /** Says in the element which fields the frame fills and where they differ from it, with the way back into it. */
  tell: (place: Element, props: FrameLineProps) => void;
  /** Called after each change of the frame. Returns how to stop. */
  subscribe: (listener: () => void) => () => void;
}

declare global {
  interface Window {
    frameworthyFill?: Promise<FrameFill | undefined>;
  }
}

/** Also in `src/frame/shelf.ts`, which must not be bundled with every page; a test holds them together. */
export const SHELF_KEY = 'frameworthy.frames';

function wanted(): boolean {
  if (/[#?&]frame=/.test(location.hash + location.search)) return true;
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
