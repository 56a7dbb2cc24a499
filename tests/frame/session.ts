import { withValue, type FrameRecord } from '@frameworthy/shared/frame';
import { SAMPLES } from '~/frame/samples.ts';
import { currentFrame, withCurrent, withFrame, type Shelf } from '~/frame/shelf.ts';

/** What a reader does in one session, for tests of keeping and undo. */
export const [D, C, FLAT] = SAMPLES as [FrameRecord, FrameRecord, FrameRecord];

/** A browser's storage with a bound; how it refuses is up to the test. */
export function fakeStorage(most = Infinity, start: Record<string, string> = {}) {
  const held = new Map(Object.entries(start));
  const storage = {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => {
      if (value.length > most) throw new DOMException('full', 'QuotaExceededError');
      held.set(key, value);
    },
    removeItem: (key: string) => void held.delete(key),
  };
  return { held, storage: storage as unknown as Storage };
}

export const added =
  (record: FrameRecord) =>
  (shelf: Shelf): Shelf =>
    withFrame(shelf, record);
export const changed =
  (path: string, value: number) =>
  (shelf: Shelf): Shelf =>
    withCurrent(shelf, withValue(currentFrame(shelf)!.record, path, value));
export const recordIn = (store: { state: () => { shelf: Shelf } }) => currentFrame(store.state().shelf)?.record;
