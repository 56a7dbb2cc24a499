import type { Output, Step } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { ClampResult, ClampValues } from './compute.ts';
import { preloadStep } from '../preload-step.ts';

export const outputs: readonly Output<ClampValues, ClampResult>[] = [
  {
    key: 'bareTorque',
    label: 'Largest torque, bare tube',
    symbol: 'T_b',
    quantity: 'moment',
    meaning: 'Meant torque at which even a screw that comes out a quarter too tight does not crack the wall.',
    value: ({ bare }) => bare.torque,
    verdict: ({ bare }) => verdictOfUse(bare.use, 'the bare wall at your torque'),
    digits: 2,
    headline: true,
  },
  {
    key: 'doubledTorque',
    label: 'Largest torque, doubled root',
    symbol: 'T_d',
    quantity: 'moment',
    meaning: 'The same with the sleeve bonded in.',
    value: ({ doubled }) => doubled.torque,
    verdict: ({ doubled }) => verdictOfUse(doubled.use, 'the doubled wall at your torque'),
    digits: 2,
    headline: true,
  },
  {
    key: 'preload',
    label: 'Clamping force of your torque',
    symbol: 'F',
    quantity: 'force',
    meaning: 'As meant; by hand it comes out up to a quarter higher or lower.',
    value: ({ preload }) => preload.nominal,
    group: 'Your torque',
  },
  {
    key: 'preloadHigh',
    label: 'The same, a quarter too tight',
    quantity: 'force',
    meaning: 'The high end of hand tightening.',
    value: ({ preload }) => preload.high,
    group: 'Your torque',
  },
  {
    key: 'wallStress',
    label: 'Stress in the bare wall',
    symbol: '\\sigma',
    quantity: 'stress',
    meaning: 'Bending round the tube, under the plate, on the inside, at the force meant.',
    value: ({ pinch }) => pinch.stress,
    verdict: ({ pinch, strength }) => verdictOfUse(pinch.stress / strength, 'the strength round the tube'),
    group: 'Your torque',
  },
  {
    key: 'bareForce',
    label: 'Clamping force that cracks the bare tube',
    quantity: 'force',
    meaning: 'By the pinched-ring formula; the tube beside the clamp helps a little and is left out.',
    value: ({ bare }) => bare.force,
    group: 'Limits',
  },
  {
    key: 'doubledForce',
    label: 'Clamping force that cracks the doubled root',
    quantity: 'force',
    meaning: 'Grows with the square of the wall.',
    value: ({ doubled }) => doubled.force,
    group: 'Limits',
  },
  {
    key: 'gain',
    label: 'What the sleeve gains',
    quantity: 'ratio',
    meaning: 'Times the clamping force of the bare tube.',
    value: ({ bare, doubled }) => doubled.force / bare.force,
    group: 'Limits',
  },
];

export const steps: readonly Step<ClampValues, ClampResult>[] = [
  preloadStep((result: ClampResult) => result.screwDiameter),
  {
    id: 'ring',
    says: 'Spread over the clamp length, it bends each unit of width of the wall like a pinched ring of mean radius R',
    formula: 'M = \\frac{F}{b}\\,\\frac{R}{\\pi}',
    numbers: 'M = \\frac{\\slot{force}}{\\slot{length}}\\cdot\\frac{\\slot{radius}}{\\pi} = \\slot{moment}',
    slots: (v, r) => ({
      force: { value: r.preload.nominal, quantity: 'force' },
      length: { value: v.clampLength, quantity: 'length' },
      radius: { value: (v.outerDiameter - v.wall) / 2, quantity: 'length' },
      moment: { value: r.pinch.moment, quantity: 'force' },
    }),
  },
  {
    id: 'stress',
    says: 'The wall’s stress, with k for the curve of the wall',
    formula: '\\sigma = k\\,\\frac{6M}{t^2}',
    numbers: '\\sigma = \\slot{k}\\cdot\\frac{6\\cdot\\slot{moment}}{(\\slot{wall})^2} = \\slot{stress}',
    slots: (v, r) => ({
      k: { value: r.pinch.thinStress > 0 ? r.pinch.stress / r.pinch.thinStress : 1, quantity: 'ratio' },
      moment: { value: r.pinch.moment, quantity: 'force' },
      wall: { value: v.wall, quantity: 'length' },
      stress: { value: r.pinch.stress, quantity: 'stress' },
    }),
  },
];
