import { currentArrangement, withValue, type FrameRecord, type HardwareItem } from '@frameworthy/shared/frame';
import type { Arrangement, FitItem } from '@frameworthy/shared/fit';
import type { UnitChoice } from '@frameworthy/shared/quantity';
import { useState } from 'preact/hooks';
import { Choice, Entry, Text, type EntryRange } from '~/frame/ui/Entry.tsx';
import { Section } from '~/frame/ui/Section.tsx';
import { ItemFields, MASS, PLACE } from './ItemFields.tsx';
import type { EditProps } from './Sections.tsx';
import { STANDOFFS } from '~/frame/explain.ts';

const COUNT: EntryRange = { kind: 'count', min: 0, max: 200, step: 1 };
const PRICE: EntryRange = { kind: 'ratio', min: 0, max: 1e5, step: 0.1 };

const replaced = <T,>(list: readonly T[], at: number, value: T): T[] => list.map((one, i) => (i === at ? value : one));
const removed = <T,>(list: readonly T[], at: number): T[] => list.filter((_, i) => i !== at);

const NEW_ITEM: FitItem = {
  name: 'New part',
  kind: 'other',
  length: 0.02,
  width: 0.02,
  height: 0.006,
  x: 0,
  y: 0,
  z: 0.002,
  mass: 0.004,
};

interface ArrangementProps {
  arrangement: Arrangement;
  units: UnitChoice;
  onChange: (arrangement: Arrangement, what: string) => void;
  /** What is wrong with a value, by its path within the arrangement. */
  problem: (path: string) => string | undefined;
}

/** On the middle line, clear of those that stand: two in one place carry no plate. */
function freePlace(standoffs: Arrangement['standoffs']): { x: number; y: number } {
  const apart = 0.01;
  for (let step = 0; ; step++) {
    const x = (step % 2 === 0 ? 1 : -1) * Math.ceil(step / 2) * apart;
    if (standoffs.every((one) => Math.hypot(one.x - x, one.y) >= apart / 2)) return { x, y: 0 };
  }
}

/** `New part`, or with a number where that name is taken: parts are told by their names. */
function freshName(items: readonly { name: string }[]): string {
  const taken = new Set(items.map(({ name }) => name));
  let number = 1;
  const name = () => (number === 1 ? 'New part' : `New part ${number}`);
  while (taken.has(name())) number++;
  return name();
}

function Standoffs({ arrangement, units, onChange, problem }: ArrangementProps) {
  const { standoffs } = arrangement;
  const put = (next: Arrangement['standoffs'], what: string) => onChange({ ...arrangement, standoffs: next }, what);
  return (
    <fieldset class="places">
      <legend>{`Standoffs: ${standoffs.length}`}</legend>
      {problem('') && <p class="problem">{problem('')}</p>}
      {standoffs.map((place, i) => (
        <div class="place" key={i}>
          {(['x', 'y'] as const).map((axis) => (
            <Entry
              key={axis}
              id={`standoff-${i}-${axis}`}
              label={`${i + 1}, ${axis === 'x' ? 'forward' : 'left'}`}
              value={place[axis]}
              units={units}
              href="body/plates-and-standoffs.html"
              onValue={(value) => put(replaced(standoffs, i, { ...place, [axis]: value }), `standoff-${i}-${axis}`)}
              {...PLACE}
            />
          ))}
          <button type="button" disabled={standoffs.length <= 3} onClick={() => put(removed(standoffs, i), 'remove')}>
            <span class="visually-hidden">{`Remove standoff ${i + 1}`}</span>
            <span aria-hidden="true">×</span>
          </button>
        </div>
      ))}
      <button type="button" onClick={() => put([...standoffs, freePlace(standoffs)], 'add')}>
        Add a standoff
      </button>
    </fieldset>
  );
}

function Items({ arrangement, units, onChange, problem }: ArrangementProps) {
  const { items } = arrangement;
  const put = (next: readonly FitItem[], what: string) => onChange({ ...arrangement, items: next }, what);
  return (
    <>
      {items.map((item, i) => (
        <details class="item" aria-label={item.name} key={i}>
          <summary>{item.name}</summary>
          <ItemFields
            id={`item-${i}`}
            item={item}
            units={units}
            onItem={(next, what) => put(replaced(items, i, next), what)}
            problem={(key) => problem(`items.${i}.${key}`)}
          />
          <button type="button" onClick={() => put(removed(items, i), 'remove')}>
            {`Remove ${item.name}`}
          </button>
        </details>
      ))}
      <button type="button" onClick={() => put([...items, { ...NEW_ITEM, name: freshName(items) }], 'add')}>
        Add a part
      </button>
    </>
  );
}

