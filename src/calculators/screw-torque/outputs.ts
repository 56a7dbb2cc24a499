import type { Limiter } from '@frameworthy/shared/fastener';
import type { Output, Step } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { ScrewResult, ScrewValues } from './compute.ts';
import { preloadStep } from '../preload-step.ts';

/** What gives first, as part of a sentence. */
export const LIMITER_WORDS: Readonly<Record<Limiter, string>> = {
  screw: 'the screw stretches',
  thread: 'the tapped thread strips',
  plate: 'the plate crushes under the head',
  flange: 'the plate crushes under the flange of the nut',
  insert: 'the insert comes out of its part',
};

const use = (
  key: string,
  [label, meaning, of]: readonly [string, string, string],
  value: (result: ScrewResult) => number,
): Output<ScrewValues, ScrewResult> => ({
  key,
  label,
  quantity: 'percent',
  meaning,
  value,
  verdict: (result) => verdictOfUse(value(result), of),
  group: 'At the high end of the scatter',
});

export const outputs: readonly Output<ScrewValues, ScrewResult>[] = [
  {
    key: 'advisedTorque',
    label: 'Torque that suits every part',
    symbol: 'T_a',
    quantity: 'moment',
    meaning: 'Brings the preload to 65 % of what the weakest of screw, thread, plate, nut or insert takes.',
    value: (result) => result.advisedTorque,
    verdict: (result, { torque }) =>
      torque > result.damageTorque
        ? { level: 'bad', text: 'your torque may damage the joint' }
        : torque > result.advisedTorque
          ? { level: 'marginal', text: 'your torque is above it' }
          : { level: 'good', text: 'your torque is below it' },
    headline: true,
  },
  {
    key: 'preload',
    label: 'Preload at your torque',
    symbol: 'F',
    quantity: 'force',
    meaning: 'What clamps the parts, if friction is as assumed.',
    value: ({ preload }) => preload.nominal,
    headline: true,
  },
  {
    key: 'preloadLow',
    label: 'Low end',
    quantity: 'force',
    meaning: 'A quarter below: count on this to hold parts together.',
    value: ({ preload }) => preload.low,
    group: 'Scatter of the preload',
  },
  {
    key: 'preloadHigh',
    label: 'High end',
    quantity: 'force',
    meaning: 'A quarter above: count on this not to break anything.',
    value: ({ preload }) => preload.high,
    group: 'Scatter of the preload',
  },
  use(
    'screwUse',
    ['Screw', 'Of its proof load, beyond which it stays stretched.', 'the proof load'],
    (result) => result.use.screw,
  ),
  use(
    'threadUse',
    ['Tapped thread', 'Of the pull that strips it.', 'the stripping load'],
    (result) => result.use.thread,
  ),
  use(
    'plateUse',
    ['Plate', 'Of the force that crushes it under the head.', 'what the plate takes'],
    (result) => result.use.plate,
  ),
  use(
    'holdUse',
    [
      'What it goes into',
      'Of the pull that takes the screw out of it: by the thread, by the flange of a nut, or with the insert.',
      'what it holds',
    ],
    ({ preload, hold }) => preload.high / Math.max(hold.low, 1e-3),
  ),
  {
    key: 'damageTorque',
    label: 'Torque that may damage',
    quantity: 'moment',
    meaning: 'At the high end of the scatter the weakest part gives here.',
    value: (result) => result.damageTorque,
    group: 'Limits',
  },
  {
    key: 'proofLoad',
    label: 'Proof load of the screw',
    symbol: 'F_p',
    quantity: 'force',
    meaning: 'Largest pull that leaves no lasting stretch.',
    value: ({ limit }) => limit.screw,
    group: 'Limits',
  },
  {
    key: 'strippingForce',
    label: 'Pull that strips the thread',
    symbol: 'F_s',
    quantity: 'force',
    meaning: 'Two turns at the ends are not counted.',
    value: ({ limit }) => limit.thread,
    group: 'Limits',
  },
  {
    key: 'plateForce',
    label: 'Force that the plate takes',
    quantity: 'force',
    meaning: 'Under the head or washer that rests on it.',
    value: ({ limit }) => limit.plate,
    group: 'Limits',
  },
  {
    key: 'holdForce',
    label: 'Pull out of what it goes into',
    symbol: 'F_h',
    quantity: 'force',
    meaning: 'Thread, flange or insert, what gives first. An insert by a handbook’s third of the cylinder round it.',
    value: ({ hold }) => hold.low,
    group: 'Limits',
  },
  {
    key: 'holdForceMost',
    label: 'The same at most',
    quantity: 'force',
    meaning: 'An insert by 7/8 of that cylinder: solid part, knurl filled. Others as before.',
    value: ({ hold }) => hold.high,
    group: 'Limits',
  },
  {
    key: 'fullEngagement',
    label: 'Engagement as strong as the screw',
    symbol: 'L_\\mathrm{full}',
    quantity: 'length',
    meaning: 'More thread than this adds nothing: the screw breaks first.',
    value: (result) => result.fullEngagement,
    group: 'Sizes',
  },
  {
    key: 'holeDiameter',
    label: 'Clearance hole',
    symbol: 'd_h',
    quantity: 'length',
    meaning: 'In the plate, by ISO 273.',
    value: (result) => result.holeDiameter,
    group: 'Sizes',
  },
  {
    key: 'seatDiameter',
    label: 'Diameter that presses',
    symbol: 'd_s',
    quantity: 'length',
    meaning: 'Of head or washer, by the standards.',
    value: (result) => result.seatDiameter,
    group: 'Sizes',
  },
  {
    key: 'seatPressure',
    label: 'Pressure on the plate',
    symbol: 'p',
    quantity: 'stress',
    meaning: 'At the preload meant; under the flange of a nut where that presses harder.',
    value: (result) => result.seatPressure,
    group: 'Sizes',
  },
];

export const steps: readonly Step<ScrewValues, ScrewResult>[] = [
  preloadStep((result: ScrewResult) => result.diameter),
  {
    id: 'plate',
    says: 'Force that the plate takes under the head',
    formula: 'F_\\mathrm{plate} = p_\\mathrm{max}\\,\\tfrac{\\pi}{4}\\,(d_s^2 - d_h^2)',
    numbers:
      'F_\\mathrm{plate} = \\slot{pressure} \\cdot \\tfrac{\\pi}{4}\\,\\left(\\left(\\slot{seat}\\right)^2 - \\left(\\slot{hole}\\right)^2\\right) = \\slot{force}',
    slots: (v, result) => ({
      pressure: { value: v.plateStrength, quantity: 'stress' },
      seat: { value: result.seatDiameter, quantity: 'length' },
      hole: { value: result.holeDiameter, quantity: 'length' },
      force: { value: result.limit.plate, quantity: 'force' },
    }),
  },
  {
    id: 'advised',
    says: 'Torque for 65 % of the weakest part',
    formula: 'T_a = 0.65\\,K d\\,F_\\mathrm{lim},\\quad F_\\mathrm{lim} = \\min(F_p, F_\\mathrm{plate}, F_h)',
    numbers: 'T_a = 0.65 \\cdot \\slot{k} \\cdot \\slot{diameter} \\cdot \\slot{limit} = \\slot{torque}',
    slots: (v, result) => ({
      k: { value: v.torqueCoefficient, quantity: 'ratio' },
      diameter: { value: result.diameter, quantity: 'length' },
      limit: { value: result.least, quantity: 'force' },
      torque: { value: result.advisedTorque, quantity: 'moment' },
    }),
  },
];
