import { bondLineWarnings } from '@frameworthy/shared/bond';
import { defineCalculator } from '~/island/declaration.ts';
import { Figure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { compute, wallWarnings } from './result.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'doubler-length',
  title: 'Length of a root sleeve',
  question: 'How long must the sleeve in the root of a tube arm be, and what does a longer one waste?',
  inputs,
  compute,
  outputs,
  warnings: ({ section, required, least, end }, values) => [
    ...bondLineWarnings(section.geometry.bondLine),
    ...wallWarnings(values, end),
    ...(values.edgeDistance < 3 * values.holeDiameter * 0.9
      ? [
          {
            code: 'edge-distance-short',
            message: 'The tube ends close behind the inner screw: below three hole diameters the end may shear out.',
          },
        ]
      : []),
    ...(required.length > values.edgeDistance + values.screwSpacing + values.armLength
      ? [
          {
            code: 'sleeve-past-motor',
            message:
              'The sleeve that is asked for would pass the motor: the tube itself is too weak or the bond too soft.',
          },
        ]
      : []),
    ...(least.enough
      ? []
      : [
          {
            code: 'no-wall-enough',
            message:
              'No sleeve wall holds at the outer hole under this blow. Use a larger tube, or accept that this blow breaks the arm.',
          },
        ]),
  ],
  says: ({ required, lengthMargin, bareReserve, wasted }, { length }, show) => {
    const needs =
      bareReserve >= 1
        ? 'The bare tube holds this blow at the outer hole; a sleeve there'
        : 'The bare tube breaks at the outer hole; a sleeve';
    const why =
      required.governs === 'lead-in'
        ? 'so that it has taken up its share where the hole is'
        : 'so that it reaches the part where the bare tube is enough';
    const chosen =
      lengthMargin < 0
        ? `${show(length, 'length')} is too short.`
        : `Of your ${show(length, 'length')}, ${show(wasted, 'mass', 2)} lie past that.`;
    return `${needs} needs ${show(required.length, 'length')} from the inner end, ${why}. ${chosen}`;
  },
  steps,
  plots,
  Figure,
  figureCaption: 'Cut along the axis, to scale. The sleeve in the accent colour, its required length below.',
  assumptions: [
    'One force at the motor axis, across the arm; both root screws hold as points. Results are estimates for comparing designs.',
    'Parts and bond are linear until they break. The sleeve gets no credit for pressing on the bore, so lead-in and bond peak are on the safe side.',
    'A hole weakens the tube up to one diameter from its middle; its section counts with the strength kept beside a hole.',
    'Peel at the end of the sleeve is not worked out. A taper lowers it too.',
  ],
  sources: [
    'willberg-2023-lectures',
    'petrie-2000-adhesives',
    'hart-smith-1973-doublelap',
    'nasa-1968-sp8007',
    'common-practice',
  ],
  formulas: [
    'doubler/tube-doubler.ts',
    'doubler/required-length.ts',
    'doubler/lead-in.ts',
    'doubler/least-wall.ts',
    'doubler/bond-peak.ts',
    'beam/wall-buckling.ts',
  ],
});
