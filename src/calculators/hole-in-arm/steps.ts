import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import type { HoleResult } from './compute.ts';
import type { HoleValues } from './inputs.ts';

const length = slotOf('length');
const percent = slotOf('percent', 2);
const ratio = slotOf('ratio');

export const steps: readonly Step<HoleValues, HoleResult>[] = [
  {
    id: 'moment',
    says: 'The moment at the hole',
    formula: 'M = F\\,(L-x)',
    numbers: 'M = \\slot{force}\\cdot(\\slot{arm}-\\slot{station}) = \\slot{moment}',
    slots: (v, { moment }) => ({
      force: { value: v.tipForce, quantity: 'force' },
      arm: length(v.armLength),
      station: length(v.station),
      moment: { value: moment, quantity: 'moment' },
    }),
  },
  {
    id: 'factor',
    says: 'Elastic factor of a hole in a wide sheet of this laminate',
    formula: 'K = 1 + \\sqrt{2\\Bigl(\\sqrt{E_x/E_y}-\\nu_{xy}\\Bigr)+E_x/G_{xy}}',
    numbers:
      'K = 1 + \\sqrt{2\\Bigl(\\sqrt{\\slot{ex}/\\slot{ey}}-\\slot{nu}\\Bigr)+\\slot{ex2}/\\slot{g}} = \\slot{k}',
    slots: (_, { wall, holeFactor }) => ({
      ex: { value: wall.modulusX, quantity: 'modulus' },
      ex2: { value: wall.modulusX, quantity: 'modulus' },
      ey: { value: wall.modulusY, quantity: 'modulus' },
      g: { value: wall.shearModulus, quantity: 'modulus' },
      nu: ratio(wall.poissonRatio),
      k: ratio(holeFactor),
    }),
  },
  {
    id: 'kept',
    says: 'The lowest of net section and both criteria is kept',
    formula: 's = \\min(s_{net},\\,s_{point},\\,s_{mean})',
    numbers: 's = \\min(\\slot{net},\\,\\slot{point},\\,\\slot{mean}) = \\slot{kept}',
    slots: (_, { drilled }) => ({
      net: percent(drilled.netShare),
      point: percent(drilled.pointShare),
      mean: percent(drilled.meanShare),
      kept: percent(drilled.notchedShare),
    }),
  },
  {
    id: 'harmless',
    says: 'As strong as the root where the moment has fallen to that share',
    formula: 'x_0 = L\\,(1-s)',
    numbers: 'x_0 = \\slot{arm}\\cdot(1-\\slot{kept}) = \\slot{from}',
    slots: (v, { drilled, forces }) => ({
      arm: length(v.armLength),
      kept: percent(drilled.notchedShare),
      from: length(forces.harmlessFrom),
    }),
  },
];
