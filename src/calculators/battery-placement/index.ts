import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { BatteryPlacementFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'battery-placement',
  title: 'Place of the battery',
  question: 'Crosswise or lengthwise, above or below, forward or back: what does the place of my battery cost?',
  inputs,
  compute,
  outputs,
  warnings: ({ chosen }) => chosen.warnings,
  says: ({ chosen, turned }, { lie }, show) => {
    const { roll, pitch } = chosen.agility;
    const other = lie === 'lengthwise' ? 'crosswise' : 'lengthwise';
    const split =
      Math.abs(chosen.frontShare - chosen.rearShare) < 1e-6
        ? `In hover each motor gives ${show(chosen.frontShare, 'percent')} of its full thrust.`
        : `In hover each front motor gives ${show(chosen.frontShare, 'percent')} of its full thrust and each rear one ${show(chosen.rearShare, 'percent')}.`;
    return `With the pack ${lie} the craft answers with ${show(roll, 'angularAcceleration')} in roll and ${show(pitch, 'angularAcceleration')} in pitch; ${other} it would be ${show(turned.agility.roll, 'angularAcceleration')} and ${show(turned.agility.pitch, 'angularAcceleration')}. ${split}`;
  },
  steps,
  plots,
  Figure: BatteryPlacementFigure,
  figureCaption:
    'From above and from the right, to scale. The pack in the accent colour, the quartered circle is the centre of mass of the whole craft. Arrows: hover thrust of one motor against an even split, labelled as a share of its full thrust. The last dimension is the height between propellers and centre of mass.',
  assumptions: [
    'Body and pack are even boxes, arms slender rods, motors solid cylinders of 28 by 20 mm; nothing moves against the rest.',
    'Full stick means two motors at full thrust and two at none, at once. Real motors take some hundredths of a second, and most controllers keep some idle thrust.',
    'The controller keeps the other two axes still. Yaw leaves out the kick of speeding the rotors up.',
    'Hover is level and in still air. All results are estimates for comparing places of the pack.',
  ],
  sources: ['meriam-2012-dynamics', 'goldstein-2002-mechanics', 'leishman-2006-helicopter', 'common-practice'],
  formulas: [
    'mass/placement.ts',
    'mass/assembly.ts',
    'mass/agility.ts',
    'mass/hover-split.ts',
    'mass/craft.ts',
    'mass/battery.ts',
  ],
});
