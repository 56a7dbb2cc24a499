import type { Arrangement } from '../fit/index.ts';
import { currentArrangement } from './arrangement.ts';
import type { FrameRecord } from './record.ts';

/** Names that came, went or stand for something else. */
export interface ChangedNames {
  added: readonly string[];
  removed: readonly string[];
  changed: readonly string[];
}

/** Parts of one arrangement by name, and its standoffs. */
export interface ChangedParts extends ChangedNames {
  standoffs: { before: number; after: number; moved: boolean };
}

/** Of the arrangements in use and of the hardware, and then the other arrangements. */
export interface ChangedLists extends ChangedParts {
  inUse: { before: string; after: string };
  arrangements: {
    added: readonly string[];
    removed: readonly string[];
    /** All of equal name that differ, but for the one that is in use in both. */
    changed: readonly (ChangedParts & { name: string })[];
  };
}

interface Named {
  name: string;
}

/** Several may have one name: the first of a name is held against the first, the second against the second. */
function byOccurrence<T extends Named>(list: readonly T[]): Map<string, T> {
  const seen = new Map<string, number>();
  return new Map(
    list.map((one) => {
      const times = seen.get(one.name) ?? 0;
      seen.set(one.name, times + 1);
      return [`${times} ${one.name}`, one];
    }),
  );
}

const differ = (a: unknown, b: unknown) => JSON.stringify(a) !== JSON.stringify(b);

function compareNamed<T extends Named>(before: readonly T[], after: readonly T[]) {
  const [old, now] = [byOccurrence(before), byOccurrence(after)];
  const missing = (from: Map<string, T>, other: Map<string, T>) =>
    [...from].flatMap(([key, { name }]) => (other.has(key) ? [] : [name]));
  return {
    added: missing(now, old),
    removed: missing(old, now),
    changed: [...now].flatMap(([key, one]) => {
      const was = old.get(key);
      return was && differ(was, one) ? [{ was, one }] : [];
    }),
  };
}

const namesOf = (lists: ReturnType<typeof compareNamed>): ChangedNames => ({
  ...lists,
  changed: lists.changed.map(({ one }) => one.name),
});

const partsOf = (old: Arrangement, now: Arrangement): ChangedParts => ({
  ...namesOf(compareNamed(old.items, now.items)),
  standoffs: {
    before: old.standoffs.length,
    after: now.standoffs.length,
    moved: differ(old.standoffs, now.standoffs),
  },
});

/**
 * What differs in electronics, hardware and standoffs between two records.
 * @param before - a valid record
 * @param after - another
 * @returns parts of the arrangements in use and hardware by name, counts of standoffs; arrangements by name, and what
 * differs in those that are not in use in both
 * @validity parts and arrangements are told by their names, those of equal name by their order; what is renamed goes and
 * comes
 * @throws InputError where an arrangement in use is not there
 * @derivation comparison of lists
 */
export function changedLists(before: FrameRecord, after: FrameRecord): ChangedLists {
  const [old, now] = [currentArrangement(before), currentArrangement(after)];
  const parts = partsOf(old, now);
  const hardware = namesOf(compareNamed(before.hardware, after.hardware));
  const { added, removed, changed } = compareNamed(before.electronics.arrangements, after.electronics.arrangements);
  return {
    added: [...parts.added, ...hardware.added],
    removed: [...parts.removed, ...hardware.removed],
    changed: [...parts.changed, ...hardware.changed],
    standoffs: parts.standoffs,
    inUse: { before: old.name, after: now.name },
    arrangements: {
      added,
      removed,
      changed: changed
        .filter(({ was, one }) => was !== old || one !== now)
        .map(({ was, one }) => ({ name: one.name, ...partsOf(was, one) })),
    },
  };
}
