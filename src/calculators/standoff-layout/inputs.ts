import type { QuantityInput, Values } from '~/island/declaration.ts';
import {
  electronicsInputs,
  frameMassInputs,
  plateEndInputs,
  standoffInputs,
  standoffScrewInputs,
} from '../body-inputs.ts';

const MM = 1e-3;
const DEGREE = Math.PI / 180;

type Given = Readonly<Record<string, number | string>>;
const own = (values: Given) => values['layout'] === 'own';
const each = (values: Given) => values['layout'] === 'each';
const byPlate = (values: Given) => values['foot'] === 'plate' || values['head'] === 'plate';
/** A pair shows while standoffs are left for it; the last one of an odd number stands alone on the centre line. */
const pairs = (values: Given) => Math.ceil(Number(values['count']) / 2);
const isSingle = (values: Given, pair: number) => Number(values['count']) === 2 * pair - 1;

const ORDINALS = ['First', 'Second', 'Third', 'Fourth', 'Fifth'] as const;

const along = (pair: number, value: number): QuantityInput => ({
  label: `${ORDINALS[pair - 1]} pair, forward`,
  symbol: `x_${pair}`,
  quantity: 'length',
  default: value * MM,
  min: -200 * MM,
  max: 200 * MM,
  step: 1 * MM,
  group: 'Where they stand',
  shownWhen: (values) => own(values) && pairs(values) >= pair,
  frameField: `body.standoff.along${pair}`,
  help: 'From the middle of the plate; negative is aft.',
});
const across = (pair: number, value: number): QuantityInput => ({
  label: `${ORDINALS[pair - 1]} pair, to each side`,
  symbol: `y_${pair}`,
  quantity: 'length',
  default: value * MM,
  min: 0,
  max: 80 * MM,
  step: 0.5 * MM,
  group: 'Where they stand',
  shownWhen: (values) => own(values) && pairs(values) >= pair && !isSingle(values, pair),
  frameField: `body.standoff.across${pair}`,
  help: 'From the centre line: half of their distance.',
});
/** One standoff anywhere, by its number. */
const single = (number: number, axis: 'x' | 'y', value: number): QuantityInput => {
  const [way, most, step, help] =
    axis === 'x'
      ? (['forward', 200, 1, 'From the middle of the plate; negative is aft.'] as const)
      : (['to the left', 80, 0.5, 'From the centre line; negative is to the right.'] as const);
  return {
    label: `Standoff ${number}, ${way}`,
    symbol: `${axis}_${number}`,
    quantity: 'length',
    default: value * MM,
    min: -most * MM,
    max: most * MM,
    step: step * MM,
    group: 'Where they stand',
    shownWhen: (values) => each(values) && Number(values['count']) >= number,
    frameField: `body.standoff.${axis}${number}`,
    help,
  };
};
/** Where they start: six under a body whose antenna leaves on one side. */
const SINGLES = [
  [36, 16.5],
  [36, -16.5],
  [-36, 16.5],
  [-36, -10],
  [0, 23],
  [4, -23],
  [26, 16.5],
  [26, -16.5],
  [-26, 16.5],
  [-26, -16.5],
] as const;
type SingleKey = `${'x' | 'y'}${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10}`;
const singles = Object.fromEntries(
  SINGLES.flatMap(([x, y], i) => [
    [`x${i + 1}`, single(i + 1, 'x', x)],
    [`y${i + 1}`, single(i + 1, 'y', y)],
  ]),
) as Record<SingleKey, QuantityInput>;
const spacing = (label: string, symbol: string, value: number, way: 'foreAft' | 'across'): QuantityInput => ({
  label,
  symbol,
  quantity: 'length',
  default: value * MM,
  min: 10 * MM,
  max: 250 * MM,
  step: 1 * MM,
  group: 'Where they stand',
  shownWhen: (values) => !own(values) && !each(values),
  frameField: `body.standoff.${way}`,
  help: 'Middle to middle of the standoffs.',
});

const ends = (label: string, help: string) =>
  ({
    label,
    choices: { plate: 'by a carbon plate that bends a little', fixed: 'rigidly', pinned: 'loosely, free to turn' },
    default: 'plate',
    group: 'Ends',
    frameField: 'body.standoff.end',
    help,
  }) as const;

