import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { SwayFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'standoff-sway',
  title: 'Sway of the top plate',
  question: 'What does a nose-first hit do to my standoffs, and does the top plate reach the electronics?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says: ({ peakForce, band, movement, first, touches }, { speed, gap }, show) =>
    `At ${show(speed, 'speed', 2)} the nose feels some ${show(peakForce, 'force', 2)} to ${show(band.high, 'force', 2)}, and the top plate moves ${show(movement, 'length', 2)} at the electronics, of ${show(gap, 'length', 2)} free. In such a hit ${first.what} from about ${show(first.speed, 'speed', 2)} on; the electronics are reached at about ${show(touches, 'speed', 2)}.`,
  steps,
  plots,
  Figure: SwayFigure,
  figureCaption:
    'Side and plan, to scale. The movement that springs back is drawn larger by the stated factor. The standoff that is bent most is named.',
  assumptions: [
    'Rigid top plate, bottom plate held by the arms; standoffs bend and shear, and resist no twist about their own axis.',
    'Everything is linear until all standoffs fold; from there they fold at a constant force, and loads on screws and plates grow no further. Measured peaks of small frames lie up to 1.5 times higher, so speeds are for ranking two designs. Results are estimates.',
    'The whole mass pushes through the standoffs: true for a blow on the top plate, too much where the battery rides on it.',
    'Plates bend alike in every direction, simply supported at the free radius; the thread in the standoff and cracks to a nearby cutout are not checked.',
    'Hexagon standoffs count as round ones of their width across flats, a little on the safe side.',
  ],
  sources: [
    'hibbeler-mechanics',
    'ghali-neville-structural',
    'chopra-2012-dynamics',
    'cowper-1966-shear',
    'young-2002-roark',
    'azambuja-2022-drops',
    'iso-2013-898',
    'common-practice',
  ],
  formulas: [
    'standoff/nose-hit.ts',
    'standoff/rigid-plate.ts',
    'standoff/head-stiffness.ts',
    'standoff/limits.ts',
    'standoff/folding.ts',
    'standoff/plate-foot.ts',
    'impact/moving-mass.ts',
  ],
});
