import type { PlanPoint } from '../../fit/index.ts';
import { PATTERNS, patternPositions, type PatternName } from '../../standoff/index.ts';
import { currentArrangement } from '../arrangement.ts';
import { withValue } from '../paths.ts';
import type { FrameRecord } from '../record.ts';
import type { DerivedField, DerivedFields } from './derived-field.ts';

const NEAR = 1e-4;
/** Of the layout whose middle pair stands wider than the others. */
const WIDER = PATTERNS['six-wide'][0].across;

const standoffsOf = (record: FrameRecord) => currentArrangement(record).standoffs;

function extentOf(record: FrameRecord) {
  const standoffs = standoffsOf(record);
  const xs = standoffs.map(({ x }) => x);
  return {
    foreAft: Math.max(...xs) - Math.min(...xs),
    most: 2 * Math.max(...standoffs.map(({ y }) => Math.abs(y))),
    middle: (Math.max(...xs) + Math.min(...xs)) / 2,
  };
}

/** The usual layout that the standoffs stand in, or none. */
function patternOf(record: FrameRecord): PatternName | undefined {
  const { foreAft, most, middle } = extentOf(record);
  const standoffs = standoffsOf(record);
  if (foreAft < NEAR || most < NEAR) return undefined;
  return (Object.keys(PATTERNS) as PatternName[]).find((pattern) => {
    const places = patternPositions({ pattern, foreAft, across: pattern === 'six-wide' ? most / WIDER : most });
    return (
      places.length === standoffs.length &&
      places.every(({ x, y }) =>
        standoffs.some((one) => Math.abs(one.x - middle - x) < NEAR && Math.abs(one.y - y) < NEAR),
      )
    );
  });
}

/** Across the pair at each end. */
const acrossOf = (record: FrameRecord): number =>
  extentOf(record).most / (patternOf(record) === 'six-wide' ? WIDER : 1);

/** Standoffs spread or drawn together about their middle. */
function spreadStandoffs(record: FrameRecord, along: number, across: number): FrameRecord {
  const { middle } = extentOf(record);
  const { current, arrangements } = record.electronics;
  const moved = arrangements.map((one) =>
    one.name === current
      ? {
          ...one,
          standoffs: one.standoffs.map((at) => ({ ...at, x: middle + (at.x - middle) * along, y: at.y * across })),
        }
      : one,
  );
  return withValue(record, 'electronics.arrangements', moved);
}

/** Mirrored pairs in the record's order, one over on the centre line last; nothing where the layout is otherwise. */
function pairsOf(record: FrameRecord): { x: number; y: number }[] | undefined {
  const standoffs = standoffsOf(record);
  const left = standoffs.filter(({ y }) => y > NEAR);
  const middle = standoffs.filter(({ y }) => Math.abs(y) <= NEAR);
  const mirrored = left.every(({ x, y }) =>
    standoffs.some((one) => Math.abs(one.x - x) < NEAR && Math.abs(one.y + y) < NEAR),
  );
  const all = 2 * left.length + middle.length === standoffs.length && middle.length <= 1;
  return mirrored && all ? [...left, ...middle] : undefined;
}

/** The layout by its name where it has one and stands in the middle of the body, else by its places. */
const layoutOf = (record: FrameRecord): string =>
  (Math.abs(extentOf(record).middle) < NEAR ? patternOf(record) : undefined) ?? (pairsOf(record) ? 'own' : 'each');

/** A field that only a frame has whose standoffs are four in a rectangle about the middle of the body. */
const ofRectangle = ({ get, set }: DerivedField): DerivedField => ({
  get: (record) => (layoutOf(record) === 'four' ? get(record) : undefined),
  ...(set ? { set } : {}),
});

/** Every standoff at `from`, or mirrored to it, goes where `moved` says. */
function moveStandoffs(
  record: FrameRecord,
  from: PlanPoint | undefined,
  mirrored: boolean,
  moved: (at: PlanPoint) => PlanPoint,
): FrameRecord {
  if (!from) return record;
  const same = ({ x, y }: PlanPoint) =>
    Math.abs(x - from.x) < NEAR && Math.abs((mirrored ? Math.abs(y) : y) - from.y) < NEAR;
  const { current, arrangements } = record.electronics;
  const next = arrangements.map((one) =>
    one.name === current ? { ...one, standoffs: one.standoffs.map((at) => (same(at) ? moved(at) : at)) } : one,
  );
  return withValue(record, 'electronics.arrangements', next);
}

const pairPlace = (pair: number, axis: 'x' | 'y'): DerivedField => ({
  get: (record) => pairsOf(record)?.[pair - 1]?.[axis],
  set: (record, value) =>
    moveStandoffs(record, pairsOf(record)?.[pair - 1], true, (at) => ({
      ...at,
      [axis]: axis === 'x' ? value : Math.sign(at.y) * value,
    })),
});

const singlePlace = (number: number, axis: 'x' | 'y'): DerivedField => ({
  get: (record) => standoffsOf(record)[number - 1]?.[axis],
  set: (record, value) =>
    moveStandoffs(record, standoffsOf(record)[number - 1], false, (at) => ({ ...at, [axis]: value })),
});

const numbered = (count: number, name: Readonly<Record<'x' | 'y', string>>, of: typeof singlePlace): DerivedFields =>
  Object.fromEntries(
    Array.from({ length: count }, (_, i) => i + 1).flatMap((number) =>
      (['x', 'y'] as const).map((axis) => [`body.standoff.${name[axis]}${number}`, of(number, axis)]),
    ),
  );

const foreAft: DerivedField = {
  get: (record) => extentOf(record).foreAft,
  set: (record, value) => spreadStandoffs(record, value / extentOf(record).foreAft, 1),
};

const across: DerivedField = {
  get: acrossOf,
  set: (record, value) => spreadStandoffs(record, 1, value / acrossOf(record)),
};

/** Where the standoffs of the arrangement in use stand. */
export const STANDOFFS: DerivedFields = {
  'body.standoff.pattern': { get: patternOf },
  'body.standoff.layout': { get: layoutOf },
  'body.standoff.count': { get: (record) => standoffsOf(record).length },
  'body.standoff.foreAft': foreAft,
  'body.standoff.across': across,
  'body.standoff.rectangle.foreAft': ofRectangle(foreAft),
  'body.standoff.rectangle.across': ofRectangle(across),
  ...numbered(5, { x: 'along', y: 'across' }, pairPlace),
  ...numbered(10, { x: 'x', y: 'y' }, singlePlace),
};
