import type { FrameRecord } from '@frameworthy/shared/frame';
import { readValue } from './read.ts';

/** The reader's frames in this browser: which are kept, which one is current, and what they were before. */

export interface KeptFrame {
  id: string;
  record: FrameRecord;
}

export interface Shelf {
  /** Id of the frame that fills calculators; none where there is no frame. */
  current: string | undefined;
  frames: readonly KeptFrame[];
}

export const EMPTY: Shelf = { current: undefined, frames: [] };

export const SHELF_KEY = 'frameworthy.frames';
/** Where a shelf goes that could not be read in full, before the next change writes over it. */
export const UNREAD_KEY = 'frameworthy.frames.unread';
/** States that can be gone back to, here and on the next page. */
export const MOST_PAST = 12;

interface Stored {
  shelf: Shelf;
  past: readonly Shelf[];
}

const DAMAGED = 'What this browser kept of your frames is damaged.';

/** What of a stored shelf can still be used; frames that cannot are named. */
function checkedShelf(given: unknown, problems: string[]): Shelf {
  const { current, frames } = (given ?? {}) as { current?: unknown; frames?: unknown };
  if (!Array.isArray(frames)) {
    problems.push(DAMAGED);
    return EMPTY;
  }
  const kept: KeptFrame[] = [];
  for (const entry of frames as unknown[]) {
    const { id, record } = (entry ?? {}) as { id?: unknown; record?: unknown };
    const reading = readValue(record);
    const own = typeof id === 'string' && kept.every((one) => one.id !== id) ? id : freshId({ frames: kept });
    if (reading.ok) kept.push({ id: own, record: reading.record });
    else problems.push(`A frame kept in this browser cannot be read: ${reading.problems[0]}`);
  }
  const known = kept.some(({ id }) => id === current);
  return { current: known ? (current as string) : kept[0]?.id, frames: kept };
}

/** A state to go back to; none where any of it is damaged. */
function checkedPast(given: unknown): Shelf[] {
  const problems: string[] = [];
  const shelf = checkedShelf(given, problems);
  return problems.length > 0 ? [] : [shelf];
}

/** Reads what a browser kept. */
export function readShelf(text: string | null): Stored & { problems: string[] } {
  const problems: string[] = [];
  if (!text) return { shelf: EMPTY, past: [], problems };
  try {
    const { shelf, past } = JSON.parse(text) as { shelf?: unknown; past?: unknown };
    const before = Array.isArray(past) ? past.slice(-MOST_PAST).flatMap(checkedPast) : [];
    return { shelf: checkedShelf(shelf, problems), past: before, problems };
  } catch {
    return { shelf: EMPTY, past: [], problems: [DAMAGED] };
  }
}

export const writeShelf = ({ shelf, past }: Stored): string => JSON.stringify({ shelf, past: past.slice(-MOST_PAST) });

export const currentFrame = ({ current, frames }: Shelf): KeptFrame | undefined =>
  frames.find(({ id }) => id === current);

/** An id that no kept frame has. */
function freshId({ frames }: Pick<Shelf, 'frames'>): string {
  let number = frames.length + 1;
  while (frames.some(({ id }) => id === `f${number}`)) number++;
  return `f${number}`;
}

/** Puts a frame on the shelf and makes it the current one. */
export function withFrame(shelf: Shelf, record: FrameRecord): Shelf {
  const id = freshId(shelf);
  return { current: id, frames: [...shelf.frames, { id, record }] };
}

/** The current frame, changed. */
export function withCurrent(shelf: Shelf, record: FrameRecord): Shelf {
  const { current } = shelf;
  if (current === undefined) return withFrame(shelf, record);
  return { ...shelf, frames: shelf.frames.map((one) => (one.id === current ? { ...one, record } : one)) };
}

export function without(shelf: Shelf, id: string): Shelf {
  const frames = shelf.frames.filter((one) => one.id !== id);
  return { current: shelf.current === id ? frames.at(-1)?.id : shelf.current, frames };
}

/** The next letter or number: C after B, 4 after 3. */
export function nextRevision(revision: string): string {
  const letter = /^(.*?)([A-Ya-y])$/.exec(revision);
  if (letter) return `${letter[1]}${String.fromCharCode((letter[2] as string).charCodeAt(0) + 1)}`;
  const number = /^(.*?)(\d+)$/.exec(revision);
  return number ? `${number[1]}${Number(number[2]) + 1}` : `${revision} 2`.trim();
}

/** A copy of the current frame as its next revision, current from now on. */
export function withRevision(shelf: Shelf): Shelf {
  const kept = currentFrame(shelf);
  if (!kept) return shelf;
  const { record } = kept;
  return withFrame(shelf, { ...record, revision: nextRevision(record.revision), notes: '' });
}

/** A frame that came with a link: the one that is kept already, or a further one. Current from now on. */
export function withArrival(shelf: Shelf, record: FrameRecord): Shelf {
  const text = JSON.stringify(record);
  const same = shelf.frames.find((one) => JSON.stringify(one.record) === text);
  if (!same) return withFrame(shelf, record);
  return same.id === shelf.current ? shelf : { ...shelf, current: same.id };
}
