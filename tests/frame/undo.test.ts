import { withFrameValue, type FrameRecord } from '@frameworthy/shared/frame';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { MOST_PAST, withArrival, withCurrent, without, withRevision } from '~/frame/shelf.ts';
import { createStore } from '~/frame/store.ts';
import { added, C, changed, D, fakeStorage, FLAT, recordIn } from './session.ts';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: 1e6 });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('undo', () => {
  const open = () => createStore(() => fakeStorage().storage);

  test('brings back what was before an import', () => {
    const store = open();
    store.change(added(D));
    const before = store.state().shelf;
    store.change((shelf) => withArrival(shelf, FLAT));
    expect(recordIn(store)).toEqual(FLAT);
    store.undo();
    expect(store.state().shelf).toEqual(before);
  });

  test('brings back what was before a calculator wrote to it', () => {
    const store = open();
    store.change(added(D));
    const write = (record: FrameRecord) =>
      [
        ['arm.length', 0.08],
        ['layout.rootDistance', 0.03],
      ].reduce((held, [path, value]) => withFrameValue(held, path as string, value as number), record);
    store.change((shelf) => withCurrent(shelf, write(recordIn(store)!)));
    expect(recordIn(store)).not.toEqual(D);
    store.undo();
    expect(recordIn(store)).toEqual(D);
  });

  test('brings back a frame that was removed, in its place and current', () => {
    const store = open();
    for (const record of [D, C, FLAT]) store.change(added(record));
    store.change((shelf) => ({ ...shelf, current: 'f2' }));
    const before = store.state().shelf;
    store.change((shelf) => without(shelf, 'f2'));
    expect(store.state().shelf.frames.map(({ record }) => record)).toEqual([D, FLAT]);
    expect(recordIn(store)).toEqual(FLAT);
    store.undo();
    expect(store.state().shelf).toEqual(before);
  });

  test('typing in one field is one step, another field or a pause another', () => {
    const store = open();
    store.change(added(D));
    for (const length of [0.08, 0.081, 0.082]) {
      store.change(changed('arm.length', length), 'arm.length');
      vi.advanceTimersByTime(1000);
    }
    store.change(changed('motor.mass', 0.04), 'motor.mass');
    vi.advanceTimersByTime(100);
    store.change(changed('motor.mass', 0.041), 'motor.mass');
    vi.advanceTimersByTime(2000);
    store.change(changed('motor.mass', 0.05), 'motor.mass');
    const seen: (readonly [number, number])[] = [];
    while (store.state().canUndo && recordIn(store)) {
      seen.push([recordIn(store)!.arm.length, recordIn(store)!.motor.mass]);
      store.undo();
    }
    expect(seen).toEqual([
      [0.082, 0.05],
      [0.082, 0.041],
      [0.082, D.motor.mass],
      [D.arm.length, D.motor.mass],
    ]);
  });

  test('after an undo, typing in the same field is a new step', () => {
    const store = open();
    store.change(added(D));
    store.change(changed('arm.length', 0.08), 'arm.length');
    store.undo();
    store.change(changed('arm.length', 0.09), 'arm.length');
    store.undo();
    expect(recordIn(store)).toEqual(D);
  });

  test('changes without a field are never put together', () => {
    const store = open();
    store.change(added(D));
    store.change(added(FLAT));
    store.undo();
    expect(store.state().shelf.frames.length).toBe(1);
  });

  test('goes back a dozen steps and then stops', () => {
    const store = open();
    store.change(added(D));
    for (let i = 0; i < 30; i++) store.change(changed('arm.length', 0.05 + i / 1000));
    let steps = 0;
    while (store.state().canUndo) {
      store.undo();
      steps++;
    }
    expect(steps).toBe(MOST_PAST);
    store.undo();
    expect(recordIn(store)!.arm.length).toBeCloseTo(0.05 + (29 - MOST_PAST) / 1000, 12);
  });

  test('a change that changes nothing is no step', () => {
    const store = open();
    store.change((shelf) => shelf);
    store.change((shelf) => withRevision(shelf));
    expect(store.state().canUndo).toBe(false);
  });
});
