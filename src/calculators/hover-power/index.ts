import { defineCalculator, sweep } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { HoverFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'hover-power',
  title: 'Hover power',
  question: 'What does it take to hover, and what do a few grams more cost?',
  inputs,
  compute,
  outputs,
  warnings: ({ rotor, reserve }) => [...rotor.warnings, ...reserve.warnings],
  says: ({ batteryPower, reserve, heavier }, values, show) =>
    `Hovering takes about ${show(batteryPower, 'power')} from the battery and ${show(reserve.thrustShare, 'percent', 2)} of the full thrust. ${show(values.addedMass, 'mass')} more cost ${show(heavier.batteryPower - batteryPower, 'power', 2)}.`,
  steps,
  plots: [
    {
      id: 'power-over-diameter',
      title: 'Hover power against propeller diameter',
      caption:
        'At equal mass, power falls in proportion as the propeller grows. The arms that carry it are not free: see the layout.',
      x: { label: 'Propeller diameter', quantity: 'length' },
      y: { label: 'Battery power', quantity: 'power' },
      data: (values, _, calculate) =>
        sweep(values, calculate, { input: 'propellerDiameter', from: 0.06, to: 0.4 }, [
          { label: 'hover', of: ({ batteryPower }) => batteryPower, role: 'main' },
        ]),
    },
    {
      id: 'power-over-mass',
      title: 'Hover power against mass',
      caption: 'Steeper than in proportion: mass to the power 3/2.',
      x: { label: 'All-up mass', quantity: 'mass' },
      y: { label: 'Battery power', quantity: 'power' },
      data: (values, _, calculate) =>
        sweep(values, calculate, { input: 'mass', from: 0.5 * values.mass, to: 1.5 * values.mass }, [
          { label: 'hover', of: ({ batteryPower }) => batteryPower, role: 'main' },
        ]),
    },
  ],
  Figure: HoverFigure,
  figureCaption: 'One rotor from the side, widths to scale. Air speeds up through the disc and the wake contracts.',
  assumptions: [
    'Still air, away from ground and walls; neighbours do not disturb each other.',
    'One figure of merit holds all losses of the blades, one efficiency those of motor and controller.',
    'Full thrust falls with the density of the air, at the same top speed of rotation.',
    'The battery holds its voltage. A sagging one lowers the full thrust, not the hover power.',
  ],
  sources: ['leishman-2006-helicopter', 'uiuc-propeller-data', 'us-1976-atmosphere', 'common-practice'],
  formulas: ['rotor/hover-power.ts', 'rotor/hover-reserve.ts', 'rotor/atmosphere.ts'],
});
