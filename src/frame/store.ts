import { EMPTY, MOST_PAST, readShelf, SHELF_KEY, UNREAD_KEY, writeShelf, type Shelf } from './shelf.ts';

export interface ShelfState {
  shelf: Shelf;
  canUndo: boolean;
  /** What of the browser's keeping went wrong, in words; the session goes on without it. */
  problems: readonly string[];
}

export interface Store {
  state: () => ShelfState;
  /** Called after each change, also one made in another tab. Returns how to stop. */
  subscribe: (listener: () => void) => () => void;
  /** Changes that follow each other quickly under one name are undone together. */
  change: (next: (shelf: Shelf) => Shelf, what?: string) => void;
  undo: () => void;
}

/** Changes of one field within this time are one change [ms]. */
const TOGETHER = 1500;

/** So many states to go back to are tried to be kept. */
const FEWER = [MOST_PAST, 3, 0];

const NOT_KEPT =
  'This browser does not let the page keep your frames. They work until you close it: save them as files before.';

/** Frames kept in the browser's storage; where that is refused or full they live as long as the page. */
export function createStore(storage: () => Storage): Store {
  const listeners = new Set<() => void>();
  let past: readonly Shelf[] = [];
  let last: { what: string | undefined; at: number } = { what: undefined, at: 0 };
  let state: ShelfState = { shelf: EMPTY, canUndo: false, problems: [] };

  const load = (text: string | null) => {
    const read = readShelf(text);
    past = read.past;
    last = { what: undefined, at: 0 };
    state = { shelf: read.shelf, canUndo: past.length > 0, problems: read.problems };
  };
  const show = (shelf: Shelf, problems: readonly string[]) => {
    state = { shelf, canUndo: past.length > 0, problems };
    for (const listener of listeners) listener();
  };
  const put = (key: string, text: string): boolean => {
    try {
      storage().setItem(key, text);
      return true;
    } catch {
      return false;
    }
  };
  /** Where there is little room, the frames go before the way back. */
  const keep = (shelf: Shelf): readonly string[] =>
    FEWER.some((steps) => put(SHELF_KEY, writeShelf({ shelf, past: past.slice(Math.max(0, past.length - steps)) })))
      ? []
      : [NOT_KEPT];

  try {
    const text = storage().getItem(SHELF_KEY);
    load(text);
    if (text && state.problems.length > 0) put(UNREAD_KEY, text);
  } catch {
    state = { ...state, problems: [NOT_KEPT] };
  }
  if (typeof addEventListener === 'function') {
    // Back from the browser's page cache, which hears of nothing that went on meanwhile.
    addEventListener('pageshow', ({ persisted }) => {
      if (!persisted || state.problems.length > 0) return;
      load(storage().getItem(SHELF_KEY));
      show(state.shelf, state.problems);
    });
    addEventListener('storage', ({ key, newValue }) => {
      if (key !== SHELF_KEY) return;
      load(newValue);
      show(state.shelf, state.problems);
    });
  }
  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    change(next, what) {
      const shelf = next(state.shelf);
      if (shelf === state.shelf) return;
      const now = Date.now();
      const together = what !== undefined && what === last.what && now - last.at < TOGETHER;
      if (!together) past = [...past, state.shelf].slice(-MOST_PAST);
      last = { what, at: now };
      show(shelf, keep(shelf));
    },
    undo() {
      const before = past.at(-1);
      if (!before) return;
      past = past.slice(0, -1);
      last = { what: undefined, at: 0 };
      show(before, keep(before));
    },
  };
}
