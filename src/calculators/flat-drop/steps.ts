import { STANDARD_GRAVITY } from '@frameworthy/shared/quantity';
import type { Slot, Step } from '~/island/declaration.ts';
import type { DropResult } from './compute.ts';
import type { DropValues } from './inputs.ts';

const a = (quantity: Slot['quantity'], value: number): Slot => ({ value, quantity });

export const steps: readonly Step<DropValues, DropResult>[] = [
  {
    id: 'spring',
    says: 'Each arm or foot stands on the ground: two springs in a row',
    formula: 'k = \\frac{k_1\\,k_c}{k_1+k_c}',
    numbers: 'k = \\frac{\\slot{own}\\cdot\\slot{contact}}{\\slot{own2}+\\slot{contact2}} = \\slot{k}',
    slots: (_, { own, contact, supports }) => ({
      own: a('stiffness', own),
      own2: a('stiffness', own),
      contact: a('stiffness', contact),
      contact2: a('stiffness', contact),
      k: a('stiffness', supports.stiffness),
    }),
  },
  {
    id: 'rest',
    says: 'At rest they would give by',
    formula: '\\delta_{st} = \\frac{m g}{n\\,k}',
    numbers: '\\delta_{st} = \\frac{\\slot{weight}}{\\slot{n}\\cdot\\slot{k}} = \\slot{rest}',
    slots: (_, { supports, staticDeflection }) => ({
      weight: a('force', supports.mass * STANDARD_GRAVITY),
      n: a('count', supports.count),
      k: a('stiffness', supports.stiffness),
      rest: a('length', staticDeflection),
    }),
  },
  {
    id: 'factor',
    says: 'The fall multiplies the weight by',
    formula: '\\frac{F}{m g} = 1+\\sqrt{1+\\frac{2h}{\\delta_{st}}}',
    numbers: '\\frac{F}{m g} = 1+\\sqrt{1+\\frac{2\\cdot\\slot{height}}{\\slot{rest}}} = \\slot{factor}',
    slots: ({ dropHeight }, { staticDeflection, factor }) => ({
      height: a('altitude', dropHeight),
      rest: a('length', staticDeflection),
      factor: a('ratio', factor),
    }),
  },
  {
    id: 'each',
    says: 'Shared among those that touch',
    formula: 'F_1 = \\frac{F}{n}',
    numbers: 'F_1 = \\frac{\\slot{factor}\\cdot\\slot{weight}}{\\slot{n}} = \\slot{each}',
    slots: (_, { supports, factor, each }) => ({
      factor: a('ratio', factor),
      weight: a('force', supports.mass * STANDARD_GRAVITY),
      n: a('count', supports.count),
      each: a('force', each),
    }),
  },
];
