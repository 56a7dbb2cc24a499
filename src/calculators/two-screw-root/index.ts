import { defineCalculator } from '~/island/declaration.ts';
import { compute, MODE_WORDS, wallWarnings } from './compute.ts';
import { TwoScrewRootFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'two-screw-root',
  title: 'Two-screw root',
  question: 'What do the two root screws do to my arm when the motor is hit?',
  inputs,
  compute,
  outputs,
  warnings: ({ root }, values) => [...root.warnings, ...wallWarnings(values)],
  says: ({ root }, values, show) =>
    `${show(values.horizontalForce, 'force')} at the motor puts ${show(root.horizontal.inner, 'force')} on the inner hole and ${show(root.horizontal.outer, 'force')} on the outer one. What gives first is ${MODE_WORDS[root.weakest.mode]}, at the ${root.weakest.hole} hole: ${show(root.weakest.use, 'percent')} of its strength is used.`,
  steps,
  plots,
  Figure: TwoScrewRootFigure,
  figureCaption:
    'The root from above, to scale: what the screws do to the tube. Arrows grow with the square root of the force.',
  assumptions: [
    'Static load; a blow is put in as the largest force it reaches.',
    'The plates hold the screws upright and do not help by their edges; friction only where it is counted.',
    'A sleeve is bonded, of the tube’s material, and covers both screws.',
    'Strengths are typical values with a wide spread, not allowables.',
    'Crushing of the tube between the plates is a question of its own: see Clamp torque.',
  ],
  sources: [
    'willberg-2023-lectures',
    'chambers-1995-tm106943',
    'whitney-1974-stress',
    'en-2005-1993-1-8',
    'iso-2013-898',
    'nasa-1968-sp8007',
  ],
  formulas: [
    'joint/two-screw-root.ts',
    'joint/tube-root.ts',
    'joint/hole-uses.ts',
    'joint/screw-use.ts',
    'section/drilled-tube.ts',
    'beam/wall-buckling.ts',
  ],
});
