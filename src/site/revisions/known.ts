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

/** The frame of the address, where storage does not bring it along: see `carry.ts`. */
function useGuest(): FrameRecord | undefined {
  const [guest, setGuest] = useState<FrameRecord>();
  useEffect(() => {
    const store = browserStore();
    let record: FrameRecord | undefined;
    void arrivingFrame(location).then((reading) => {
      if (!reading?.ok) return;
      record = reading.record;
      setGuest(record);
    });
    carryFrame(
      () => record ?? currentFrame(store.state().shelf)?.record,
      () => record !== undefined || location.protocol === 'file:',
    );
  }, []);
  return guest;
}

/** Kept frames first, then what came with the address, then the samples. */
export function useKnown(): Known[] {
  const state = useShelf();
  const guest = useGuest();
  return useMemo(() => {
    const frames = state?.shelf.frames ?? [];
    const known = [...frames.map(({ record }) => record), ...SAMPLES].some((record) => isSame(record, guest));
    return [
      ...frames.map(({ id, record }) => ({ key: id, title: titleOf(record), record })),
      ...(guest && !known ? [{ key: 'guest', title: `${titleOf(guest)} (from the link)`, record: guest }] : []),
      ...SAMPLES.map((record, i) => ({ key: `sample${i}`, title: `${titleOf(record)} (sample)`, record })),
    ];
  }, [state, guest]);
}
