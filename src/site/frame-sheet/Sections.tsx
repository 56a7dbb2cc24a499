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
import { Choice, Entry } from '~/frame/ui/Entry.tsx';
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

/** A material's three values; a typical value that passes the others takes them along. */
function SpreadRow({ path, record, units, onRecord }: EditProps & { path: LeafPath }) {
  const field = FIELDS[path];
  if (!('spread' in field)) return null;
  const value = leafOf(record, path) as Spread;
  const put = (which: (typeof SCATTER)[number], to: number) => {
    const next = { ...value, [which]: to };
    const low = which === 'low' ? next.low : Math.min(next.low, to);
    const high = which === 'high' ? next.high : Math.max(next.high, to);
    const typical = which === 'typical' ? to : Math.min(Math.max(next.typical, low), high);
    onRecord(withValue(record, path, { low: Math.min(low, typical), typical, high: Math.max(high, typical) }), path);
  };
  return (
    <fieldset class="spread">
      <legend>{field.label}</legend>
      {SCATTER.map((which) => (
        <Entry
          key={which}
          {...field}
          id={`${idOf(path)}-${which}`}
          label={which}
          value={value[which]}
          units={units}
          onValue={(to) => put(which, to)}
          help={undefined}
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
  if ('choices' in field) return <Choice {...shared} value={value as string} choices={field.choices} />;
  return (
    <Entry
      {...field}
      {...shared}
      value={value as number}
      units={units}
      problem={problem?.path === path ? problem.text : undefined}
    />
  );
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