export const inputs = {
  layout: {
    label: 'Layout',
    choices: {
      own: 'mirrored pairs, as typed below',
      each: 'each at its own place, as typed below',
      three: '3: a pair in front, one behind',
      four: '4: a pair at each end',
      five: '5: four, and one in the middle',
      'six-middle': '6: extra pair in the middle',
      'six-front': '6: extra pair nearer the nose',
      'six-wide': '6: extra pair in the middle, wider',
      eight: '8: two extra pairs',
    },
    default: 'own',
    group: 'Where they stand',
    parameters: ['columns'],
    frameField: 'body.standoff.layout',
    help: 'A usual one by two spacings, mirrored pairs anywhere, or no symmetry at all.',
  },
  count: {
    label: 'Number of standoffs',
    symbol: 'n',
    quantity: 'count',
    default: 6,
    min: 1,
    max: 10,
    step: 1,
    group: 'Where they stand',
    shownWhen: (values: Given) => own(values) || each(values),
    frameField: 'body.standoff.count',
    help: 'Three at least. In pairs, the last of an odd number stands on the centre line.',
  },
  along1: along(1, 36),
  across1: across(1, 16.5),
  along2: along(2, -36),
  across2: across(2, 16.5),
  along3: along(3, 26),
  across3: across(3, 16.5),
  along4: along(4, -26),
  across4: across(4, 16.5),
  along5: along(5, 0),
  across5: across(5, 23),
  ...singles,
  foreAft: spacing('Front pair to rear pair', 'a', 72, 'foreAft'),
  across: spacing('Across a pair', 'b', 33, 'across'),
  plateLength: {
    label: 'Length of the top plate',
    quantity: 'length',
    default: 130 * MM,
    min: 30 * MM,
    max: 400 * MM,
    step: 1 * MM,
    group: 'Where they stand',
    frameField: 'body.topPlate.length',
    help: 'Fore and aft; the standoffs stand on it.',
  },
  plateWidth: {
    label: 'Width of the top plate',
    quantity: 'length',
    default: 56 * MM,
    min: 12 * MM,
    max: 200 * MM,
    step: 1 * MM,
    group: 'Where they stand',
    frameField: 'body.width',
    help: 'Across, at the standoffs.',
  },
  ...standoffInputs,
  length: { ...standoffInputs.length, default: 22 * MM },
  foot: ends('Feet are held', 'A screwed face on carbon is neither rigid nor loose.'),
  head: ends('Heads are held', 'Loosely: what is left when the top screws have opened.'),
  bottomPlate: { ...plateEndInputs.bottomPlate, shownWhen: (values: Given) => values['foot'] === 'plate' },
  topPlate: { ...plateEndInputs.topPlate, shownWhen: (values: Given) => values['head'] === 'plate' },
  plateRadius: { ...plateEndInputs.plateRadius, shownWhen: byPlate },
  plateModulus: { ...plateEndInputs.plateModulus, shownWhen: byPlate },
  plateStrength: { ...plateEndInputs.plateStrength, shownWhen: byPlate },
  ...standoffScrewInputs,
  loadBy: {
    label: 'The load is given as',
    choices: { speed: 'the speed of a hit', force: 'a force' },
    default: 'speed',
    group: 'Load',
    frameField: 'cases.nose.by',
    help: 'A hit brings energy, and its peak depends on the body.',
  },
  speed: {
    label: 'Speed of the hit',
    symbol: 'v',
    quantity: 'speed',
    default: 8,
    min: 0.5,
    max: 40,
    step: 0.5,
    group: 'Load',
    frameField: 'cases.nose.speed',
    shownWhen: (values: Given) => values['loadBy'] === 'speed',
    help: 'Most hits happen at 3 to 12 m/s.',
  },
  force: {
    label: 'Force',
    symbol: 'F',
    quantity: 'force',
    default: 500,
    min: 1,
    max: 20000,
    step: 10,
    group: 'Load',
    shownWhen: (values: Given) => values['loadBy'] === 'force',
    help: 'On the top plate, at this point.',
  },
  heading: {
    label: 'Comes from, seen from the nose',
    quantity: 'angle',
    default: 0,
    min: -180 * DEGREE,
    max: 180 * DEGREE,
    step: 5 * DEGREE,
    group: 'Load',
    help: '0° from ahead, 90° from the left, 180° from behind.',
  },
  downwards: {
    label: 'Comes from above by',
    quantity: 'angle',
    default: 0,
    min: -90 * DEGREE,
    max: 90 * DEGREE,
    step: 5 * DEGREE,
    group: 'Load',
    help: '90° is straight down on the plate; negative from below.',
  },
  hitForward: {
    label: 'Where, forward',
    quantity: 'length',
    default: 60 * MM,
    min: -200 * MM,
    max: 200 * MM,
    step: 1 * MM,
    group: 'Load',
    parameters: ['x'],
    frameField: 'cases.nose.forward',
    help: 'From the middle of the plate; negative is aft.',
  },
  hitAside: {
    label: 'Where, to the left',
    symbol: 'e',
    quantity: 'length',
    default: 15 * MM,
    min: -100 * MM,
    max: 100 * MM,
    step: 1 * MM,
    group: 'Load',
    parameters: ['y'],
    frameField: 'cases.nose.aside',
    help: 'From the centre line; negative is to the right.',
  },
  hitHeight: {
    label: 'Where, above the plate',
    symbol: 'h',
    quantity: 'length',
    default: 5 * MM,
    min: -30 * MM,
    max: 60 * MM,
    step: 1 * MM,
    group: 'Load',
    parameters: ['z'],
    frameField: 'cases.nose.height',
    help: 'Near 0 for the edge of the plate, more for a mount on it.',
  },
  ...frameMassInputs,
  ...electronicsInputs,
} as const;

export type LayoutValues = Values<typeof inputs>;
