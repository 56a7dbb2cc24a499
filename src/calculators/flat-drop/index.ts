import { defineCalculator } from '~/island/declaration.ts';
import { placeWords } from '../arm-of-fields.ts';
import { compute } from './compute.ts';
import { FlatDropFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'flat-drop',
  title: 'Level drop',
  question: 'It falls flat: what does each arm or foot take, and from what height does the root hold?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says: ({ speed, factor, peakForce, each, supports, survivable, survivableLow, arm, at }, { lands }, show) => {
    const on = `${show(supports.count, 'count')} ${lands === 'tips' ? (supports.count === 1 ? 'arm' : 'arms') : supports.count === 1 ? 'foot' : 'feet'}`;
    return `It comes down at ${show(speed, 'speed')} and presses with ${show(factor, 'ratio')} times the weight that lands: ${show(peakForce, 'force')} on ${on}, ${show(each, 'force')} on each, or up to half as much again. As far as ${placeWords(arm, at)} goes, an arm holds to between ${show(survivableLow, 'altitude')} and ${show(survivable, 'altitude')}.`;
  },
  steps,
  plots,
  Figure: FlatDropFigure,
  figureCaption:
    'Arms, motors and feet to scale, body as a box for orientation. Arrows grow with the square root of the load; the pair behind is hidden. Dashed: sleeves, if there are any.',
  assumptions: [
    'All supports touch at once and share evenly. Real landings do not; try fewer arms.',
    'Linear until it breaks, nothing bottoms out. Measured drops of small frames peaked about 1.5 times above a linear spring, and fell off that rule from 1.5 m, where a soft frame had bottomed out.',
    'On feet, arm and motor are held back like a part of the body. An arm that rings in step with the landing takes up to twice that.',
    'One section from root to motor, held by springs, without holes, in a tube doubled by a sleeve if you give one. Its bond is taken as stiff and its end as no notch. No air drag. Estimates for comparing designs.',
  ],
  sources: ['hibbeler-mechanics', 'azambuja-2022-drops', 'gere-2004-mechanics', 'common-practice'],
  formulas: [
    'impact/flat-drop.ts',
    'impact/drop.ts',
    'impact/effective-mass.ts',
    'impact/springs-in-series.ts',
    'beam/tip-stiffness.ts',
  ],
});
