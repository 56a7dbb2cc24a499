import type { Output } from '~/island/declaration.ts';
import type { BondValues } from './inputs.ts';
import type { BondResult } from './result.ts';

export const outputs: readonly Output<BondValues, BondResult>[] = [
  {
    key: 'peak',
    label: 'Peak bond shear',
    symbol: '\\tau_{max}',
    quantity: 'stress',
    headline: true,
    meaning: 'At the more loaded end of the overlap, while the adhesive is elastic.',
    value: (r) => r.peak,
    verdict: (r) =>
      r.elasticReserve >= 1
        ? { level: 'good', text: 'below the adhesive’s strength' }
        : r.onceReserve >= 1
          ? { level: 'marginal', text: 'the ends yield; held once, not for long' }
          : { level: 'bad', text: 'the bond comes apart' },
  },
  {
    key: 'useful',
    label: 'Overlap that still helps',
    symbol: '5/\\lambda',
    quantity: 'length',
    headline: true,
    meaning: 'Beyond this a longer overlap no longer lowers the peak.',
    value: (r) => r.useful,
    verdict: (r, { overlap }) =>
      overlap > r.useful ? { level: 'marginal', text: 'yours is longer: spare bond, same peak' } : undefined,
  },
  {
    key: 'mean',
    label: 'Mean bond shear',
    symbol: '\\tau_{mean}',
    quantity: 'stress',
    meaning: 'Load over the whole bond: what a coupon value tempts one to design with.',
    value: (r) => r.mean,
    group: 'Shear',
  },
  {
    key: 'ratio',
    label: 'Peak over mean',
    quantity: 'ratio',
    meaning: 'How unevenly the bond is loaded; near one for a very short overlap.',
    value: (r) => r.peak / r.mean,
    group: 'Shear',
  },
  {
    key: 'farEnd',
    label: 'Shear at the other end',
    quantity: 'stress',
    meaning: 'At the less loaded end.',
    value: (r) => Math.min(r.atStart, r.atEnd),
    group: 'Shear',
  },
  {
    key: 'elasticReserve',
    label: 'Reserve before the ends yield',
    quantity: 'ratio',
    meaning: 'The load may grow by this. Keep it above one for loads that come again and again.',
    value: (r) => r.elasticReserve,
    group: 'Reserve',
  },
  {
    key: 'onceReserve',
    label: 'Reserve before it comes apart',
    quantity: 'ratio',
    meaning: 'One overload, with the adhesive yielding: the lesser of its ends opening and all of it yielding.',
    value: (r) => r.onceReserve,
    group: 'Reserve',
  },
  {
    key: 'bondLine',
    label: 'Bond line',
    symbol: 't_a',
    quantity: 'length',
    digits: 2,
    meaning: 'Gap on radius that the adhesive fills.',
    value: (r) => r.geometry.bondLine,
    group: 'Bond',
  },
  {
    key: 'transferLength',
    label: 'Transfer length',
    symbol: '1/\\lambda',
    quantity: 'length',
    meaning: 'The load near an end falls by 63 % in this length.',
    value: (r) => 1 / r.lambda,
    group: 'Bond',
  },
  {
    key: 'jointNumber',
    label: 'Joint number',
    symbol: '\\lambda\\ell',
    quantity: 'ratio',
    meaning: 'Overlap in transfer lengths: below one even shear, above five two separate ends.',
    value: (r) => r.jointNumber,
    group: 'Bond',
  },
];
