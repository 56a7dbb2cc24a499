import { QUASI_ISOTROPIC_PLATE } from '@frameworthy/shared/material';
import { loadedPlate } from '@frameworthy/shared/plate';
import { defineCalculator, sweep, type QuantityInput, type Values } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import { SpanFigure } from './figure.tsx';

const MM = 1e-3;
type Given = Readonly<Record<string, number | string>>;
const length = (
  [value, min, max, step]: readonly [number, number, number, number],
  rest: Pick<QuantityInput, 'label' | 'help' | 'group'> & Partial<QuantityInput>,
): QuantityInput => ({
  quantity: 'length',
  default: value * MM,
  min: min * MM,
  max: max * MM,
  step: step * MM,
  ...rest,
});
const round = (values: Given) => values['shape'] === 'round';

const inputs = {
  shape: {
    label: 'Free plate',
    choices: { rectangle: 'a rectangle', round: 'round' },
    default: 'rectangle',
    group: 'Plate',
    help: 'The part between its supports: rows of standoffs, the edge of the body, the ring of a mount.',
  },
  width: length([33, 5, 200, 1], {
    label: 'One side',
    symbol: 'a',
    group: 'Plate',
    shownWhen: (values) => !round(values),
    frameField: 'body.standoff.across',
    help: 'Between two supports, middle to middle.',
  }),
  long: length([72, 5, 400, 1], {
    label: 'The other side',
    symbol: 'b',
    group: 'Plate',
    parameters: ['length'],
    shownWhen: (values) => !round(values),
    frameField: 'body.standoff.foreAft',
    help: 'Between the other two supports. With two supports alone take it long.',
  }),
  radius: length([15, 3, 150, 0.5], {
    label: 'Its radius',
    symbol: 'a',
    group: 'Plate',
    shownWhen: round,
    help: 'To the circle on which it is held.',
  }),
  thickness: length([2, 0.5, 8, 0.1], {
    label: 'Thickness',
    symbol: 't',
    group: 'Plate',
    frameField: 'body.topPlate.thickness',
    help: 'Top plates are mostly 1.5 to 2 mm, bottom plates 2 to 3 mm.',
  }),
  edge: {
    label: 'Held at its edges',
    choices: { supported: 'lying on them, free to slope', fixed: 'clamped level' },
    default: 'supported',
    group: 'Plate',
    help: 'A row of screws is nearer to the first, a thick clamp nearer to the second. The truth lies between.',
  },
  load: {
    label: 'The force is',
    choices: { spread: 'spread over the whole plate', spot: 'on a spot in the middle' },
    default: 'spot',
    group: 'Load',
    help: 'A battery spreads its force over a pad, a screw head or a stone does not.',
  },
  force: {
    label: 'Force',
    symbol: 'P',
    quantity: 'force',
    default: 300,
    min: 1,
    max: 5000,
    step: 5,
    group: 'Load',
    help: 'A stone under an upside-down landing is some hundreds of newtons; a pack of 230 g at 50 times gravity 110 N.',
  },
  spotRadius: length([3, 0.5, 20, 0.25], {
    label: 'Radius of the spot',
    symbol: 'r',
    group: 'Load',
    shownWhen: (values) => values['load'] === 'spot',
    help: 'Half of a screw head, a washer, or what the stone touches.',
  }),
} as const;

export type SpanValues = Values<typeof inputs>;

const compute = (values: SpanValues) => {
  const { shape, width, long, radius, thickness, edge, load, force, spotRadius } = values;
  const material = QUASI_ISOTROPIC_PLATE;
  const plate = loadedPlate({
    shape: shape === 'round' ? { radius } : { width, length: long },
    edge,
    force,
    ...(load === 'spot' ? { spotRadius } : {}),
    thickness,
    youngsModulus: material.youngsModulus.typical,
  });
  const stress = Math.max(plate.middleStress, plate.edgeStress);
  const span = shape === 'round' ? 2 * radius : Math.min(width, long);
  return {
    ...plate,
    stress,
    span,
    use: stress / material.bendingStrength.typical,
    youngsModulus: material.youngsModulus.typical,
  };
};

export type SpanResult = ReturnType<typeof compute>;

