import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import { peakForce, springsInSeries, wallStress } from '../standoff-steps.ts';
import type { LayoutResult } from './compute.ts';
import type { LayoutValues } from './inputs.ts';

const length = slotOf('length');

export const steps: readonly Step<LayoutValues, LayoutResult>[] = [
  {
    id: 'middle',
    says: 'Middle of the standoffs, all alike: a level push through it turns nothing.',
    formula: 'x_s = \\frac{1}{n}\\sum x_i',
    numbers: 'x_s = \\frac{\\slot{sum}}{\\slot{n}} = \\slot{result}',
    slots: (_, r) => ({
      sum: length(r.places.reduce((sum, { x }) => sum + x, 0)),
      n: slotOf('count')(r.places.length),
      result: length(r.centre.x),
    }),
  },
  {
    ...springsInSeries,
    says: 'All standoffs at the point of the load, rocking and turning included (six equations), and the contact in series.',
  },
  {
    ...peakForce((_, r) => r.speed),
    says: 'Peak force of a hit; a given force is read the other way, as a speed.',
  },
  {
    ...wallStress((r) => {
      const { axial, footMoment, headMoment } = r.forces[r.worst]!;
      return { axial, moment: Math.max(footMoment, headMoment), stress: r.wall[r.worst]! };
    }),
    says: 'Stress in the worst standoff, at the end that is bent more.',
  },
];
