import { useEffect, useState } from 'preact/hooks';
import { createStore, type ShelfState, type Store } from './store.ts';

let store: Store | undefined;

/** The one store of this page. Only in the browser. */
export function browserStore(): Store {
  store ??= createStore(() => localStorage);
  return store;
}

/** What the shelf holds; nothing on the server and in the first render, which must be alike. */
export function useShelf(): ShelfState | undefined {
  const [state, setState] = useState<ShelfState>();
  useEffect(() => {
    const held = browserStore();
    const read = () => setState(held.state());
    read();
    return held.subscribe(read);
  }, []);
  return state;
}
