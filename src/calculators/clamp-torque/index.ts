import { defineCalculator, sweep } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { ClampTorqueFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'clamp-torque',
  title: 'Clamp torque',
  question: 'How hard may I tighten the root screws before the plates crush the tube?',
  inputs,
  compute,
  outputs,
  warnings: ({ doubled }) => doubled.warnings,
  says: ({ bare, doubled }, values, show) =>
    values.sleeveWall > 0
      ? `The bare tube takes about ${show(bare.torque, 'moment', 2)}, the doubled root about ${show(doubled.torque, 'moment', 2)}. You tighten to ${show(values.torque, 'moment', 2)}.`
      : `The bare tube takes about ${show(bare.torque, 'moment', 2)}. You tighten to ${show(values.torque, 'moment', 2)}.`,
  steps,
  plots: [
    {
      id: 'torque-over-wall',
      title: 'Largest torque against wall',
      caption:
        'The clamp works against the square of the wall: a little more wall, or a sleeve, takes a lot more torque.',
      x: { label: 'Wall of the tube', quantity: 'length' },
      y: { label: 'Largest torque', quantity: 'moment' },
      data: (values, _result, calculate) => {
        const curves = sweep(values, calculate, { input: 'wall', from: 0.0005, to: 0.0025 }, [
          { label: 'bare', of: ({ bare }) => bare.torque, role: 'comparison' },
          { label: 'with the sleeve', of: ({ doubled }) => doubled.torque, role: 'main' },
        ]);
        return {
          ...curves,
          series: [
            ...curves.series,
            { label: 'your torque', role: 'limit' as const, y: curves.x.map(() => values.torque) },
          ],
        };
      },
    },
  ],
  Figure: ClampTorqueFigure,
  figureCaption: 'A cut across the tube between its plates, to scale, with the force that cracks each wall.',
  assumptions: [
    'The tube is a ring between two line loads; the tube beside the clamp is not counted, so the result is on the safe side there.',
    'A bonded sleeve acts as one wall with the tube. A loose one does not.',
    'The strength round the tube is an estimate with a wide spread: nobody prints it. Test a cut-off.',
    'Torque by hand scatters by a quarter either way; friction of the screw may be other than assumed.',
    'A screw in a blind or oiled thread clamps harder at the same torque.',
  ],
  sources: ['young-2002-roark', 'boresi-2003-mechanics', 'speck-2015-fastening', 'chambers-1995-tm106943'],
  formulas: ['joint/clamp-torque.ts', 'joint/ring-pinch.ts', 'joint/preload.ts'],
});
