import { defineCalculator } from '~/island/declaration.ts';
import { compute, PLACE_WORDS } from './compute.ts';
import { TongueFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots, tables } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'plate-tongue',
  title: 'Tongue, webs and second plate',
  question: 'Does the plate that carries my arm hold a blow, and what does a second one add?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says: ({ use, weakest, motorMovement, outer }, { force }, show) =>
    `A blow of ${show(force, 'force')} at the motor is ${show(outer, 'force')} on the tongue. It uses ${show(use, 'percent', 2)} of the plate’s strength, most of all ${PLACE_WORDS[weakest]}, and moves the motor by ${show(motorMovement, 'length', 2)}.`,
  steps,
  plots,
  tables,
  Figure: TongueFigure,
  figureCaption: 'Plan and side, to scale. The two screws of the arm are drawn in the accent colour.',
  assumptions: [
    'The body holds the tongue rigidly at its edge; the screw holes weaken it only where a hole is entered.',
    'The arm is stiff and turns about its two screws; the forces are those of a two-screw root without friction.',
    'Bending strength is a typical value of a flat, dry plate at room temperature. Results are estimates.',
    'The cutout has rounded corners, whose peak is not counted, and the moment goes on inwards as if nothing else held the plate.',
    'Sliding, tied and joined plates are limits: a clamped arm lies between them and loses with every loose screw.',
  ],
  sources: [
    'willberg-2023-lectures',
    'young-2002-roark',
    'whitney-1974-stress',
    'pytel-2012-mechanics',
    'ghali-neville-structural',
    'common-practice',
  ],
  formulas: [
    'plate/tongue.ts',
    'plate/two-plates.ts',
    'plate/web.ts',
    'plate/least-web.ts',
    'plate/hole-in-bending.ts',
    'joint/two-screw-root.ts',
  ],
});
