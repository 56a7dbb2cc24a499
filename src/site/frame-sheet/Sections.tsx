import {
  FIELDS,
  leafOf,
  LEAF_PATHS,
  withValue,
  type FrameRecord,
  type LeafPath,
  type Spread,
} from '@frameworthy/shared/frame';
import type { UnitChoice } from '@frameworthy/shared/quantity';
import { useLayoutEffect, useState } from 'preact/hooks';
import { Choice, Entry } from '~/frame/ui/Entry.tsx';
import { markUnread } from '~/frame/ui/unread.ts';
import { Section } from '~/frame/ui/Section.tsx';
import type { Explained } from '~/frame/explain.ts';
import { SECTIONS } from './sections.ts';

export interface EditProps {
  record: FrameRecord;
  units: UnitChoice;
  /** `what` names the field, so that one undo takes back one field's typing. */
  onRecord: (record: FrameRecord, what: string) => void;
  problem: Explained | undefined;
}

const SCATTER = ['low', 'typical', 'high'] as const;
const idOf = (path: string) => `f-${path.replaceAll('.', '-')}`;
const addressOf = (page: string) => `${page}.html`;

const ORDER = 'Low, typical and high must stand in order.';

/** A material's three values. Typed out of order they wait, marked, until the others follow. */
function SpreadRow({ path, record, units, onRecord, problem }: EditProps & { path: LeafPath }) {
  const [waiting, setWaiting] = useState<Partial<Spread>>({});
  const waits = Object.keys(waiting).length > 0;
  useLayoutEffect(() => (waits ? markUnread(idOf(path), () => setWaiting({})) : undefined), [path, waits]);
  const field = FIELDS[path];
  if (!('spread' in field)) return null;
  const value = leafOf(record, path) as Spread;
  const put = (which: (typeof SCATTER)[number], to: number) => {
    const next = { ...value, ...waiting, [which]: to };
    const inOrder = next.low <= next.typical && next.typical <= next.high;
    setWaiting(inOrder ? {} : { ...waiting, [which]: to });
    if (inOrder) onRecord(withValue(record, path, next), path);
  };
  return (
    <fieldset class="spread">
      <legend>
        {field.label}{' '}
        <a class="why" href={addressOf(field.page)} aria-label={`Explained: ${field.label}`}>
          why
        </a>
      </legend>
      {SCATTER.map((which) => (
        <Entry
          key={which}
          {...field}
          id={`${idOf(path)}-${which}`}
          label={which}
          value={waiting[which] ?? value[which]}
          units={units}
          onValue={(to) => put(which, to)}
          help={undefined}
          problem={
            waiting[which] === undefined
              ? which === 'typical' && problem?.path === path
                ? problem.text
                : undefined
              : ORDER
          }
        />
      ))}
    </fieldset>
  );
}

function Row(props: EditProps & { path: LeafPath }) {
  const { path, record, units, onRecord, problem } = props;
  const field = FIELDS[path];
  if ('spread' in field) return <SpreadRow {...props} />;
  const value = leafOf(record, path);
  const put = (to: number | string) => onRecord(withValue(record, path, to), path);
  const shared = { id: idOf(path), label: field.label, href: addressOf(field.page), onValue: put };
  const wrong = problem?.path === path ? problem.text : undefined;
  if ('choices' in field) return <Choice {...shared} value={value as string} choices={field.choices} problem={wrong} />;
  return <Entry {...field} {...shared} value={value as number} units={units} problem={wrong} />;
}

/** Every single value of the record, by section. */
export function Sections(props: EditProps) {
  const { record, problem } = props;
  return (
    <>
      {SECTIONS.filter(({ when }) => when?.(record) ?? true).map(({ id, title, starts, open }) => {
        const paths = LEAF_PATHS.filter((path) => starts.some((start) => path.startsWith(start)));
        const wrong = paths.some((path) => path === problem?.path);
        return (
          <Section key={id} {...{ id, title, open, wrong }}>
            {paths.map((path) => (
              <Row key={path} path={path} {...props} />
            ))}
          </Section>
        );
      })}
    </>
  );
}
