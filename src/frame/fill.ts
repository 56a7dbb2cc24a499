import { frameValue, isOfOtherArm, isWritable, withFrameValue, type FrameRecord } from '@frameworthy/shared/frame';
import { h, render } from 'preact';
import type { FrameFill } from '~/island/frame-fill.ts';
import { arrivingFrame, withWord } from './arrival.ts';
import { attend, type FrameAccess } from './attend.ts';
import { browserStore } from './browser-store.ts';
import { carryFrame } from './carry.ts';
import { packRecord } from './compress.ts';
import { readValue } from './read.ts';
import { titleOf } from './samples.ts';
import { Filled } from './ui/Filled.tsx';
import { currentFrame, withArrival, withCurrent } from './shelf.ts';

/**
 * The script that a page fetches where the reader has a frame: answers its calculators' questions about it, and takes a
 * frame that came with the address along.
 */
async function createFill(): Promise<FrameFill> {
  const store = browserStore();
  const reading = await arrivingFrame(location);
  /** A frame that came with the address: shown, and kept only once the reader changes it. */
  let guest: FrameRecord | undefined = reading?.ok ? reading.record : undefined;
  /** The guest that the last write made the reader's own. */
  let adopted: FrameRecord | undefined;
  const current = () => guest ?? currentFrame(store.state().shelf)?.record;
  const memory = new Map<string, number | string | undefined>();
  let remembered: FrameRecord | undefined;
  carryFrame(current, () => guest !== undefined || location.protocol === 'file:');
  /** Opened anew, the page must show what was written, and not what its address brought before. */
  const renewAddress = async () => {
    const record = current();
    const away = guest !== undefined || store.state().problems.length > 0;
    const word = away && record ? await packRecord(record) : undefined;
    if (record !== current()) return;
    try {
      history.replaceState(history.state, '', withWord(location.href, word));
    } catch {
      // Some browsers allow this for no page on disk.
    }
  };
  const frame: FrameAccess = {
    problems: reading && !reading.ok ? ['The frame in the link was not taken.', ...reading.problems] : [],
    title: () => {
      const record = current();
      return record && titleOf(record);
    },
    value(path) {
      const record = current();
      if (!record) return undefined;
      if (record !== remembered) {
        memory.clear();
        remembered = record;
      }
      if (!memory.has(path)) {
        try {
          memory.set(path, frameValue(record, path));
        } catch {
          // A frame that cannot be worked out fills what it states and no more.
          memory.set(path, undefined);
        }
      }
      return memory.get(path);
    },
    writable: isWritable,
    ofOtherArm(path) {
      const record = current();
      if (!record || !isOfOtherArm(record, path)) return undefined;
      return record.arm.kind === 'tube' ? 'strip' : 'tube';
    },
    write(changes) {
      const record = current();
      if (!record) return ['There is no frame any more.'];
      let next = record;
      try {
        next = changes.reduce((held, [path, value]) => withFrameValue(held, path, value), record);
      } catch (error) {
        return [error instanceof Error ? error.message : 'The frame cannot be worked out with these values.'];
      }
      const checked = readValue(next);
      if (!checked.ok) return checked.problems;
      const arrived = guest;
      adopted = guest;
      guest = undefined;
      store.change((shelf) => withCurrent(arrived ? withArrival(shelf, arrived) : shelf, checked.record));
      void renewAddress();
      return [];
    },
    undo() {
      guest = adopted;
      adopted = undefined;
      store.undo();
      void renewAddress();
    },
    stamp: () => store.state().shelf,
    subscribe: (listener) => store.subscribe(listener),
  };
  return {
    attend: (...asked) => attend(frame, ...asked),
    tell: (place, props) => render(h(Filled, { ...props, frame }), place),
  };
}

window.frameworthyFill = createFill();
