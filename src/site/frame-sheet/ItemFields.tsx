import {
  FIT_KINDS,
  HOLE_PATTERNS,
  nutAcrossCorners,
  USUAL_BOARD_HOLES,
  type FitItem,
  type HolePattern,
  type Side,
} from '@frameworthy/shared/fit';
import type { UnitChoice } from '@frameworthy/shared/quantity';
import { Choice, Entry, Text, type EntryRange } from '~/frame/ui/Entry.tsx';

const mm = (least: number, most: number): EntryRange => ({
  kind: 'length',
  min: least / 1e3,
  max: most / 1e3,
  step: 1e-3,
});
export const PLACE = mm(-250, 250);
export const MASS: EntryRange = { kind: 'mass', min: 0, max: 1, step: 5e-4 };
const SIZE = mm(1, 200);
const ROOM = { ...mm(0, 60), step: 5e-4 };
const TILT: EntryRange = { kind: 'angle', min: -Math.PI / 2, max: Math.PI / 2, step: Math.PI / 36 };

const FIT = 'body/electronics-fit.html';
const BALANCE = 'balance/battery-placement.html';

interface ItemNumber {
  /** As the record calls it; an error about it goes by the last part of its path. */
  key: string;
  label: string;
  range: EntryRange;
  get: (item: FitItem) => number;
  put: (item: FitItem, value: number) => FitItem;
  /** Only of parts of this kind. */
  only?: FitItem['kind'];
  href?: string;
}

const plain = (
  key: 'length' | 'width' | 'height' | 'x' | 'y' | 'z' | 'mass' | 'tilt' | 'overhang',
  label: string,
  range: EntryRange,
  rest: Partial<ItemNumber> = {},
): ItemNumber => ({
  key,
  label,
  range,
  get: (item) => item[key] ?? 0,
  put: (item, value) => ({ ...item, [key]: value }),
  ...rest,
});

/** Plugs stand in the middle of a side; wires to the motors leave all along it [m]. */
const PLUGS_WIDTH = 0.02;

const wires = (key: string, label: string, sides: readonly Side[], width?: number): ItemNumber => ({
  key,
  label,
  range: ROOM,
  only: 'board',
  get: ({ wires: all = [] }) => Math.max(0, ...all.map(({ side, reach }) => (sides.includes(side) ? reach : 0))),
  put: (item, reach) => ({
    ...item,
    wires: [
      ...(item.wires ?? []).filter(({ side }) => !sides.includes(side)),
      ...sides.map((side) => ({
        ...(width === undefined ? {} : { width }),
        ...(item.wires ?? []).find((one) => one.side === side),
        side,
        reach,
      })),
    ],
  }),
});

/** Width of a lens barrel over its camera's body. */
const LENS_SHARE = 0.65;

const NUMBERS: readonly ItemNumber[] = [
  plain('length', 'Length', SIZE),
  plain('width', 'Width', SIZE),
  plain('height', 'Height', SIZE),
  plain('x', 'Middle, forward', PLACE),
  plain('y', 'Middle, to the left', PLACE),
  plain('z', 'Above the main plate', mm(0, 100)),
  plain('tilt', 'Tilt upwards', TILT, { only: 'camera' }),
  {
    key: 'lens',
    label: 'Lens ahead of it',
    range: ROOM,
    only: 'camera',
    get: ({ lens }) => lens?.reach ?? 0,
    put: (item, reach) => ({ ...item, lens: { diameter: LENS_SHARE * item.height, ...item.lens, reach } }),
  },
  plain('overhang', 'May stand past the edge by', ROOM, { only: 'antenna' }),
  wires('plugs', 'Room for plugs, front and rear', ['front', 'rear'], PLUGS_WIDTH),
  wires('wires', 'Room for wires, left and right', ['left', 'right']),
  {
    key: 'nuts',
    label: 'Nuts and screw ends over it',
    range: ROOM,
    only: 'board',
    get: ({ screw }) => screw?.height ?? 0,
    put: (item, height) => (item.screw ? { ...item, screw: { ...item.screw, height } } : screwed(item, 'M3', height)),
  },
  plain('mass', 'Mass', MASS, { href: BALANCE }),
];

