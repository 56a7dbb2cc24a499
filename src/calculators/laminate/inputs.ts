import { plyMaterial, UNIDIRECTIONAL_PLY, WOVEN_PLY } from '@frameworthy/shared/laminate';
import type { QuantityInput, Values } from '~/island/declaration.ts';

const MM = 1e-3;
const GPA = 1e9;
const MPA = 1e6;

const own = (values: Readonly<Record<string, number | string>>): boolean => values.ply === 'own';
const ud = plyMaterial(UNIDIRECTIONAL_PLY);

const count = (input: Pick<QuantityInput, 'label' | 'help' | 'default' | 'parameters'>): QuantityInput => ({
  quantity: 'count',
  group: 'Stack',
  min: 0,
  max: 16,
  step: 1,
  ...input,
});
const modulus = (input: Pick<QuantityInput, 'label' | 'symbol' | 'help' | 'default'>): QuantityInput => ({
  quantity: 'modulus',
  group: 'Ply',
  min: 1 * GPA,
  max: 400 * GPA,
  step: 0.5 * GPA,
  shownWhen: own,
  ...input,
});
const strength = (input: Pick<QuantityInput, 'label' | 'symbol' | 'help' | 'default'>): QuantityInput => ({
  quantity: 'stress',
  group: 'Strength of the ply',
  min: 5 * MPA,
  max: 4000 * MPA,
  step: 5 * MPA,
  shownWhen: own,
  ...input,
});

export const inputs = {
  ply: {
    label: 'Ply',
    choices: { woven: WOVEN_PLY.name, unidirectional: UNIDIRECTIONAL_PLY.name, own: 'own values' },
    default: 'woven',
    group: 'Ply',
    help: 'What one layer is. A woven ply has fibre along its angle and across it. The figures behind the names are typical sheet values.',
  },
  plyThickness: {
    label: 'Thickness of a ply',
    symbol: 't',
    quantity: 'length',
    default: 0.25 * MM,
    min: 0.02 * MM,
    max: 1 * MM,
    step: 0.01 * MM,
    group: 'Ply',
    parameters: ['thickness'],
    help: 'Cured. Fabric of 200 g/m² gives 0.2 to 0.25 mm, unidirectional prepreg 0.1 to 0.2 mm. Plate thickness over ply count is the surest.',
  },
  modulusAlong: modulus({
    label: 'Modulus along the fibre',
    symbol: 'E_1',
    default: ud.modulusAlong,
    help: 'Of the cured ply, fibre and resin together.',
  }),
  modulusAcross: modulus({
    label: 'Modulus across',
    symbol: 'E_2',
    default: ud.modulusAcross,
    help: 'The same as along for a balanced fabric; 7 to 11 GPa for a unidirectional ply.',
  }),
  shearModulus: {
    ...modulus({
      label: 'Shear modulus',
      symbol: 'G_{12}',
      default: ud.shearModulus,
      help: 'In the plane of the ply: 4 to 7 GPa with epoxy.',
    }),
    max: 60 * GPA,
  },
  poissonRatio: {
    label: 'Poisson’s ratio',
    symbol: '\\nu_{12}',
    quantity: 'ratio',
    default: ud.poissonRatio,
    min: 0,
    max: 0.45,
    step: 0.01,
    group: 'Ply',
    shownWhen: own,
    help: 'Contraction across under a pull along the fibre: 0.25 to 0.35 for a unidirectional ply, 0.03 to 0.1 for fabric.',
  },
  density: {
    label: 'Density',
    symbol: '\\rho',
    quantity: 'density',
    default: 1550,
    min: 1000,
    max: 2500,
    step: 10,
    group: 'Ply',
    shownWhen: own,
    help: 'Of the cured ply: 1.5 to 1.6 g/cm³ for carbon in epoxy.',
  },
  alongTension: strength({
    label: 'Along, tension',
    symbol: 'X_t',
    default: ud.strengths!.alongTension,
    help: 'Tensile strength along the fibre.',
  }),
  alongCompression: strength({
    label: 'Along, compression',
    symbol: 'X_c',
    default: ud.strengths!.alongCompression,
    help: 'Compressive strength along the fibre, lower than in tension for carbon.',
  }),
  acrossTension: strength({
    label: 'Across, tension',
    symbol: 'Y_t',
    default: ud.strengths!.acrossTension,
    help: 'What splits a unidirectional ply: only the resin holds.',
  }),
  acrossCompression: strength({
    label: 'Across, compression',
    symbol: 'Y_c',
    default: ud.strengths!.acrossCompression,
    help: 'Compressive strength across the fibre.',
  }),
  shear: strength({
    label: 'In-plane shear',
    symbol: 'S',
    default: ud.strengths!.shear,
    help: 'Shear strength in the plane of the ply.',
  }),

  part: {
    label: 'Made into',
    choices: { plate: 'a plate, free to curl', tube: 'the wall of a tube' },
    default: 'plate',
    group: 'Stack',
    help: 'A closed tube cannot curl, so bending and stretching of its wall do not mix. Angles count from the length of the arm or tube.',
  },
  count0: count({
    label: 'Plies at 0°',
    default: 6,
    parameters: ['plies'],
    help: 'Along the arm. For fabric: threads along and across the arm. In one half if the stack is mirrored.',
  }),
  countPlus: count({
    label: 'Plies at +45°',
    default: 2,
    parameters: ['count+45'],
    help: 'Turned anticlockwise. For fabric +45° and −45° are the same ply.',
  }),
  countMinus: count({
    label: 'Plies at −45°',
    default: 2,
    parameters: ['count-45'],
    help: 'Turned clockwise. As many as at +45°, or the stack is unbalanced and twists.',
  }),
  count90: count({
    label: 'Plies at 90°',
    default: 0,
    help: 'Across the arm, or round the tube. For fabric the same as 0°.',
  }),
  order: {
    label: 'From the face inwards',
    choices: { zero: '0°, ±45°, 90°', fortyFive: '±45°, 0°, 90°', ninety: '90°, ±45°, 0°' },
    default: 'zero',
    group: 'Stack',
    help: 'What lies outside decides the bending stiffness and takes the scrapes.',
  },
  mirrored: {
    label: 'Counts are for',
    choices: { yes: 'one half, mirrored about the middle', no: 'the whole stack, laid once' },
    default: 'yes',
    group: 'Stack',
    help: 'Plates are mirrored so that they come out flat. A rolled tube is laid once, from the outside inwards.',
  },
  direction: {
    label: 'Direction looked at',
    symbol: '\\theta',
    quantity: 'angle',
    default: 0,
    min: -Math.PI / 2,
    max: Math.PI / 2,
    step: Math.PI / 36,
    group: 'Load',
    help: 'Angle between the load and the 0° plies: 45° for an arm cut diagonally from the sheet.',
  },
} as const;

export type LaminateValues = Values<typeof inputs>;
