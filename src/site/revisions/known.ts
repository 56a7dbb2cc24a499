import type { FrameRecord } from '@frameworthy/shared/frame';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { arrivingFrame } from '~/frame/arrival.ts';
import { browserStore, useShelf } from '~/frame/browser-store.ts';
import { carryFrame } from '~/frame/carry.ts';
import { isSame, SAMPLES, titleOf } from '~/frame/samples.ts';
import { currentFrame } from '~/frame/shelf.ts';

/** A frame that can be compared. */
export interface Known {
  key: string;
  title: string;
  record: FrameRecord;
}

interface Guest {
  record?: FrameRecord;
  /** Why the frame of the address was not taken. */
  problems: readonly string[];
}

/** The frame of the address, where storage does not bring it along: see `carry.ts`. */
function useGuest(): Guest {
  const [guest, setGuest] = useState<Guest>({ problems: [] });
  useEffect(() => {
    const store = browserStore();
    let record: FrameRecord | undefined;
    const read = () =>
      void arrivingFrame(location).then((reading) => {
        if (!reading) return;
        if (!reading.ok) return setGuest({ problems: ['The frame in the link was not taken.', ...reading.problems] });
        record = reading.record;
        setGuest({ record, problems: [] });
      });
    read();
    carryFrame(
      () => record ?? currentFrame(store.state().shelf)?.record,
      () => record !== undefined || location.protocol === 'file:',
    );
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  }, []);
  return guest;
}

/** Kept frames first, then what came with the address, then the samples; and what is wrong with the address. */
export function useKnown(): { known: Known[]; problems: readonly string[] } {
  const state = useShelf();
  const { record: guest, problems } = useGuest();
  const all = useMemo(() => {
    const frames = state?.shelf.frames ?? [];
    const known = [...frames.map(({ record }) => record), ...SAMPLES].some((record) => isSame(record, guest));
    return [
      ...frames.map(({ id, record }) => ({ key: id, title: titleOf(record), record })),
      ...(guest && !known ? [{ key: 'guest', title: `${titleOf(guest)} (from the link)`, record: guest }] : []),
      ...SAMPLES.map((record, i) => ({ key: `sample${i}`, title: `${titleOf(record)} (sample)`, record })),
    ];
  }, [state, guest]);
  return { known: all, problems };
}
