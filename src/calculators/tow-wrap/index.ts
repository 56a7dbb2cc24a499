import { defineCalculator, sweep } from '~/island/declaration.ts';
import { CASE_WORDS } from '../mount-inputs.ts';
import { compute } from './compute.ts';
import { WrapFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'tow-wrap',
  title: 'Tow wrapped over a motor plate',
  question: 'What do wraps of carbon tow hold, what do they weigh, and how much resin do I mix?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings, strength }, { edgeRadius, bandWidth, bandSpacing }) => [
    ...warnings,
    ...(strength.thickness > edgeRadius
      ? [
          {
            code: 'band-thick',
            message:
              'The band is thicker than the edge is round: further turns on it add little. Spread the band or round the edge.',
          },
        ]
      : []),
    ...(bandWidth > bandSpacing
      ? [{ code: 'bands-overlap', message: 'The two bands overlap, and leave no room for the motor between them.' }]
      : []),
  ],
  says: ({ use, worst, wrapMass, resinToMix }, { mounts }, show) =>
    `Worst is ${CASE_WORDS[worst]}, which uses ${show(use[worst], 'percent', 2)} of the wraps. They weigh ${show(wrapMass, 'mass', 2)} a mount; mix ${show(resinToMix, 'mass', 2)} of resin for ${show(mounts, 'count')}.`,
  steps,
  plots: [
    {
      id: 'strength-over-turns',
      title: 'Strength of one side against turns',
      caption: 'On one band the strength levels off: the inner turns carry the rest. On a rounder edge it goes on.',
      x: { label: 'Turns in each band', quantity: 'count' },
      y: { label: 'Legs on one side', quantity: 'force' },
      data: (values, result, calculate) => {
        const x = Array.from({ length: 20 }, (_, i) => i + 1);
        const side = (edgeRadius: number) =>
          x.map((turns) => calculate({ ...values, turns, edgeRadius }).strength.side);
        return {
          x,
          marker: values.turns <= 20 ? values.turns : undefined,
          series: [
            { label: 'your edge', role: 'main', y: side(values.edgeRadius) },
            { label: 'edge twice as round', role: 'second', y: side(2 * values.edgeRadius) },
            { label: 'pull at worst', role: 'limit', y: x.map(() => result.pull[result.worst].pull) },
          ],
        };
      },
    },
    {
      id: 'cure-over-temperature',
      title: 'Full cure against temperature',
      caption: 'Ten degrees change the time by a factor of two, give or take: the spread grows with the distance.',
      x: { label: 'Shop warmer than the sheet by', quantity: 'temperatureDifference' },
      y: { label: 'Full cure', quantity: 'cureTime' },
      data: (values, _, calculate) =>
        sweep(values, calculate, { input: 'warmerBy', from: -15, to: 20, count: 36 }, [
          { label: 'rule of ten', of: ({ cure }) => cure.usual, role: 'main' },
          { label: 'slow end', of: ({ cure }) => cure.longest, role: 'comparison' },
        ]),
    },
  ],
  Figure: WrapFigure,
  figureCaption:
    'Left a cut at one band, right the mount from the side, to scale; the arrow is a leg’s pull on the plate.',
  assumptions: [
    'Standard-modulus carbon, 3530 MPa and 1.76 g/cm³, wetted through and cured. Resin of 1.2 g/cm³.',
    'The wraps hold alone, as if the glue had let go; shear and twist stay with glue and screws.',
    'The rise at the edge is that of a loop on a pin, stiffness along over through taken as 12: careful for a corner.',
    'Friction of 0.2 for the tail, as if nothing were bonded.',
    'The share that hands reach is a guess: break one wrap to know. Results are estimates.',
  ],
  sources: [
    'carbon-fibre-data-sheet',
    'willberg-2023-lectures',
    'lekhnitskii-1968-plates',
    'capstan-encyclopaedia',
    'bonstone-ten-degree-rule',
    'cure-rate-note',
    'malmgren-glossary',
    'adhesive-maker-cure-page',
    'common-practice',
  ],
  formulas: [
    'mount/wrap-strength.ts',
    'mount/wrap-path.ts',
    'mount/loop.ts',
    'mount/tow.ts',
    'mount/resin.ts',
    'mount/cure.ts',
  ],
});
