import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { Figure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { carriesTo } from './onward.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

/** Common practice: at least a tenth of the fibre in each direction. */
const LEAST_SHARE = 0.1;

export default defineCalculator({
  id: 'laminate',
  title: 'Stack of plies',
  question: 'How stiff and strong is a carbon plate or tube wall made of these plies?',
  inputs,
  compute,
  outputs,
  warnings: ({ asLaid, leastShare }, { ply, part }) => [
    // Of the stack as laid: seen askew every balanced one shears. A closed tube cannot curl.
    ...asLaid.warnings.filter(({ code }) => code === 'unbalanced' || part === 'plate'),
    ...(ply !== 'woven' && leastShare < LEAST_SHARE
      ? [
          {
            code: 'direction-missing',
            message:
              'Less than a tenth of the plies run in one of the directions 0°, ±45°, 90°: the part splits where only resin holds.',
          },
        ]
      : []),
  ],
  says: ({ inPlane, flexural, bending, stiffness }, { part }, show) =>
    part === 'tube'
      ? `A wall of ${show(stiffness.thickness, 'length')} has ${show(inPlane.modulusX, 'modulus')} along the tube and ${show(inPlane.shearModulus, 'modulus')} in twist; bent round the tube, as under a clamp, ${show(flexural.modulusY, 'modulus')}.`
      : `The plate is ${show(stiffness.thickness, 'length')} thick. Pulled it has ${show(inPlane.modulusX, 'modulus')}, bent ${show(flexural.modulusX, 'modulus')}; its first ply fails at ${show(bending.stress, 'stress')} in bending.`,
  steps,
  plots,
  carriesTo,
  Figure,
  figureCaption: 'Cut through the stack, to scale, lower face below. Hatched: 0°; grey: ±45°; white: 90°.',
  assumptions: [
    'Classical lamination theory: thin stack, plies bonded perfectly, small strains, linear. Results are estimates for comparing stacks.',
    'Ply values are typical ones of dry plies at room temperature; your maker’s differ. Nothing is taken off for voids, moisture, heat from the cure or wavy threads.',
    'First ply failure is not the end: where a cross ply cracks, the fibre along the load goes on carrying. Holes, edges, impact and delamination are not in it.',
    'The flexural modulus leaves out shear through the thickness: a short strip bends more.',
  ],
  sources: [
    'kaw-2006-composites',
    'jones-1999-composite',
    'tsai-1980-composite',
    'tsai-1971-general',
    'lekhnitskii-1968-plates',
    'woven-plate-data-sheet',
    'common-practice',
  ],
  formulas: [
    'laminate/reduced-stiffness.ts',
    'laminate/stiffness.ts',
    'laminate/compliance.ts',
    'laminate/constants.ts',
    'laminate/ply-failure.ts',
    'laminate/strength.ts',
    'joint/orthotropic-hole.ts',
  ],
});
