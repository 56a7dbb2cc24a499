import {
  changedCases,
  changedFields,
  changedLists,
  type ChangedField,
  type ChangedLists,
  type ChangedParts,
  type FrameEvaluation,
  type FrameRecord,
  type LeafValue,
} from '@frameworthy/shared/frame';
import type { Show } from '~/island/declaration.ts';
import { titleOf } from './samples.ts';
import { CASE_WORDS, MODE_WORDS } from './words.ts';

/** A value of the record as text. */
export function valueText({ field }: Pick<ChangedField, 'field'>, value: LeafValue, show: Show): string {
  if ('choices' in field) return field.choices[value as string] ?? String(value);
  if (typeof value === 'object') {
    return `${show(value.typical, field.kind, 4)} (${show(value.low, field.kind, 4)} to ${show(value.high, field.kind, 4)})`;
  }
  return show(value as number, field.kind, 4);
}

const signed = (text: string, value: number) => (value > 0 ? `+${text}` : text.replace(/^-/, '−'));

export interface Worked {
  record: FrameRecord;
  evaluation: FrameEvaluation;
}

const standoffsText = ({ before, after, moved }: ChangedParts['standoffs']): string =>
  before !== after ? `${before} → ${after}` : moved ? 'moved' : '';

/** What differs in an arrangement that is not the one in use: `Long one (Receiver; standoffs moved)`. */
function arrangementText({
  name,
  added,
  removed,
  changed,
  standoffs,
}: ChangedLists['arrangements']['changed'][number]) {
  const places = standoffsText(standoffs);
  const parts = [
    ...added.map((part) => `${part} new`),
    ...removed.map((part) => `${part} gone`),
    ...changed,
    ...(places ? [`standoffs ${places}`] : []),
  ];
  return `${name} (${parts.join(', ')})`;
}

/** Rows of what differs in the lists of two records: a name and what to say, nothing where nothing differs. */
export const LIST_ROWS: readonly (readonly [label: string, text: (lists: ChangedLists) => string])[] = [
  ['Standoffs', ({ standoffs }) => standoffsText(standoffs)],
  ['New parts', ({ added }) => added.join('; ')],
  ['Parts that are gone', ({ removed }) => removed.join('; ')],
  ['Parts moved or changed', ({ changed }) => changed.join('; ')],
  ['Arrangement in use', ({ inUse: { before, after } }) => (before === after ? '' : `${before} → ${after}`)],
  ['New arrangements', ({ arrangements }) => arrangements.added.join('; ')],
  ['Arrangements that are gone', ({ arrangements }) => arrangements.removed.join('; ')],
  ['Arrangements changed', ({ arrangements }) => arrangements.changed.map(arrangementText).join('; ')],
];

/** What changed from one revision to the next, what it cost and what it bought: text for release notes. */
export function releaseNotes(before: Worked, after: Worked, show: Show): string {
  const [old, now] = [before.evaluation.balance, after.evaluation.balance];
  const changes = changedFields(before.record, after.record).map(
    (change) =>
      `- ${change.field.label}: ${valueText(change, change.before, show)} → ${valueText(change, change.after, show)}`,
  );
  const lists = changedLists(before.record, after.record);
  const others = LIST_ROWS.flatMap(([label, text]) => (text(lists) ? [`- ${label}: ${text(lists)}`] : []));
  const mass = now.allUp - old.allUp;
  const cost = now.cost - old.cost;
  const axis = (name: 'roll' | 'pitch') => {
    const change = now.agility[name] / old.agility[name] - 1;
    return `${name} ${signed(show(change, 'percent', 2), change)}`;
  };
  const cases = changedCases(before.evaluation, after.evaluation).flatMap(({ case: name, before: was, after: is }) => {
    if (!was.speed || !is.speed) return [];
    const same = was.mode === is.mode;
    const first = MODE_WORDS[is.mode].gives;
    const speeds = `${show(was.speed.typical, 'speed', 2)} → ${show(is.speed.typical, 'speed', 2)}`;
    return [`- ${CASE_WORDS[name].title}: ${speeds}; ${same ? 'as before' : 'now'}, ${first}.`];
  });
  return [
    `${titleOf(after.record)}, compared with ${titleOf(before.record)}`,
    '',
    ...(after.record.notes ? [after.record.notes, ''] : []),
    'What changed',
    ...(changes.length > 0 ? changes : ['- No dimension.']),
    ...others,
    '',
    `All-up mass ${show(now.allUp, 'mass')} (${signed(show(mass, 'mass', 2), mass)}); frame alone ${show(now.frameMass, 'mass')}.`,
    `Turns: ${axis('roll')}, ${axis('pitch')}. Priced parts ${signed(cost.toFixed(2), cost)}.`,
    '',
    'Estimated speed at which something gives first',
    ...cases,
    '',
    'Estimates by formula, for comparing the two; not tested values.',
  ].join('\n');
}
