import { sleeveWall } from './root-inputs.ts';

/** Inputs of a sleeve in the root of a tube arm, for calculators that count its stiffness. Default: none. */
const MM = 1e-3;

type Choices = Readonly<Record<string, number | string>>;
const isTube = (values: Choices): boolean => values.shape === 'tube';
const hasSleeve = (values: Choices): boolean => isTube(values) && Number(values.sleeveWall) > 0;

export const sleeveInputs = {
  sleeveWall: {
    ...sleeveWall,
    group: 'Sleeve',
    shownWhen: isTube,
    help: 'Of a tube of the same stock, bonded into the root. 0 for a bare tube.',
  },
  sleeveReach: {
    label: 'Sleeve past the outer screw',
    symbol: 'x_s',
    quantity: 'length',
    default: 14 * MM,
    min: -100 * MM,
    max: 200 * MM,
    step: 0.5 * MM,
    group: 'Sleeve',
    shownWhen: hasSleeve,
    frameField: 'arm.sleeve.reach',
    help: 'From the middle of that screw outwards. A sleeve that ends before it, below 0, stiffens nothing here.',
  },
  sleeveBondLine: {
    label: 'Bond line of the sleeve',
    symbol: 'h_s',
    quantity: 'length',
    default: 0.1 * MM,
    min: 0.02 * MM,
    max: 0.5 * MM,
    step: 0.01 * MM,
    group: 'Sleeve',
    shownWhen: hasSleeve,
    frameField: 'arm.sleeve.bondLine',
    help: 'Adhesive all round: the sleeve is that much smaller than the bore. Usual: 0.1 to 0.3 mm.',
  },
} as const;
