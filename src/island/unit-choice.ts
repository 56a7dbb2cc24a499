import type { UnitChoice } from '@frameworthy/shared/quantity';
import { useEffect, useState } from 'preact/hooks';

const KEY = 'frameworthy-units';

interface Held {
  choice: UnitChoice;
  /** The browser would not keep the choice: it lasts for the page. */
  refused: boolean;
}

/** One choice for all calculators of the page. */
let held: Held = { choice: { system: 'metric' }, refused: false };
let loaded = false;
const listeners = new Set<(next: Held) => void>();

/** Whatever was stored, made into a choice: it may be old, foreign or broken. Unit names are checked where they are used. */
export function readChoice(stored: string | null): UnitChoice {
  try {
    const parsed = JSON.parse(stored ?? '{}') as Partial<UnitChoice> | null;
    const units = parsed?.units && typeof parsed.units === 'object' ? parsed.units : {};
    return { system: parsed?.system === 'inch' ? 'inch' : 'metric', units };
  } catch {
    return { system: 'metric' };
  }
}

function load(): void {
  loaded = true;
  try {
    held = { ...held, choice: readChoice(localStorage.getItem(KEY)) };
  } catch {
    held = { ...held, refused: true };
  }
}

export function chooseUnits(choice: UnitChoice): void {
  let refused = false;
  try {
    localStorage.setItem(KEY, JSON.stringify(choice));
  } catch {
    refused = true;
  }
  held = { choice, refused };
  for (const listener of listeners) listener(held);
}

/** The reader's units. The first render is metric, as the server's was; the remembered choice follows at once. */
export function useUnits(): Held {
  const [shown, setShown] = useState<Held>({ choice: { system: 'metric' }, refused: false });
  useEffect(() => {
    if (!loaded) load();
    setShown(held);
    listeners.add(setShown);
    return () => void listeners.delete(setShown);
  }, []);
  return shown;
}
