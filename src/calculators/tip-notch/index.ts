import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { TipNotchFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'tip-notch',
  title: 'Wire slot at the tip',
  question: 'How far may the wire slot reach, and does a scrape meet tube or wire?',
  inputs,
  compute,
  outputs,
  warnings: ({ slot }) =>
    slot.openLength > 0
      ? [
          {
            code: 'open-in-torsion',
            message:
              'Past the mount the tube is open and soft in twist, and its corners crack. Let the mount grip past the slot, or bind it with tow.',
          },
        ]
      : [],
  says: ({ slot, wires }, _, show) =>
    `In bending the slot may reach ${show(slot.farthest, 'length')} inwards. The tube stands ${show(wires.standPast, 'length')} past the wires and needs ${show(wires.needed, 'length')}. ${
      slot.openLength > 0
        ? `Over ${show(slot.openLength, 'length')} past the mount the tube is open: free to warp it has ${show(slot.twist.share, 'percent', 2)} of its torsion stiffness.`
        : 'The mount grips past the slot, so the tube twists as a closed one.'
    }`,
  steps,
  plots,
  Figure: TipNotchFigure,
  figureCaption:
    'To scale, motor axis dash-dotted. Below: a flat obstacle touching the tube’s end, and the open section.',
  assumptions: [
    'Static forces, root undrilled. The slot’s round end counts as a round hole; its lips do not buckle.',
    'Thin walls; the mount grips all round. Twist with one end held is a low estimate.',
    'Wires lie at the inner end of the slot; the obstacle is flat. Results are estimates.',
  ],
  sources: [
    'young-2002-roark',
    'megson-1999-structures',
    'whitney-1974-stress',
    'lekhnitskii-1968-plates',
    'common-practice',
  ],
  formulas: [
    'notch/tip-slot.ts',
    'notch/wire-slot.ts',
    'notch/slotted-twist.ts',
    'section/open-tube.ts',
    'joint/notched-strength.ts',
  ],
});
