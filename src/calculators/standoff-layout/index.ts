import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { LayoutFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';
import { tables } from './tables.ts';

export default defineCalculator({
  id: 'standoff-layout',
  title: 'Layout of the standoffs',
  question: 'How many standoffs, and where, for a load from this side?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says: ({ places, peakForce, movement, first, firstForce, speed }, { loadBy, gap }, show) => {
    const load = loadBy === 'force' ? '' : `A hit at ${show(speed, 'speed', 2)} pushes with some `;
    const who = first.standoff > 0 ? ` (standoff ${first.standoff})` : '';
    return `${load}${show(peakForce, 'force', 2)} on ${places.length} standoffs: the plate moves ${show(movement, 'length', 2)} at the electronics, of ${show(gap, 'length', 2)} free. From about ${show(firstForce, 'force', 2)}, a hit at ${show(first.speed, 'speed', 2)}, ${first.what}${who}.`;
  },
  steps,
  plots,
  tables,
  Figure: LayoutFigure,
  figureCaption:
    'Plan, nose to the right. Arrows: side force on each head. Dashed: where the plate goes, larger by the stated factor.',
  assumptions: [
    'Rigid top plate, bottom plate held by the arms; all standoffs alike, bending and shearing, none resisting twist.',
    'Linear until all standoffs fold. Measured peaks lie up to 1.5 times higher: speeds are for ranking. Results are estimates.',
    'The whole mass pushes through the standoffs: too much where the battery rides on the top plate.',
    'Roll inertia as pitch inertia, centre of mass over the middle of the plate.',
    'Plates bend as quasi-isotropic carbon, simply supported at the free radius; cracks to a cutout are not checked.',
  ],
  sources: [
    'chopra-2012-dynamics',
    'ghali-neville-structural',
    'shigley-2011-design',
    'hibbeler-mechanics',
    'cowper-1966-shear',
    'young-2002-roark',
    'azambuja-2022-drops',
    'common-practice',
  ],
  formulas: [
    'standoff/body-hit.ts',
    'standoff/rigid-plate.ts',
    'standoff/plan.ts',
    'standoff/limits.ts',
    'standoff/folding.ts',
    'standoff/plate-foot.ts',
    'standoff/catalogue.ts',
  ],
});
