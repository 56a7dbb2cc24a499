import { withValue } from '@frameworthy/shared/frame';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  currentFrame,
  EMPTY,
  MOST_PAST,
  nextRevision,
  readShelf,
  SHELF_KEY,
  withArrival,
  withFrame,
  without,
  withRevision,
  writeShelf,
} from '~/frame/shelf.ts';
import { createStore } from '~/frame/store.ts';
import { SHELF_KEY as KEY_OF_ISLAND } from '~/island/frame-fill.ts';
import { added, C, changed, D, fakeStorage, FLAT, recordIn } from './session.ts';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: 1e6 });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('pages that only ask whether there is a frame look under the same key', () => {
  expect(KEY_OF_ISLAND).toBe(SHELF_KEY);
});

describe('keeping', () => {
  test('what is changed on one page is there on the next, with its way back', () => {
    const { storage } = fakeStorage();
    const first = createStore(() => storage);
    expect(first.state()).toEqual({ shelf: EMPTY, canUndo: false, problems: [] });
    first.change(added(D));
    first.change(added(FLAT));
    first.change(changed('arm.length', 0.08));
    const next = createStore(() => storage);
    expect(next.state()).toEqual(first.state());
    expect(recordIn(next)).toEqual(withValue(FLAT, 'arm.length', 0.08));
    next.undo();
    expect(recordIn(next)).toEqual(FLAT);
    next.undo();
    expect(recordIn(next)).toEqual(D);
  });

  test.each([1, 2, MOST_PAST - 1, MOST_PAST, MOST_PAST + 1])(
    'after %i changes the next page knows the same way back',
    (count) => {
      const { storage } = fakeStorage();
      const first = createStore(() => storage);
      for (let i = 0; i < count; i++) first.change(added(D));
      const next = createStore(() => storage);
      let steps = 0;
      for (; next.state().canUndo; steps++) next.undo();
      expect(steps).toBe(Math.min(count, MOST_PAST));
    },
  );

  test('a browser without storage: the session goes on and says so', () => {
    const store = createStore(() => {
      throw new DOMException('refused', 'SecurityError');
    });
    expect(store.state().problems).toEqual([expect.stringMatching(/save them as files/)]);
    store.change(added(D));
    store.change(changed('arm.length', 0.08));
    expect(recordIn(store)!.arm.length).toBe(0.08);
    expect(store.state().problems.length).toBe(1);
    store.undo();
    expect(recordIn(store)).toEqual(D);
  });

  test('a full storage: the session goes on and says so, and says no more once there is room', () => {
    const limited = fakeStorage(100);
    const store = createStore(() => limited.storage);
    expect(store.state().problems).toEqual([]);
    store.change(added(D));
    expect(recordIn(store)).toEqual(D);
    expect(store.state().problems).toEqual([expect.stringMatching(/save them as files/)]);
    store.change((shelf) => without(shelf, shelf.current!));
    expect(store.state().shelf.frames).toEqual([]);
    store.undo();
    expect(recordIn(store)).toEqual(D);
  });

  test('the way back gives room before the frames do', () => {
    const one = JSON.stringify(D).length;
    const limited = fakeStorage(4 * one);
    const store = createStore(() => limited.storage);
    store.change(added(D));
    for (let i = 0; i < 10; i++) store.change(changed('arm.length', 0.06 + i / 1000));
    expect(store.state().problems).toEqual([]);
    const next = createStore(() => limited.storage);
    expect(recordIn(next)!.arm.length).toBeCloseTo(0.069, 12);
    // This page still knows the whole way.
    for (let i = 0; i < 10; i++) store.undo();
    expect(recordIn(store)).toEqual(D);
  });

  test('a change in another tab is taken over, and told to who listens', () => {
    const listeners: ((event: { key: string | null; newValue: string | null }) => void)[] = [];
    vi.stubGlobal('addEventListener', (name: string, listener: (typeof listeners)[0]) => {
      if (name === 'storage') listeners.push(listener);
    });
    const { storage } = fakeStorage();
    const here = createStore(() => storage);
    const [told] = listeners;
    const there = createStore(() => storage);
    there.change(added(D));
    const heard = vi.fn();
    const stop = here.subscribe(heard);
    told!({ key: SHELF_KEY, newValue: storage.getItem(SHELF_KEY) });
    expect(recordIn(here)).toEqual(D);
    expect(heard).toHaveBeenCalledTimes(1);
    told!({ key: 'something else', newValue: 'x' });
    expect(heard).toHaveBeenCalledTimes(1);
    // Typing here goes on in a new step: undo must not take back what the other tab did.
    here.change(changed('arm.length', 0.08), 'arm.length');
    there.change(changed('motor.mass', 0.04));
    told!({ key: SHELF_KEY, newValue: storage.getItem(SHELF_KEY) });
    here.change(changed('arm.length', 0.081), 'arm.length');
    here.undo();
    expect(recordIn(here)!.motor.mass).toBe(0.04);
    stop();
    here.undo();
    expect(heard).toHaveBeenCalledTimes(5);
  });
});