export default defineCalculator({
  id: 'plate-span',
  title: 'Plate between its supports',
  question: 'How far does a plate bend between its supports, and does it hold?',
  inputs,
  compute,
  outputs: [
    {
      key: 'deflection',
      label: 'Deflection in the middle',
      symbol: 'w',
      quantity: 'length',
      digits: 2,
      headline: true,
      meaning: 'Against the air under the plate.',
      value: (r) => r.deflection,
    },
    {
      key: 'use',
      label: 'Strength used',
      quantity: 'percent',
      digits: 2,
      headline: true,
      meaning: 'Of a typical bending strength of quasi-isotropic plate.',
      value: (r) => r.use,
      verdict: (r) => verdictOfUse(r.use, 'the strength'),
    },
    {
      key: 'middleStress',
      label: 'Stress in the middle',
      symbol: '\\sigma_m',
      quantity: 'stress',
      meaning: 'On the lower side. A hole there is not counted.',
      value: (r) => r.middleStress,
    },
    {
      key: 'edgeStress',
      label: 'Stress at a clamped edge',
      symbol: '\\sigma_e',
      quantity: 'stress',
      meaning: 'In the middle of the longer edge, on the upper side; nothing where the edge may slope.',
      value: (r) => r.edgeStress,
    },
    {
      key: 'stiffness',
      label: 'Force over deflection',
      symbol: 'k',
      quantity: 'stiffness',
      meaning: 'It grows with the third power of the thickness.',
      value: (r) => r.stiffness,
    },
  ],
  warnings: (r, { thickness }) =>
    r.deflection > thickness / 2
      ? [
          {
            code: 'large-deflection',
            message:
              'It bends by more than half its thickness: from there a plate also stretches, and is stiffer than shown.',
          },
        ]
      : [],
  says: ({ deflection, use }, { force }, show) =>
    `Under ${show(force, 'force')} the plate bends ${show(deflection, 'length', 2)} in the middle and uses ${show(use, 'percent', 2)} of its strength.`,
  steps: [
    {
      id: 'rigidity',
      says: 'Rigidity of the plate, for each unit of width, with ν of 0.3.',
      formula: 'D = \\frac{E t^3}{12(1-\\nu^2)}',
      numbers: 'D = \\frac{\\slot{E}\\cdot(\\slot{t})^3}{12\\,(1-0.3^2)} = \\slot{result}',
      slots: (v, r) => ({
        E: { value: r.youngsModulus, quantity: 'modulus' },
        t: { value: v.thickness, quantity: 'length' },
        result: { value: r.rigidity, quantity: 'moment' },
      }),
    },
    {
      id: 'deflection',
      says: 'Deflection; the coefficient comes from the series of the plate, a is its shorter side or its radius.',
      formula: 'w = \\alpha\\,\\frac{P a^2}{D}',
      numbers: 'w = \\slot{alpha}\\cdot\\frac{\\slot{P}\\cdot(\\slot{a})^2}{\\slot{D}} = \\slot{result}',
      slots: (v, r) => {
        const a = v.shape === 'round' ? v.radius : r.span;
        return {
          alpha: { value: (r.deflection * r.rigidity) / (v.force * a ** 2), quantity: 'ratio' },
          P: { value: v.force, quantity: 'force' },
          a: { value: a, quantity: 'length' },
          D: { value: r.rigidity, quantity: 'moment' },
          result: { value: r.deflection, quantity: 'length', digits: 2 },
        };
      },
    },
    {
      id: 'stress',
      says: 'Stress from the larger of the two moments, middle or edge.',
      formula: '\\sigma = \\frac{6 M}{t^2}',
      numbers: '\\sigma = \\frac{6\\cdot\\slot{M}}{(\\slot{t})^2} = \\slot{result}',
      slots: (v, r) => ({
        // A moment for each unit of width is a force.
        M: { value: (r.stress * v.thickness ** 2) / 6, quantity: 'force' },
        t: { value: v.thickness, quantity: 'length' },
        result: { value: r.stress, quantity: 'stress' },
      }),
    },
  ],
  plots: [
    {
      id: 'thickness',
      title: 'Deflection against thickness',
      caption: 'Half a millimetre more is worth a support.',
      x: { label: 'Thickness', quantity: 'length' },
      y: { label: 'Deflection', quantity: 'length' },
      data: (values, _, run) =>
        sweep(values, run, { input: 'thickness', from: 1 * MM, to: 4 * MM, count: 31 }, [
          { label: 'as held', of: (r) => r.deflection },
        ]),
    },
  ],
  Figure: SpanFigure,
  figureCaption: 'Section through the middle of the plate, the bending drawn larger by the stated factor.',
  assumptions: [
    'Thin plate, alike in every direction, held along all its edges, without holes; standoffs in a row count as an edge.',
    'Deflection below half the thickness. Results are estimates.',
  ],
  sources: ['timoshenko-1959-plates', 'young-2002-roark', 'woven-plate-data-sheet'],
  formulas: ['plate/loaded-plate.ts', 'plate/rectangular-plate.ts', 'plate/circular-plate.ts', 'plate/load-spot.ts'],
});
