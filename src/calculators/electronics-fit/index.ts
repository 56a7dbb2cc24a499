import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { FitFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';
import { says, warnings } from './words.ts';

export default defineCalculator({
  id: 'electronics-fit',
  title: 'Two ways to fill one body',
  question: 'Which arrangement of my electronics fits the shorter and lower body, and what collides?',
  inputs,
  compute,
  outputs,
  warnings: (result, _, show) => warnings(result, show),
  says: ({ a, b }, { bodyLength }, show) => `${says(a, bodyLength, show)} ${says(b, bodyLength, show)}`,
  steps,
  plots,
  Figure: FitFigure,
  figureCaption:
    'Both arrangements from above and from the right, to scale. What collides is hatched and says so; dashed outlines are room for wires; the dashed line in the side view is what the stack needs. Without a name, at the tail: receiver and antenna exit.',
  assumptions: [
    'Parts are upright boxes along the frame, the camera a tilted one with a round lens. The top plate lies over all of them, but for an open camera.',
    'Shortest body: the order fore and aft stays, each pair of standoffs moves as one, nothing moves sideways.',
    'Holes of the boards are the usual ones of their pattern, nuts those of ISO 4032.',
    'Hit: real peak 1.5 times the linear one, standoffs of 6061-T6 with an M3 thread between plates of 3 and 2 mm, radius of gyration 48 mm, 2 mm above the top plate. Soft wires give way. Results are estimates.',
    'Lengths sold are common practice; boards, nuts and standoffs vary by some tenths of a millimetre.',
  ],
  sources: [
    'iso-1979-273',
    'iso-2012-4032',
    'arvo-1990-boxes',
    'lengauer-1990-layout',
    'awtar-2007-flexures',
    'azambuja-2022-drops',
    'common-practice',
  ],
  formulas: [
    'fit/tilted-box.ts',
    'fit/collisions.ts',
    'fit/shortest-body.ts',
    'fit/shortest-standoff.ts',
    'fit/top-plate-in-hit.ts',
    'fit/pattern-screw.ts',
    'standoff/nose-hit.ts',
  ],
});
