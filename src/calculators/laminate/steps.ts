import { flatCompliance, laminateCompliance } from '@frameworthy/shared/laminate';
import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import { edgesOf, type LaminateResult } from './compute.ts';
import type { LaminateValues } from './inputs.ts';

const [length, modulus, stress, perWidth, moment, ratio, countOf] = [
  slotOf('length'),
  slotOf('modulus'),
  slotOf('stress'),
  slotOf('forcePerLength'),
  slotOf('moment'),
  slotOf('ratio'),
  slotOf('count'),
];

export const steps: readonly Step<LaminateValues, LaminateResult>[] = [
  {
    id: 'ply',
    says: 'One ply along its fibre, with the contraction across held by its neighbours.',
    formula: 'Q_{11} = \\frac{E_1}{1-\\nu_{12}^2 E_2/E_1}',
    numbers: 'Q_{11} = \\slot{q}',
    slots: (_, { plyStiffness }) => ({ q: modulus(plyStiffness) }),
  },
  {
    id: 'thickness',
    says: 'All plies together.',
    formula: 'h = n\\,t',
    numbers: 'h = \\slot{n}\\cdot\\slot{t} = \\slot{h}',
    slots: ({ plyThickness }, { plies, stiffness }) => ({
      n: countOf(plies.length),
      t: length(plyThickness),
      h: length(stiffness.thickness),
    }),
  },
  {
    id: 'stretch',
    says: 'Stretching: each ply turned to its angle, times its thickness, in the direction looked at.',
    formula: 'A_{11} = \\sum \\bar Q_{11,k}\\,t_k',
    numbers: 'A_{11} = \\slot{a}',
    slots: (_, { stiffness }) => ({ a: perWidth(stiffness.a[0][0]) }),
  },
  {
    id: 'modulus',
    says: 'Force per width for a unit of stretch with the sides free, over the thickness: the modulus in the plane.',
    formula: 'E_x = \\frac{1}{a_{11}\\,h}',
    numbers: 'E_x = \\frac{\\slot{k}}{\\slot{h}} = \\slot{e}',
    slots: (values, { stiffness, inPlane }) => {
      const a = edgesOf(values) === 'held' ? flatCompliance(stiffness) : laminateCompliance(stiffness).a;
      return { k: perWidth(1 / a[0][0]), h: length(stiffness.thickness), e: modulus(inPlane.modulusX) };
    },
  },
  {
    id: 'bend',
    says: 'Bending: the same plies weighed with the square of their distance from the middle.',
    formula: 'D_{11} = \\tfrac13\\sum \\bar Q_{11,k}\\,(z_k^3 - z_{k-1}^3)',
    numbers: 'D_{11} = \\slot{d}',
    slots: (_, { stiffness }) => ({ d: moment(stiffness.d[0][0]) }),
  },
  {
    id: 'flexural',
    says: 'The solid strip that would bend as much.',
    formula: 'E_f = \\frac{12}{d_{11}\\,h^3}',
    numbers: 'E_f = \\frac{12\\cdot\\slot{d}}{(\\slot{h})^3} = \\slot{e}',
    slots: (_, { stiffness, flexural }) => ({
      d: moment(1 / laminateCompliance(stiffness).d[0][0]),
      h: length(stiffness.thickness),
      e: modulus(flexural.modulusX),
    }),
  },
  {
    id: 'bending-strength',
    says: 'Stress at which the first ply fails in bending: by each stress alone, and by all together (Tsai-Wu). The lower counts.',
    formula: '\\sigma_f = \\min(\\sigma_{\\mathrm{max}},\\,\\sigma_{\\mathrm{TW}})',
    numbers: '\\sigma_f = \\min(\\slot{alone},\\,\\slot{together}) = \\slot{s}',
    slots: (_, { bending }) => ({
      alone: stress((bending.stress * bending.maximumStress) / bending.factor),
      together: stress((bending.stress * bending.tsaiWu) / bending.factor),
      s: stress(bending.stress),
    }),
  },
  {
    id: 'hole',
    says: 'Elastic factor at a small round hole in this stack.',
    formula: 'K = 1 + \\sqrt{2\\bigl(\\sqrt{E_x/E_y}-\\nu_{xy}\\bigr) + E_x/G_{xy}}',
    numbers: 'K = 1 + \\sqrt{2\\bigl(\\sqrt{\\slot{ey}}-\\slot{nu}\\bigr) + \\slot{eg}} = \\slot{k}',
    slots: (_, { inPlane, holeFactor }) => ({
      ey: ratio(inPlane.modulusX / inPlane.modulusY),
      nu: ratio(inPlane.poissonRatio),
      eg: ratio(inPlane.modulusX / inPlane.shearModulus),
      k: ratio(holeFactor),
    }),
  },
];
