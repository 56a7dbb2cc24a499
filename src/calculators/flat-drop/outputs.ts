import { MEASURED_OVER_LINEAR } from '@frameworthy/shared/impact';
import type { Output, Verdict } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { DropResult } from './compute.ts';
import type { DropValues } from './inputs.ts';

function holds({ survivable, survivableLow }: DropResult, { dropHeight }: DropValues): Verdict {
  if (survivableLow >= dropHeight) return { level: 'good', text: 'holds from this height, even at the upper end' };
  if (survivable >= dropHeight) return { level: 'marginal', text: 'holds by the linear model, not at the upper end' };
  return { level: 'bad', text: 'breaks from this height' };
}

export const outputs: readonly Output<DropValues, DropResult>[] = [
  {
    key: 'each',
    label: 'Load on each arm or foot',
    symbol: 'F_1',
    quantity: 'force',
    meaning: 'Peak by the linear model, shared evenly.',
    value: ({ each }) => each,
    headline: true,
  },
  {
    key: 'survivableHeight',
    label: 'Survivable height',
    symbol: 'h_s',
    quantity: 'altitude',
    meaning: 'Where an arm, holes left out, reaches its bending strength, by the linear model. For comparing designs.',
    value: ({ survivable }) => survivable,
    verdict: holds,
    headline: true,
  },
  {
    key: 'survivableLow',
    label: 'The same at the upper end of the band',
    quantity: 'altitude',
    group: 'Arm',
    meaning: 'With peaks half as large again, as measured drops have them.',
    value: ({ survivableLow }) => survivableLow,
  },
  {
    key: 'rootMoment',
    label: 'Moment at the root of an arm',
    symbol: 'M',
    quantity: 'moment',
    group: 'Arm',
    meaning: 'At the outer screw, by the linear force.',
    value: ({ rootMoment }) => rootMoment,
  },
  {
    key: 'armStress',
    label: 'Highest stress in an arm',
    symbol: '\\sigma',
    quantity: 'stress',
    group: 'Arm',
    meaning: 'Outer fibre without holes: at the root, or just past a sleeve where that is more.',
    value: ({ stress }) => stress,
    verdict: ({ use }) => verdictOfUse(use, 'the bending strength'),
  },
  {
    key: 'speed',
    label: 'Speed at the ground',
    symbol: 'v',
    quantity: 'speed',
    group: 'Landing',
    meaning: 'Of a free fall.',
    value: ({ speed }) => speed,
  },
  {
    key: 'landingMass',
    label: 'Mass that lands',
    quantity: 'mass',
    group: 'Landing',
    meaning: 'All of it, or less where the craft comes down on one end and turns away.',
    value: ({ supports }) => supports.mass,
  },
  {
    key: 'staticGive',
    label: 'Give under its own weight',
    symbol: '\\delta_{st}',
    quantity: 'length',
    group: 'Landing',
    meaning: 'How far arms or feet and ground give at rest.',
    value: ({ staticDeflection }) => staticDeflection,
  },
  {
    key: 'factor',
    label: 'Peak force over weight',
    quantity: 'ratio',
    group: 'Landing',
    meaning: 'What boards, camera and battery feel as so many times their own weight.',
    value: ({ factor }) => factor,
  },
  {
    key: 'force',
    label: 'Peak force in all',
    symbol: 'F',
    quantity: 'force',
    group: 'Landing',
    meaning: 'Lower end of the band.',
    value: ({ peakForce }) => peakForce,
  },
  {
    key: 'forceHigh',
    label: 'Upper end of the band',
    quantity: 'force',
    group: 'Landing',
    meaning: 'Measured peaks of small frames lie about there.',
    value: ({ peakForce }) => MEASURED_OVER_LINEAR * peakForce,
  },
  {
    key: 'give',
    label: 'Give at the peak',
    quantity: 'length',
    group: 'Landing',
    meaning: 'With less room than this under the body, the body hits the ground: then no formula holds.',
    value: ({ deflection }) => deflection,
  },
];
