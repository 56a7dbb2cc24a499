import { defineCalculator, sweep } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { MotorLayoutFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'motor-layout',
  title: 'Motor layout',
  question: 'Where do the motors stand for this propeller and this gap, and how long do the arms get?',
  inputs,
  compute,
  outputs,
  warnings: ({ layout, body }) => [...layout.warnings, ...body.warnings],
  says: ({ layout, freeLength, body }, values, show) =>
    `With ${show(values.tipGap, 'length')} between the tips the wheelbase is ${show(layout.wheelbase, 'length')} and each arm stands ${show(freeLength, 'length')} free. ${
      body.clearance < 0
        ? `A propeller reaches ${show(-body.clearance, 'length', 2)} over the body.`
        : `The body stays ${show(body.clearance, 'length', 2)} clear of the propellers.`
    }`,
  steps,
  plots: [
    {
      id: 'arm-over-gap',
      title: 'Wheelbase and arm against tip gap',
      caption: 'Each millimetre of gap is 1.4 mm of wheelbase and 0.7 mm of each arm on a true X.',
      x: { label: 'Tip gap', quantity: 'length' },
      y: { label: 'Length', quantity: 'length' },
      data: (values, _, calculate) =>
        sweep(
          values,
          calculate,
          { input: 'tipGap', from: Math.min(0, values.tipGap), to: Math.max(values.propellerDiameter, values.tipGap) },
          [
            { label: 'wheelbase', of: ({ layout }) => layout.wheelbase, role: 'main' },
            { label: 'free length of an arm', of: ({ freeLength }) => freeLength, role: 'second' },
          ],
        ),
    },
    {
      id: 'room-over-gap',
      title: 'Room to the body against tip gap',
      caption: 'Below zero a propeller runs over the body.',
      x: { label: 'Tip gap', quantity: 'length' },
      y: { label: 'Room from body to propellers', quantity: 'length' },
      data: (values, _, calculate) => {
        const room = sweep(
          values,
          calculate,
          {
            input: 'tipGap',
            from: Math.min(0, values.tipGap),
            to: Math.max(values.propellerDiameter / 2, values.tipGap),
          },
          [{ label: 'room', of: ({ body }) => body.clearance, role: 'main' }],
        );
        return {
          ...room,
          series: [...room.series, { label: 'touching', role: 'limit' as const, y: room.x.map(() => 0) }],
        };
      },
    },
  ],
  Figure: MotorLayoutFigure,
  figureCaption:
    'Plan from above, to scale: tip circles, arms from outer root screw to motor, body, gaps and wheelbase.',
  assumptions: [
    'Four equal propellers, the layout mirrored left to right and front to rear.',
    'Straight arms that point to the middle of the motors.',
    'Arms do not bend and sit without play; add what arm play and hits take from the gap.',
    'The body is an outline that tapers from the middle to both ends; only what is as high as the propellers counts.',
    'For gaps above zero no loss is computed: no table of it was found.',
  ],
  sources: ['lei-2020-micro', 'tinney-2018-thrust', 'leishman-2006-helicopter', 'own-derivation'],
  formulas: ['layout/motor-layout.ts', 'layout/arm-length.ts', 'layout/body-clearance.ts', 'layout/overlap.ts'],
});
