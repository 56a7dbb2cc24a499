import { bondLineWarnings } from '@frameworthy/shared/bond';
import { defineCalculator } from '~/island/declaration.ts';
import { Figure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { compute } from './result.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'sleeve-bond',
  title: 'Load along a sleeve bond',
  question: 'How does the bond of a sleeve load up along its overlap, and when does more overlap stop helping?',
  inputs,
  compute,
  outputs,
  warnings: ({ geometry, useful }, { overlap }) => [
    ...bondLineWarnings(geometry.bondLine),
    ...(overlap > useful
      ? [
          {
            code: 'overlap-past-useful',
            message:
              'The overlap is longer than what lowers the peak. Spare length still helps against poor spots, creep and yielding.',
          },
        ]
      : []),
  ],
  says: ({ peak, mean, useful }, { overlap }, show) =>
    `The bond sees ${show(peak, 'stress')} at its end, ${show(peak / mean, 'ratio', 2)} times its mean of ${show(mean, 'stress')}. ` +
    (overlap > useful
      ? `Past ${show(useful, 'length')} of overlap the peak no longer falls.`
      : `More overlap still lowers the peak, up to ${show(useful, 'length')}.`),
  steps,
  plots,
  Figure,
  figureCaption:
    'Parts to scale. The curve above them is the shear of the bond over its own overlap; the dashed line its mean.',
  assumptions: [
    'The sleeve takes the whole load on: a splice, a spigot or a strut end, not a doubler beside a tube that runs through.',
    'Elastic parts and adhesive, an even gap, bonded all round. In bending the sleeve gets no credit for pressing on the bore. Results are estimates.',
    'The overload figure takes the adhesive’s energy at the ends or its yield all along, whichever is less; within a few per cent of the full solution for equal parts.',
    'Peel is not worked out. It starts most failures of ends that are not tapered.',
  ],
  sources: ['willberg-2023-lectures', 'pugno-2003-tubular', 'hart-smith-1973-doublelap', 'petrie-2000-adhesives'],
  formulas: ['bond/sleeve-bond.ts', 'bond/load-transfer.ts', 'bond/elastic-plastic.ts', 'bond/useful-overlap.ts'],
});
