import { armPlay, type ArmPlay } from '@frameworthy/shared/joint';
import { defineCalculator, sweep, type QuantityInput } from '~/island/declaration.ts';
import { armLength, outerDiameter, screwSpacing } from '../root-inputs.ts';
import { ArmPlayFigure } from './figure.tsx';

const clearance = (label: string, symbol: string, help: string, value: number, frameField?: string) =>
  ({
    quantity: 'length',
    label,
    symbol,
    help,
    group: 'Clearance',
    default: value,
    min: 0,
    max: 0.001,
    step: 0.00005,
    ...(frameField ? { frameField } : {}),
  }) as const satisfies QuantityInput;

const inputs = {
  armClearance: clearance(
    'Hole in the arm less screw',
    'c_a',
    'On diameter. A 3.2 mm hole on an M3 screw of 2.95 mm has 0.25 mm.',
    0.00025,
    'arm.root.clearance',
  ),
  plateClearance: clearance(
    'Hole in the plates less screw',
    'c_p',
    'On diameter. Cut plates often come out at 3.1 mm.',
    0.00015,
  ),
  screwSpacing,
  armLength,
  armHeight: {
    ...outerDiameter,
    frameField: 'arm.height',
    label: 'Height of the arm',
    symbol: 'h',
    help: 'Over which a screw guides the arm: outside diameter of a tube, thickness of a plate arm.',
    group: 'Arm',
    min: 0.002,
  },
} as const;

export default defineCalculator({
  id: 'arm-play',
  title: 'Arm play',
  question: 'How far out of place may the motor stand when the screws have clearance?',
  inputs,
  compute: armPlay,
  outputs: [
    {
      key: 'motorError',
      label: 'Motor beside its place',
      symbol: 'y',
      quantity: 'length',
      meaning: 'Either way. Two arms may lean opposite ways, so a diagonal may be out by twice that.',
      value: (play: ArmPlay) => play.motorError,
      verdict: ({ motorError }: ArmPlay) =>
        motorError <= 1e-3
          ? { level: 'good' as const, text: 'within a millimetre' }
          : motorError <= 3e-3
            ? { level: 'marginal' as const, text: 'square the arms in a jig before tightening' }
            : { level: 'bad' as const, text: 'the screws do not place the arm: ream tighter or space wider' },
      digits: 2,
      headline: true,
    },
    {
      key: 'angle',
      label: 'Arm turned',
      symbol: '\\theta',
      quantity: 'angle',
      meaning: 'In the plane of the propellers, either way.',
      value: (play: ArmPlay) => play.angle,
      digits: 2,
    },
    {
      key: 'lean',
      label: 'Motor leaning',
      symbol: '\\varphi',
      quantity: 'angle',
      meaning:
        'About the arm’s own axis, either way, until the clamp holds it. A leaning motor pushes the frame round in yaw.',
      value: (play: ArmPlay) => play.lean,
      digits: 2,
    },
  ],
  says: (play, values, show) =>
    `With ${show(values.armClearance + values.plateClearance, 'length')} of clearance in all, the motor may stand ${show(play.motorError, 'length', 2)} beside its place and lean by ${show(play.lean, 'angle', 2)}, either way.`,
  steps: [
    {
      id: 'angle',
      says: 'Both screws give way, in opposite directions',
      formula: '\\theta = \\frac{c}{s},\\quad c = c_a + c_p',
      numbers: '\\theta = \\frac{\\slot{arm}+\\slot{plate}}{\\slot{spacing}} = \\slot{angle}',
      slots: (v, play) => ({
        arm: { value: v.armClearance, quantity: 'length' },
        plate: { value: v.plateClearance, quantity: 'length' },
        spacing: { value: v.screwSpacing, quantity: 'length' },
        angle: { value: play.angle, quantity: 'angle', digits: 2 },
      }),
    },
    {
      id: 'error',
      says: 'The arm’s length multiplies it',
      formula: 'y = c\\,\\Bigl(\\frac{L}{s}+\\frac12\\Bigr)',
      numbers: 'y = \\slot{clearance}\\cdot\\Bigl(\\frac{\\slot{arm}}{\\slot{spacing}}+\\frac12\\Bigr) = \\slot{error}',
      slots: (v, play) => ({
        clearance: { value: v.armClearance + v.plateClearance, quantity: 'length' },
        arm: { value: v.armLength, quantity: 'length' },
        spacing: { value: v.screwSpacing, quantity: 'length' },
        error: { value: play.motorError, quantity: 'length', digits: 2 },
      }),
    },
  ],
  plots: [
    {
      id: 'error-over-spacing',
      title: 'Motor error against screw spacing',
      caption: 'Spacing places the arm as well as it carries it.',
      x: { label: 'Screw spacing', quantity: 'length' },
      y: { label: 'Motor beside its place', quantity: 'length' },
      data: (values, _result, calculate) =>
        sweep(values, calculate, { input: 'screwSpacing', from: 0.006, to: 0.05 }, [
          { label: 'either way', of: ({ motorError }) => motorError, role: 'main' },
        ]),
    },
  ],
  Figure: ArmPlayFigure,
  figureCaption: 'The arm from above, to scale, in place and at the end of its play.',
  assumptions: [
    'Screws stand upright and straight in the plates; holes are where they were drawn.',
    'Before the clamp holds: once tight, friction keeps the arm where it was, until a hit moves it.',
    'Worst case, not the average: clearances rarely all add up.',
  ],
  sources: ['iso-1979-273', 'own-derivation'],
  formulas: ['joint/arm-play.ts'],
});
