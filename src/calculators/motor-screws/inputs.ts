import type { ChoiceInput, QuantityInput, Values } from '~/island/declaration.ts';
import { loadInputs, plateInputs } from '../mount-inputs.ts';
import { armLength, outerDiameter, wall } from '../root-inputs.ts';

const MM = 1e-3;
type Choices = Readonly<Record<string, number | string>>;
const own = (values: Choices): boolean => values.pattern === 'own';
const through = (values: Choices): boolean => values.screws === '4' || values.keep === 'along';
const beside = (values: Choices): boolean => values.screws === '4' || values.keep === 'across';

const length = (
  group: string,
  [label, symbol, help]: readonly [string, string | undefined, string],
  [value, min, max, step]: readonly [number, number, number, number],
  rest: Partial<QuantityInput> = {},
): QuantityInput => ({
  quantity: 'length',
  label,
  ...(symbol === undefined ? {} : { symbol }),
  help,
  group,
  default: value * MM,
  min: min * MM,
  max: max * MM,
  step: step * MM,
  ...rest,
});

export const inputs = {
  pattern: {
    label: 'Pattern of the motor',
    frameField: 'mount.pattern',
    help: 'Millimetres between opposite holes, as motors are quoted: 16x16 is four holes on a circle of 16 mm.',
    group: 'Motor',
    choices: {
      '9x9': '9 x 9',
      '12x12': '12 x 12',
      '16x16': '16 x 16',
      '16x19': '16 x 19',
      '19x19': '19 x 19',
      own: 'own',
    },
    default: '16x16',
  },
  longPair: {
    label: 'The 19 mm pair lies',
    help: 'Turn the motor by a quarter and the pairs change places.',
    group: 'Motor',
    choices: { along: 'along the arm', across: 'across the arm' },
    default: 'across',
    shownWhen: (values: Choices) => values.pattern === '16x19',
  },
  ownAlong: length('Motor', ['Pair along the arm', undefined, 'Between its two holes.'], [16, 4, 40, 0.5], {
    frameField: 'mount.screwCircle',
    shownWhen: own,
    parameters: ['along'],
  }),
  ownAcross: length('Motor', ['Pair across the arm', undefined, 'Between its two holes.'], [16, 4, 40, 0.5], {
    frameField: 'mount.screwCircleAcross',
    shownWhen: own,
    parameters: ['across'],
  }),
  baseDiameter: length(
    'Motor',
    ['Diameter that it stands on', 'D_b', 'Across the feet or the base, over the holes. It tips about this edge.'],
    [21, 8, 50, 0.5],
  ),
  threadDepth: length(
    'Motor',
    [
      'Depth of its thread',
      undefined,
      'From the face on the plate. Turn a screw in by hand, without the plate, until it stops or ends flush.',
    ],
    [3.5, 1, 12, 0.1],
  ),
  windingDepth: length(
    'Motor',
    [
      'Depth of the winding',
      'h_w',
      'From the same face to the first copper above the hole: a toothpick through the hole and a caliper.',
    ],
    [4.5, 1.5, 20, 0.1],
  ),
  screws: {
    label: 'Screws',
    help: 'On your frame. The other count is shown beside it.',
    group: 'Screws',
    choices: { '2': 'two', '4': 'four' },
    default: '4',
    frameField: 'mount.screwCount',
  },
  keep: {
    label: 'Two screws stand',
    help: 'Beside the tube, through the plate alone, or in line with the tube and through it.',
    group: 'Screws',
    choices: { across: 'beside the tube', along: 'through the tube' },
    default: 'across',
  },
  thread: {
    label: 'Thread',
    help: 'M2 goes with 9 and 12 mm patterns, M3 with 16 and 19 mm.',
    group: 'Screws',
    choices: { M2: 'M2', 'M2.5': 'M2.5', M3: 'M3' },
    default: 'M3',
  },
  grade: {
    label: 'Property class',
    help: 'As the bag says.',
    group: 'Screws',
    choices: { '8.8': 'steel 8.8', '10.9': 'steel 10.9', '12.9': 'steel 12.9', 'A2-70': 'stainless A2-70' },
    default: '10.9',
  },
  head: {
    label: 'Head',
    help: 'Both have a hexagon socket.',
    group: 'Screws',
    choices: { button: 'button head', cap: 'cap head' },
    default: 'button',
  },
  screwLength: length(
    'Screws',
    ['Screw beside the tube, length', 'L', 'Under the head, as screws are sold.'],
    [5, 3, 40, 1],
    {
      shownWhen: beside,
    },
  ),
  throughLength: length(
    'Screws',
    ['Screw through the tube, length', undefined, 'Under the head, as screws are sold.'],
    [6, 3, 60, 1],
    {
      shownWhen: through,
    },
  ),
  throughSeat: {
    label: 'Its head rests',
    help: 'Under the tube it clamps and may crush it. On the upper wall it needs a hole for head and driver below.',
    group: 'Screws',
    choices: { inside: 'on the upper wall, inside', below: 'under the tube' },
    default: 'inside',
    shownWhen: through,
  },
  washer: length(
    'Screws',
    ['Washer under each head', undefined, '0 for none. A washer lost is half a millimetre nearer to the winding.'],
    [0, 0, 2, 0.1],
  ),
  tappedShearStrength: {
    quantity: 'stress',
    label: 'Shear strength of the motor’s base',
    symbol: '\\tau',
    help: 'Aluminium of unknown alloy about 200 MPa.',
    group: 'Screws',
    default: 200e6,
    min: 50e6,
    max: 400e6,
    step: 5e6,
    parameters: ['shearStrength'],
  },
  outerDiameter: { ...outerDiameter, group: 'Arm' },
  wall: { ...wall, group: 'Arm' },
  plateThickness: { ...plateInputs.plateThickness, group: 'Arm' },
  armLength: { ...armLength, label: 'Root to motor axis' },
  ...loadInputs,
} as const satisfies Record<string, QuantityInput | ChoiceInput>;

export type ScrewValues = Values<typeof inputs>;
