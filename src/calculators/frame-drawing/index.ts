import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { FrameDrawingFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'frame-drawing',
  title: 'Frame drawing',
  question: 'What does the frame look like at full size, and do its parts fit?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says: ({ layout, cutLength, innerGap, overall }, _, show) =>
    `The wheelbase is ${show(layout.wheelbase, 'length', 4)}, each arm is cut to ${show(cutLength, 'length', 4)}, and the whole stands ${show(overall.height, 'length')} high. ${
      innerGap < 0
        ? `The arms overlap by ${show(-innerGap, 'length', 2)} in the middle.`
        : `In the middle ${show(innerGap, 'length', 2)} stay between the arms.`
    }`,
  steps,
  plots: [],
  Figure: FrameDrawingFigure,
  figureCaption:
    'From above and from the right, to scale. Plates and arms thick, motors and screws thin, tip circles dash-dot, what a plate covers dashed, the battery crossed. Four standoffs in a rectangle; the frame sheet draws others.',
  assumptions: [
    'Four equal arms that point at the middle, the plan mirrored left to right and front to rear.',
    'Four standoffs in a rectangle about the middle. A frame whose standoffs stand otherwise does not fill their distances: see its frame sheet.',
    'Cross and main plate alike, the top plate shorter on the same taper; no cutouts.',
    'Sizes as typed: no kerf, no bond line, no tolerance.',
  ],
  sources: ['iso-1979-273', 'own-derivation', 'common-practice'],
  formulas: [
    'outline/four-arm-outline.ts',
    'outline/plan-shapes.ts',
    'outline/side-shapes.ts',
    'outline/inner-end-gap.ts',
    'outline/plate-numbers.ts',
  ],
});
