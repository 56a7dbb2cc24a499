import { frameValue, isWritable, withFrameValue, type FrameRecord } from '@frameworthy/shared/frame';
import { h, render } from 'preact';
import type { FrameFill } from '~/island/frame-fill.ts';
import { arrivingFrame } from './arrival.ts';
import { attend, type FrameAccess } from './attend.ts';
import { browserStore } from './browser-store.ts';
import { carryFrame } from './carry.ts';
import { readValue } from './read.ts';
import { titleOf } from './samples.ts';
import { Filled } from './ui/Filled.tsx';
import { currentFrame, withArrival, withCurrent } from './shelf.ts';

/** The script that a guide fetches where the reader has a frame: answers its calculators' questions about it. */
async function createFill(): Promise<FrameFill> {
  const store = browserStore();
  const reading = await arrivingFrame(location);
  /** A frame that came with the address: shown, and kept only once the reader changes it. */
  let guest: FrameRecord | undefined = reading?.ok ? reading.record : undefined;
  const current = () => guest ?? currentFrame(store.state().shelf)?.record;
  const memory = new Map<string, number | string | undefined>();
  let remembered: FrameRecord | undefined;
  carryFrame(current, () => guest !== undefined || location.protocol === 'file:');
  const frame: FrameAccess = {
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
      guest = undefined;
      store.change((shelf) => withCurrent(arrived ? withArrival(shelf, arrived) : shelf, checked.record));
      return [];
    },
    undo: () => store.undo(),
    subscribe: (listener) => store.subscribe(listener),
  };
  showHeading();
  return {
    attend: (...asked) => attend(frame, ...asked),
    tell: (place, props) => render(h(Filled, { ...props, frame }), place),
  };
}

/** A heading whose name shares the fragment with a frame is not found by the browser. */
function showHeading(): void {
  const name = /^#([^?&=]+)&frame=/.exec(location.hash)?.[1];
  if (name) document.getElementById(name)?.scrollIntoView();
}

window.frameworthyFill = createFill();
