import { bondLineWarnings } from '@frameworthy/shared/bond';
import { defineCalculator, sweep } from '~/island/declaration.ts';
import { CASE_WORDS } from '../mount-inputs.ts';
import { compute } from './compute.ts';
import { BondFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'mount-bond',
  title: 'Motor plate bonded on a tube',
  question: 'How wide does the glue under my motor plate become, and what does it hold?',
  inputs,
  compute,
  outputs,
  warnings: ({ bond }, { bondLine }) => [
    ...bondLineWarnings(bondLine),
    ...(bond.endsAtPlate
      ? [
          {
            code: 'bond-ends-at-plate',
            message: 'The plate ends before the glue does: a wider plate would be held by more of it.',
          },
        ]
      : []),
  ],
  says: ({ bond, stress, worst, holds }, _, show) =>
    `The glue is ${show(bond.width, 'length')} wide and works like ${show(bond.workingWidth, 'length')}. Worst is ${CASE_WORDS[worst]}, which uses ${show(stress[worst].use, 'percent', 2)} of it. A sideways stop of ${show(holds, 'ratio', 2)} g tips the plate off.`,
  steps,
  plots: [
    {
      id: 'pull-over-length',
      title: 'Pull across the glue against length of the bond',
      caption: 'Lengthwise tipping falls with the square of the length, sideways tipping only in step with it.',
      x: { label: 'Length of the bond', quantity: 'length' },
      y: { label: 'Pull across the glue', quantity: 'stress' },
      data: (values, _, calculate) =>
        sweep(values, calculate, { input: 'bondLength', from: 0.012, to: 0.05, count: 25 }, [
          { label: 'tipped sideways', of: ({ stress }) => stress.stop.tension.across, role: 'main' },
          { label: 'tipped lengthwise', of: ({ stress }) => stress.stop.tension.along, role: 'second' },
          { label: 'strength across the bond', of: (_result, v) => v.tensionStrength * v.kept, role: 'limit' },
        ]),
    },
    {
      id: 'width-over-fillet',
      title: 'Width of the bond against fillet radius',
      caption: 'A fatter fillet widens the glue on paper. The width that works hardly follows: thick glue is soft.',
      x: { label: 'Fillet radius', quantity: 'length' },
      y: { label: 'Width', quantity: 'length' },
      data: (values, _, calculate) =>
        sweep(values, calculate, { input: 'filletRadius', from: 0, to: 0.003, count: 25 }, [
          { label: 'bond', of: ({ bond }) => bond.width, role: 'comparison' },
          { label: 'width that works', of: ({ bond }) => bond.workingWidth, role: 'main' },
        ]),
    },
  ],
  Figure: BondFigure,
  figureCaption:
    'Upper half of the tube, plate and glue, to scale. The curve above the plate is the pull across the glue when the motor tips the plate to the left.',
  assumptions: [
    'Plate and tube are stiff. A thin plate bends and peels at its edge sooner.',
    'The glue is elastic, sound and wets both faces; each case is the largest load it reaches, held still.',
    'Shear and pull are summed as squares, as for the start of a delamination.',
    'The strength across the bond is an estimate; no test of a plate on a tube was found. Results are estimates.',
  ],
  sources: [
    'own-derivation',
    'brewer-1988-quadratic',
    'petrie-2000-adhesives',
    'willberg-2023-lectures',
    'common-practice',
  ],
  formulas: ['mount/tangent-bond.ts', 'mount/bond-stress.ts', 'mount/mount-loads.ts'],
});