describe('what was kept is damaged', () => {
  const stored = (text: string) => createStore(() => fakeStorage(Infinity, { [SHELF_KEY]: text }).storage).state();
  const good = writeShelf({ shelf: withFrame(withFrame(EMPTY, D), FLAT), past: [EMPTY] });

  test.each([
    ['cut off', good.slice(0, good.length / 2)],
    ['no JSON', 'Dunnock'],
    ['null', 'null'],
    ['a number', '5'],
    ['a list', '[]'],
    ['an empty object', '{}'],
    ['a shelf that is none', '{"shelf": 5, "past": []}'],
    ['frames that are none', '{"shelf": {"current": "f1", "frames": {"f1": 1}}}'],
  ])('%s: an empty shelf, and it says so', (_, text) => {
    expect(stored(text)).toEqual({ shelf: EMPTY, canUndo: false, problems: [expect.stringMatching(/damaged/)] });
  });

  test('one frame of two: the other one stays, becomes the current one, and the lost one is named', () => {
    const text = good.replace('"tipGap":0.03', '"tipGap":"wide"');
    const { shelf, problems } = stored(text.replace('"current":"f2"', '"current":"f1"'));
    expect(shelf.frames.map(({ record }) => record)).toEqual([FLAT]);
    expect(currentFrame(shelf)!.record).toEqual(FLAT);
    expect(problems).toEqual([expect.stringMatching(/layout\.tipGap/)]);
  });

  test('frames without a name of their own, or two of one name', () => {
    const twice = JSON.stringify({ shelf: { current: 'a', frames: ['a', 'a'].map((id) => ({ id, record: D })) } });
    const { shelf, problems } = stored(twice);
    expect(new Set(shelf.frames.map(({ id }) => id)).size).toBe(shelf.frames.length);
    expect(shelf.frames.length + problems.length).toBe(2);
    expect(stored('{"shelf":{"frames":[{"record":{}},null,5,"x"]}}').problems.length).toBe(4);
  });

  test('a damaged way back does no harm', () => {
    const damaged = JSON.stringify({
      shelf: { current: 'f1', frames: [{ id: 'f1', record: D }] },
      past: [5, null, 'x', {}],
    });
    const store = createStore(() => fakeStorage(Infinity, { [SHELF_KEY]: damaged }).storage);
    expect(recordIn(store)).toEqual(D);
    while (store.state().canUndo) store.undo();
    for (const { record } of store.state().shelf.frames) expect(record).toEqual(D);
  });

  test('what cannot be read is not lost with the next change', () => {
    const text = good.replace('"version":1', '"version":2');
    const { held, storage } = fakeStorage(Infinity, { [SHELF_KEY]: text });
    const store = createStore(() => storage);
    store.change(changed('arm.length', 0.08));
    expect([...held.values()].some((value) => value.includes('"version":2'))).toBe(true);
  });
});

describe('the shelf', () => {
  test('a revision is a copy under the next letter, current, without the old notes', () => {
    const shelf = withRevision(withFrame(EMPTY, D));
    expect(shelf.frames.map(({ record }) => record)).toEqual([D, { ...D, revision: 'E', notes: '' }]);
    expect(currentFrame(shelf)!.record.revision).toBe('E');
    expect(['C', 'c', '3', 'v9', 'Z', '', 'rev 1.4'].map(nextRevision)).toEqual([
      'D',
      'd',
      '4',
      'v10',
      'Z 2',
      '2',
      'rev 1.5',
    ]);
  });

  test('a frame that arrives twice stands there once', () => {
    const once = withArrival(withFrame(EMPTY, D), FLAT);
    expect(withArrival(once, structuredClone(FLAT))).toBe(once);
    const again = withArrival(once, structuredClone(D));
    expect(again.frames.length).toBe(2);
    expect(currentFrame(again)!.record).toEqual(D);
  });

  test('ids stay apart after removals', () => {
    const three = [D, C, FLAT].reduce(withFrame, EMPTY);
    const shelf = withFrame(without(three, 'f1'), D);
    expect(new Set(shelf.frames.map(({ id }) => id)).size).toBe(3);
  });

  test('what is written is what is read', () => {
    const shelf = [D, C, FLAT].reduce(withFrame, EMPTY);
    const past = [EMPTY, withFrame(EMPTY, D)];
    expect(readShelf(writeShelf({ shelf, past }))).toEqual({ shelf, past, problems: [] });
  });
});
