import { CATALOGUE_LENGTHS, shortestThatClears } from '@frameworthy/shared/standoff';
import { defineCalculator, type Values } from '~/island/declaration.ts';
import { HeightFigure } from './figure.tsx';

const MM = 1e-3;

const inputs = {
  mounts: {
    label: 'Soft mounts under the stack',
    symbol: 'h_m',
    quantity: 'length',
    default: 2.5 * MM,
    min: 0,
    max: 15 * MM,
    step: 0.5 * MM,
    group: 'Between the plates',
    frameField: 'electronics.board.z',
    help: 'Height of grommets, spacers or nuts between the bottom plate and the underside of the lowest board.',
  },
  boards: {
    label: 'Board stack',
    symbol: 'h_b',
    quantity: 'length',
    default: 13 * MM,
    min: 3 * MM,
    max: 32 * MM,
    step: 0.5 * MM,
    group: 'Between the plates',
    parameters: ['height'],
    frameField: 'electronics.board.height',
    help: 'From the underside of the lowest board to the highest part of the top one, plugs and wires put in as they will lie.',
  },
  screws: {
    label: 'Nuts or screw ends above it',
    symbol: 'h_s',
    quantity: 'length',
    default: 2 * MM,
    min: 0,
    max: 12 * MM,
    step: 0.5 * MM,
    group: 'Between the plates',
    help: 'What the stack’s own screws and nuts stand above its highest part.',
  },
  hanging: {
    label: 'Hanging from the top plate',
    symbol: 'h_t',
    quantity: 'length',
    default: 1 * MM,
    min: 0,
    max: 15 * MM,
    step: 0.5 * MM,
    group: 'Between the plates',
    help: 'Screw ends, strap or a receiver under the top plate, over the stack.',
  },
  clearance: {
    label: 'Air left',
    symbol: 'c',
    quantity: 'length',
    default: 2 * MM,
    min: 0,
    max: 10 * MM,
    step: 0.5 * MM,
    group: 'Room to move',
    help: 'For wires, heat and parts that are not quite as drawn. 1 to 3 mm is usual.',
  },
  movement: {
    label: 'Movement in a hit',
    symbol: 'u',
    quantity: 'length',
    default: 1 * MM,
    min: 0,
    max: 10 * MM,
    step: 0.1 * MM,
    group: 'Room to move',
    help: 'How far the stack rises on its mounts or the plate comes down on it. The sway calculator gives the movement of the plate.',
  },
} as const;

export type HeightValues = Values<typeof inputs>;

const compute = ({ mounts, boards, screws, hanging, clearance, movement }: HeightValues) => {
  const height = mounts + boards + screws + hanging;
  const found = shortestThatClears({ height, clearance, movement });
  const next = found.next ?? found.length;
  return { ...found, height, nextLength: next, sway: (next / found.length) ** 3 - 1, moment: next / found.length - 1 };
};

export type HeightResult = ReturnType<typeof compute>;

const length = (value: number) => ({ value, quantity: 'length' }) as const;

export default defineCalculator({
  id: 'standoff-height',
  title: 'Shortest standoff that clears',
  question: 'How short may my standoffs be over this stack of electronics?',
  inputs,
  compute,
  outputs: [
    {
      key: 'length',
      label: 'Shortest length sold that clears',
      symbol: 'L',
      quantity: 'length',
      headline: true,
      meaning: 'The next of the usual lengths at or above what is needed.',
      value: (r) => r.length,
      verdict: ({ spare }) =>
        spare > 0.002
          ? { level: 'marginal', text: 'a little less stack would save a size' }
          : { level: 'good', text: 'little to spare, as it should be' },
    },
    {
      key: 'needed',
      label: 'Needed between the plates',
      quantity: 'length',
      headline: true,
      meaning: 'Stack, air and movement on one line.',
      value: (r) => r.needed,
    },
    {
      key: 'spare',
      label: 'Air beyond what was asked for',
      quantity: 'length',
      meaning: 'From the step of the lengths that are sold.',
      value: (r) => r.spare,
    },
    {
      key: 'nextMoment',
      label: 'Foot moment of the next size up',
      quantity: 'percent',
      digits: 2,
      meaning: 'More than with this one, under the same push.',
      value: (r) => r.moment,
    },
    {
      key: 'nextSway',
      label: 'Sway of the next size up',
      quantity: 'percent',
      digits: 2,
      meaning: 'More than with this one, under the same push, for slender standoffs.',
      value: (r) => r.sway,
    },
  ],
  warnings: (_, { clearance, movement }) =>
    clearance + movement < 0.001
      ? [
          {
            code: 'no-air',
            message: 'Almost no air is left: a wire under the plate or a swollen capacitor is enough to touch.',
          },
        ]
      : [],
  says: ({ length: found, needed }, _, show) =>
    `This stack needs ${show(needed, 'length')} between the plates. The shortest standoff sold that clears it is ${show(found, 'length')}.`,
  steps: [
    {
      id: 'needed',
      says: 'Everything between the plates, on one line.',
      formula: 'h = h_m + h_b + h_s + h_t + c + u',
      numbers:
        'h = \\slot{mounts} + \\slot{boards} + \\slot{screws} + \\slot{hanging} + \\slot{air} + \\slot{move} = \\slot{result}',
      slots: (v, r) => ({
        mounts: length(v.mounts),
        boards: length(v.boards),
        screws: length(v.screws),
        hanging: length(v.hanging),
        air: length(v.clearance),
        move: length(v.movement),
        result: length(r.needed),
      }),
    },
    {
      id: 'size',
      says: 'The next length sold at or above it.',
      formula: 'L \\ge h',
      numbers: '\\slot{L} \\ge \\slot{h}',
      slots: (_, r) => ({ L: length(r.length), h: length(r.needed) }),
    },
  ],
  plots: [
    {
      id: 'cost',
      title: 'What each length costs, against the one that clears',
      caption:
        'Under the same push the foot moment grows with the length and the sway with its cube. Points between the lengths sold are there to guide the eye.',
      x: { label: 'Standoff length', quantity: 'length' },
      y: { label: 'Times that of the shortest that clears', quantity: 'ratio' },
      data: (_, { length: found, needed }) => ({
        x: CATALOGUE_LENGTHS,
        series: [
          { label: 'sway', role: 'main', y: CATALOGUE_LENGTHS.map((l) => (l / found) ** 3) },
          { label: 'foot moment', role: 'second', y: CATALOGUE_LENGTHS.map((l) => l / found) },
        ],
        marker: found,
        stations: [{ x: needed, label: 'needed' }],
      }),
    },
  ],
  Figure: HeightFigure,
  figureCaption:
    'Between the plates, to scale in height: mounts, stack, screw ends, air, what hangs from the top plate.',
  assumptions: [
    'Heights add on one line: what hangs from the top plate is taken to stand right over the highest part of the stack.',
    'The lengths are those usually sold, common practice. Standoffs and plates have tolerances of a tenth of a millimetre or two.',
    'The cost of the next size holds for slender standoffs held alike; the sway calculator gives the full figure. Results are estimates.',
  ],
  sources: ['common-practice', 'ghali-neville-structural'],
  formulas: ['standoff/catalogue.ts'],
});
