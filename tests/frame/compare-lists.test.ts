import { changedLists, evaluateFrame, withValue, type FrameRecord } from '@frameworthy/shared/frame';
import { describe, expect, test } from 'vitest';
import { SAMPLES } from '~/frame/samples.ts';
import { releaseNotes } from '~/frame/summary.ts';
import { showIn } from '~/island/show.ts';
import { frozen } from './arbitrary.ts';

const D = frozen(structuredClone(SAMPLES[0] as FrameRecord));
const [CENTRED, FORWARD] = D.electronics.arrangements.map(({ name }) => name) as [string, string];
type Arrangements = FrameRecord['electronics']['arrangements'];
const withArrangements = (change: (old: Arrangements) => unknown) =>
  withValue(D, 'electronics.arrangements', change(structuredClone(D.electronics.arrangements)));
const NOTHING = {
  added: [],
  removed: [],
  changed: [],
  standoffs: { before: 4, after: 4, moved: false },
  inUse: { before: CENTRED, after: CENTRED },
  arrangements: { added: [], removed: [], changed: [] },
};
const show = showIn({ system: 'metric' });
const notes = (after: FrameRecord, before: FrameRecord = D) =>
  releaseNotes(
    { record: before, evaluation: evaluateFrame(before) },
    { record: after, evaluation: evaluateFrame(after) },
    show,
  );

describe('parts of equal name', () => {
  const screw = (mass: number) => ({ name: 'Screw', count: 4, mass, cost: 0.1 });
  const withHardware = (...hardware: readonly unknown[]) => withValue(D, 'hardware', hardware);
  const two = withHardware(screw(0.001), screw(0.002));

  test('a revision identical to the one before shows no change', () => {
    for (const record of [...SAMPLES, two]) {
      const { standoffs, inUse } = changedLists(record, structuredClone(record));
      const count = standoffs.before;
      expect(changedLists(record, structuredClone(record))).toEqual({
        ...NOTHING,
        standoffs: { before: count, after: count, moved: false },
        inUse,
      });
    }
    expect(notes(structuredClone(two), two)).not.toMatch(/[Pp]arts (moved|that)|New parts|[Aa]rrangement/);
  });

  test('each is held against its own: one changed, one more, one less', () => {
    expect(changedLists(two, withHardware(screw(0.001), screw(0.003)))).toMatchObject({
      added: [],
      removed: [],
      changed: ['Screw'],
    });
    const three = withHardware(screw(0.001), screw(0.002), screw(0.003));
    expect(changedLists(two, three)).toMatchObject({ added: ['Screw'], removed: [], changed: [] });
    expect(changedLists(three, two)).toMatchObject({ added: [], removed: ['Screw'], changed: [] });
  });
});

describe('arrangements', () => {
  test('a change in one that is not in use is found and told', () => {
    const after = withArrangements(([first, second]) => [
      first,
      {
        ...second!,
        items: second!.items.slice(1).map((item, i) => (i === 0 ? { ...item, x: item.x + 0.001 } : item)),
        standoffs: second!.standoffs.map(({ x, y }) => ({ x: x + 0.001, y })),
      },
    ]);
    const [camera, moved] = D.electronics.arrangements[1]!.items.map(({ name }) => name);
    expect(changedLists(D, after)).toEqual({
      ...NOTHING,
      arrangements: {
        added: [],
        removed: [],
        changed: [
          {
            name: FORWARD,
            added: [],
            removed: [camera],
            changed: [moved],
            standoffs: { before: 4, after: 4, moved: true },
          },
        ],
      },
    });
    expect(notes(after)).toContain(`- Arrangements changed: ${FORWARD} (${camera} gone, ${moved}, standoffs moved)`);
  });

  test('one that comes, one that goes, and their order that says nothing', () => {
    const more = withArrangements((old) => [{ ...old[0]!, name: 'Third' }, ...old]);
    expect(changedLists(D, more)).toEqual({ ...NOTHING, arrangements: { added: ['Third'], removed: [], changed: [] } });
    expect(notes(more)).toContain('- New arrangements: Third');
    const less = withArrangements((old) => [old[0]]);
    expect(changedLists(D, less).arrangements).toEqual({ added: [], removed: [FORWARD], changed: [] });
    expect(notes(less)).toContain(`- Arrangements that are gone: ${FORWARD}`);
    expect(
      changedLists(
        D,
        withArrangements((old) => [...old].reverse()),
      ),
    ).toEqual(NOTHING);
  });

  test('the one in use, changed, is told once, by its parts; another in use is told as such', () => {
    const first = D.electronics.arrangements[0]!.items[0]!;
    const after = withArrangements(([one, other]) => [
      { ...one!, items: [{ ...first, x: first.x + 0.001 }, ...one!.items.slice(1)] },
      other,
    ]);
    expect(changedLists(D, after)).toEqual({ ...NOTHING, changed: [first.name] });
    const other = withValue(D, 'electronics.current', FORWARD);
    const lists = changedLists(D, other);
    expect(lists.inUse).toEqual({ before: CENTRED, after: FORWARD });
    expect(lists.arrangements).toEqual(NOTHING.arrangements);
    expect(notes(other)).toContain(`- Arrangement in use: ${CENTRED} → ${FORWARD}`);
  });
});
