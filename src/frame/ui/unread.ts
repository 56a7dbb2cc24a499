import { useEffect, useState } from 'preact/hooks';

/** Fields whose text is not understood, each with the way to give that text up. */
const unread = new Map<string, () => void>();
const listeners = new Set<() => void>();
const tell = () => listeners.forEach((listener) => listener());

/** A field says that its text is not understood. Returns how to take that back. */
export function markUnread(id: string, giveUp: () => void): () => void {
  unread.set(id, giveUp);
  tell();
  return () => {
    unread.delete(id);
    tell();
  };
}

/** Gives up all text that is not understood. Returns whether there was any. */
export function giveUpUnread(): boolean {
  const any = unread.size > 0;
  for (const giveUp of [...unread.values()]) giveUp();
  return any;
}

/** Whether a field holds text that is not understood. */
export function useUnread(): boolean {
  const [any, setAny] = useState(false);
  useEffect(() => {
    const read = () => setAny(unread.size > 0);
    read();
    listeners.add(read);
    return () => void listeners.delete(read);
  }, []);
  return any;
}