/** A board on its pattern, with the usual hole and nut for the thread. */
function screwed(item: FitItem, thread: 'M2' | 'M3', height: number, pattern = item.pattern ?? '30.5x30.5'): FitItem {
  const hole = Math.max(...USUAL_BOARD_HOLES[pattern]);
  return { ...item, pattern, screw: { ...item.screw, thread, hole, across: nutAcrossCorners(thread), height } };
}

const PATTERNS = {
  none: 'not said',
  ...Object.fromEntries(HOLE_PATTERNS.map((name) => [name, `${name.replace('x', ' × ')} mm`])),
};
const THREADS = { M2: 'M2', M3: 'M3' } as const;
const KINDS = Object.fromEntries(FIT_KINDS.map((kind) => [kind, kind]));
const COVERS = { under: 'the top plate', open: 'nothing' } as const;

interface Props {
  id: string;
  item: FitItem;
  units: UnitChoice;
  onItem: (item: FitItem, what: string) => void;
  /** What is wrong with a value, by the last part of its path. */
  problem: (key: string) => string | undefined;
}

function Screws({ id, item, onItem, problem }: Props) {
  const { pattern, screw } = item;
  const height = screw?.height ?? 0;
  const thread = screw?.thread === 'M2' ? 'M2' : 'M3';
  const put = (next: string) => {
    if (next !== 'none') return onItem(screwed(item, thread, height, next as HolePattern), `${id}-pattern`);
    const bare = { ...item };
    delete bare.pattern;
    delete bare.screw;
    onItem(bare, `${id}-pattern`);
  };
  return (
    <>
      <Choice
        id={`${id}-pattern`}
        label="Hole pattern"
        value={pattern ?? 'none'}
        choices={PATTERNS}
        href={FIT}
        onValue={put}
        problem={problem('pattern') ?? problem('boardSide')}
      />
      {pattern && (
        <Choice
          id={`${id}-screw`}
          label="Screws through it"
          value={thread}
          choices={THREADS}
          href={FIT}
          onValue={(next) => onItem(screwed(item, next as 'M2' | 'M3', height), `${id}-screw`)}
          problem={problem('hole') ?? problem('across')}
        />
      )}
    </>
  );
}

/** One part of the electronics: what it is, how large, and where it lies. */
export function ItemFields(props: Props) {
  const { id, item, units, onItem, problem } = props;
  return (
    <>
      <Text
        id={`${id}-name`}
        label="Name"
        value={item.name}
        most={80}
        onValue={(name) => onItem({ ...item, name }, `${id}-name`)}
        problem={problem('name')}
      />
      <Choice
        id={`${id}-kind`}
        label="Kind"
        value={item.kind}
        choices={KINDS}
        href={FIT}
        onValue={(kind) => onItem({ ...item, kind: kind as FitItem['kind'] }, `${id}-kind`)}
      />
      {NUMBERS.filter(({ only }) => only === undefined || only === item.kind).map(
        ({ key, label, range, get, put, href }) => (
          <Entry
            key={key}
            id={`${id}-${key}`}
            label={label}
            value={get(item)}
            units={units}
            href={href ?? FIT}
            onValue={(value) => onItem(put(item, value), `${id}-${key}`)}
            problem={problem(key)}
            {...range}
          />
        ),
      )}
      {item.kind === 'board' && <Screws {...props} />}
      <Choice
        id={`${id}-cover`}
        label="Over it"
        value={item.openAbove ? 'open' : 'under'}
        choices={COVERS}
        href={FIT}
        onValue={(cover) => onItem({ ...item, openAbove: cover === 'open' }, `${id}-cover`)}
      />
    </>
  );
}
