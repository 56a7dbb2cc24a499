import { PATTERNS, patternPositions, type PatternName } from '../../standoff/index.ts';
import { boardSide, currentArrangement, electronicsGap } from '../arrangement.ts';
import { frameBalance, frameCraft } from '../balance.ts';
import { nosePoint } from '../checks/body.ts';
import { withValue } from '../paths.ts';
import { STANDOFF_METALS } from '../../material/index.ts';
import { totalOf } from '../parts.ts';
import { framePlan } from '../plan.ts';
import type { FrameRecord } from '../record.ts';
import { always, type DerivedField, type DerivedFields } from './derived-field.ts';

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
      ? { ...one, standoffs: one.standoffs.map(({ x, y }) => ({ x: middle + (x - middle) * along, y: y * across })) }
      : one,
  );
  return withValue(record, 'electronics.arrangements', moved);
}

/** The layout by its name where it has one and stands in the middle of the body, else by its places. */
const layoutOf = (record: FrameRecord): string =>
  Math.abs(extentOf(record).middle) < NEAR ? (patternOf(record) ?? 'own') : 'own';

/** Mirrored pairs, foremost first, one over on the centre line last; nothing where the layout is otherwise. */
function pairsOf(record: FrameRecord): { x: number; y: number }[] | undefined {
  const standoffs = standoffsOf(record);
  const left = standoffs.filter(({ y }) => y > NEAR).sort((a, b) => b.x - a.x);
  const middle = standoffs.filter(({ y }) => Math.abs(y) <= NEAR);
  const mirrored = left.every(({ x, y }) =>
    standoffs.some((one) => Math.abs(one.x - x) < NEAR && Math.abs(one.y + y) < NEAR),
  );
  const all = 2 * left.length + middle.length === standoffs.length && middle.length <= 1;
  return mirrored && all ? [...left, ...middle] : undefined;
}

const place = (pair: number, axis: 'x' | 'y'): DerivedField => ({
  get: (record) => pairsOf(record)?.[pair - 1]?.[axis],
});

export const BODY: DerivedFields = {
  'body.mass': {
    get: (record) => totalOf(frameBalance(record).parts, ['plates', 'standoffs', 'electronics', 'hardware']).mass,
  },
  'body.forward': {
    get: (record) => {
      const { plan, parts } = frameBalance(record);
      return frameCraft(record, plan, parts).craft.bodyForward;
    },
  },
  'body.height': {
    get: (record) => {
      const { top, underside } = framePlan(record);
      return top - underside;
    },
  },
  // The plates narrow from the waist to both ends.
  'body.taperLength': { get: ({ body }) => body.length / 2 },
  'body.depth': { get: (record) => -framePlan(record).underside },
  'body.gap': { get: (record) => Math.max(electronicsGap(record), 0) },
  'body.boardSide': { get: boardSide },
  'body.tongueLink': always('tied'),
  'body.plateMaterial': always('own'),
  'body.standoff.ends': always('plates'),
  'body.standoff.end': always('plate'),
  'body.standoff.shearStrength': {
    get: ({ body }) => STANDOFF_METALS[body.standoff.material].metal.shearStrength.typical,
  },
  'body.standoff.pattern': { get: patternOf },
  'body.standoff.layout': { get: layoutOf },
  'body.standoff.count': { get: (record) => pairsOf(record) && standoffsOf(record).length },
  'body.standoff.foreAft': {
    get: (record) => extentOf(record).foreAft,
    set: (record, value) => spreadStandoffs(record, value / extentOf(record).foreAft, 1),
  },
  'body.standoff.across': {
    get: acrossOf,
    set: (record, value) => spreadStandoffs(record, 1, value / acrossOf(record)),
  },
  ...Object.fromEntries(
    [1, 2, 3, 4, 5].flatMap((pair) => [
      [`body.standoff.along${pair}`, place(pair, 'x')],
      [`body.standoff.across${pair}`, place(pair, 'y')],
    ]),
  ),
  'cases.nose.forward': { get: (record) => nosePoint(record).x },
  'cases.nose.by': always('speed'),
};
