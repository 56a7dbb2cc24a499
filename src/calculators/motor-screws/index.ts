import { defineCalculator, sweep } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { MotorScrewsFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'motor-screws',
  title: 'Motor screws',
  question: 'Two screws or four, and how long may they be before they reach the winding?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says: ({ room, two, four, extraMass }, _, show) =>
    (room <= 1e-9
      ? 'A screw touches the winding: do not power this motor. '
      : `The screws end ${show(room, 'length', 2)} before the winding. `) +
    `At worst one of four screws carries ${show(four.use, 'percent', 2)} of its strength, one of two ${show(two.use, 'percent', 2)}. Two more cost ${show(extraMass, 'mass', 2)} at the tip.`,
  steps,
  plots: [
    {
      id: 'use-over-stop',
      title: 'Worst screw against the stop',
      caption: 'Four screws carry less each in every case, but a steel screw is rarely what gives.',
      x: { label: 'Stop in a crash, in g', quantity: 'ratio' },
      y: { label: 'Share of the screw’s strength', quantity: 'percent' },
      data: (values, _, calculate) =>
        sweep(values, calculate, { input: 'deceleration', from: 10, to: 3000, count: 13 }, [
          { label: 'two screws', of: ({ two }) => two.use, role: 'main' },
          { label: 'four screws', of: ({ four }) => four.use, role: 'second' },
        ]),
    },
    {
      id: 'thread-over-length',
      title: 'Thread and room against depth of the screw in the motor',
      caption: 'Past the depth of the thread more screw holds no better, and comes nearer to the copper.',
      x: { label: 'Screw inside the motor', quantity: 'length' },
      y: { label: 'Length', quantity: 'length' },
      data: (values, result) => {
        const reach = (result.fit.beside ?? result.fit.through)!.reach;
        const end = Math.max(1.3 * values.windingDepth, reach);
        const x = [...Array.from({ length: 41 }, (_, i) => (end * i) / 40), reach].sort((a, b) => a - b);
        return {
          x,
          marker: reach,
          series: [
            { label: 'thread that holds', role: 'main', y: x.map((depth) => Math.min(depth, values.threadDepth)) },
            {
              label: 'room before the winding',
              role: 'second',
              y: x.map((depth) => Math.max(0, values.windingDepth - depth)),
            },
            { label: 'one diameter', role: 'limit', y: x.map(() => result.diameter) },
          ],
        };
      },
    },
  ],
  Figure: MotorScrewsFigure,
  figureCaption:
    'Left the foot of the motor from above, the arm lying left to right; right a cut across the tube, looking along the arm. To scale; the glue line is left out.',
  assumptions: [
    'The motor’s base is stiff and tips about its edge; friction and preload are left out, so a tight joint sees less.',
    'Screws share a twist by distance from the motor’s axis; the worst direction of each blow is taken.',
    'The thread is the worst that tolerance 6H allows; two turns at its ends hold nothing.',
    'Masses of screws follow from their proportions, within about a tenth.',
    'Depths of thread and winding differ from motor to motor: measure yours. Results are estimates.',
  ],
  sources: [
    'shigley-2011-design',
    'iso-2013-898',
    'en-2005-1993-1-8',
    'fed-h28-2',
    'iso-1979-273',
    'iso-2004-4762',
    'iso-2011-7380',
    'common-practice',
  ],
  formulas: [
    'mount/motor-screws.ts',
    'mount/screw-length.ts',
    'mount/screw-mass.ts',
    'joint/fastener-group.ts',
    'section/drilled-tube.ts',
    'fastener/thread-shear.ts',
  ],
});