/** Boards, camera and the rest, in one or more arrangements, and the standoffs that go with each. */
export function Electronics({ record, units, onRecord, problem }: EditProps) {
  const { current, arrangements } = record.electronics;
  const arrangement = currentArrangement(record);
  const at = arrangements.indexOf(arrangement);
  const wrong = (path: string) =>
    problem?.path === `electronics.arrangements.${at}.${path}` ? problem.text : undefined;
  const change = (next: Arrangement, what: string) => {
    const electronics = { ...record.electronics, current: next.name, arrangements: replaced(arrangements, at, next) };
    onRecord(withValue(record, 'electronics', electronics), `electronics-${what}`);
  };
  const add = () => {
    const taken = new Set(arrangements.map(({ name }) => name));
    let number = arrangements.length + 1;
    while (taken.has(`Arrangement ${number}`)) number++;
    const name = `Arrangement ${number}`;
    onRecord(
      withValue(record, 'electronics', {
        ...record.electronics,
        current: name,
        arrangements: [...arrangements, { ...arrangement, name }],
      }),
      'arrangement-add',
    );
  };
  // A name that is empty or another's stays in the field, and out of the record.
  const [draft, setDraft] = useState<{ of: string; name: string }>();
  const typed = draft?.of === arrangement.name ? draft.name : undefined;
  const rename = (name: string) => {
    const fine = name !== '' && !arrangements.some((one, i) => i !== at && one.name === name);
    setDraft(fine ? undefined : { of: arrangement.name, name });
    if (fine) change({ ...arrangement, name }, 'name');
  };
  return (
    <Section
      id="electronics"
      title="Electronics and where the standoffs stand"
      open
      wrong={problem?.path?.startsWith('electronics.') ?? false}
    >
      <Choice
        id="arrangement"
        label="Arrangement in use"
        value={current}
        choices={Object.fromEntries(arrangements.map(({ name }) => [name, name]))}
        onValue={(name) => onRecord(withValue(record, 'electronics.current', name), 'arrangement')}
        href="body/electronics-fit.html"
      />
      <Text
        id="arrangement-name"
        label="Its name"
        value={typed ?? arrangement.name}
        most={80}
        onValue={rename}
        problem={
          typed === undefined
            ? undefined
            : typed === ''
              ? 'An arrangement needs a name.'
              : 'Another arrangement has this name.'
        }
      />
      <Text
        id="arrangement-suits"
        label="Whom it suits"
        value={arrangement.suits ?? ''}
        most={400}
        long
        onValue={(suits) => change({ ...arrangement, suits }, 'suits')}
      />
      <p class="buttons">
        <button type="button" onClick={add}>
          Another arrangement, from this one
        </button>
        {arrangements.length > 1 && (
          <button
            type="button"
            onClick={() => {
              const rest = removed(arrangements, at);
              onRecord(
                withValue(record, 'electronics', { ...record.electronics, current: rest[0]!.name, arrangements: rest }),
                'arrangement-remove',
              );
            }}
          >
            Remove this arrangement
          </button>
        )}
      </p>
      <Items arrangement={arrangement} units={units} onChange={change} problem={wrong} />
      <Standoffs
        arrangement={arrangement}
        units={units}
        onChange={change}
        problem={() => (problem?.path === STANDOFFS ? problem.text : undefined)}
      />
    </Section>
  );
}

const NEW_HARDWARE: HardwareItem = { name: 'New part', count: 1, mass: 0.001, cost: 0 };

/** Screws, strap, wires: whatever else has mass and a price. */
export function Hardware({ record, units, onRecord }: EditProps) {
  const { hardware } = record;
  const put = (next: readonly HardwareItem[], what: string) =>
    onRecord({ ...record, hardware: next }, `hardware-${what}`);
  const fields = [
    { key: 'count', label: 'Count', range: COUNT },
    { key: 'mass', label: 'Mass of one', range: MASS },
    { key: 'cost', label: 'Price of one', range: PRICE },
  ] as const;
  return (
    <Section id="hardware" title="Hardware and everything else">
      {hardware.map((item, i) => (
        <details class="item" aria-label={item.name} key={i}>
          <summary>{item.name}</summary>
          <Text
            id={`hardware-${i}-name`}
            label="Name"
            value={item.name}
            most={80}
            onValue={(name) => put(replaced(hardware, i, { ...item, name }), `${i}-name`)}
          />
          {fields.map(({ key, label, range }) => (
            <Entry
              key={key}
              id={`hardware-${i}-${key}`}
              label={label}
              value={item[key]}
              units={units}
              href="balance/battery-placement.html"
              onValue={(value) => put(replaced(hardware, i, { ...item, [key]: value }), `${i}-${key}`)}
              {...range}
            />
          ))}
          <button type="button" onClick={() => put(removed(hardware, i), 'remove')}>
            {`Remove ${item.name}`}
          </button>
        </details>
      ))}
      <button type="button" onClick={() => put([...hardware, { ...NEW_HARDWARE, name: freshName(hardware) }], 'add')}>
        Add a part
      </button>
    </Section>
  );
}

/** What the frame is called, what changed, whom it suits. */
export function Head({ record, onRecord }: EditProps) {
  const text = (key: 'name' | 'revision' | 'notes' | 'suits', label: string, most: number, long = false) => (
    <Text
      id={`f-${key}`}
      label={label}
      value={record[key]}
      most={most}
      long={long}
      onValue={(value) => onRecord({ ...record, [key]: value } satisfies FrameRecord, key)}
    />
  );
  return (
    <Section id="head" title="Name, revision, notes" open>
      {text('name', 'Name', 80)}
      {text('revision', 'Revision', 40)}
      {text('notes', 'What changed in it, and why', 4000, true)}
      {text('suits', 'Whom it suits', 4000, true)}
    </Section>
  );
}
