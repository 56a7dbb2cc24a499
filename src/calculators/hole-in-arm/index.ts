import { defineCalculator } from '~/island/declaration.ts';
import { compute, PLACE_WORDS } from './compute.ts';
import { HoleInArmFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'hole-in-arm',
  title: 'Hole in an arm',
  question: 'What does a hole here cost my arm?',
  inputs,
  compute,
  outputs,
  warnings: ({ drilled, forces }) => [
    ...drilled.warnings,
    ...(forces.byShear
      ? [
          {
            code: 'shear-at-hole',
            message: 'Here the shear beside the hole decides, and no longer the bending.',
          },
        ]
      : []),
  ],
  says: ({ drilled, forces }, _, show) =>
    `The hole is ${PLACE_WORDS[drilled.place]} and leaves ${show(drilled.notchedShare, 'percent', 2)} of the bending strength there; the elastic peak would leave ${show(drilled.elasticShare, 'percent', 2)}. ${
      forces.holeForce < forces.rootForce
        ? `The arm breaks at the hole, at ${show(forces.holeForce, 'force')} instead of ${show(forces.rootForce, 'force')} at the root.`
        : `The root still breaks first, at ${show(forces.rootForce, 'force')}.`
    }`,
  steps,
  plots,
  Figure: HoleInArmFigure,
  figureCaption:
    'To scale, in the plane of the load, with the moment below. Dashed: a hole that cuts the stressed faces.',
  assumptions: [
    'Static force, one section, one clean hole; the root taken whole.',
    'Tube chart times laminate factor is an approximation; at the faces of a strip plain tension is used, on the safe side.',
    'The lengths d₀ and a₀ are carried over from another laminate: expect a fifth either way. Results are estimates.',
  ],
  sources: [
    'pilkey-2008-peterson',
    'heywood-1952-photoelasticity',
    'lekhnitskii-1968-plates',
    'whitney-1974-stress',
    'konish-1975-approximate',
    'tan-1988-finite',
    'howland-1933-perforated',
  ],
  formulas: [
    'notch/drilled-tube-arm.ts',
    'notch/drilled-strip-arm.ts',
    'notch/hole-field.ts',
    'notch/hole-in-arm.ts',
    'joint/tube-hole-factor.ts',
    'joint/orthotropic-hole.ts',
    'joint/notched-strength.ts',
  ],
});
