import type { Output, Verdict } from '~/island/declaration.ts';
import type { DoublerValues } from './inputs.ts';
import type { DoublerResult } from './result.ts';

const lengthVerdict = ({ lengthMargin }: DoublerResult): Verdict =>
  lengthMargin < 0
    ? { level: 'bad', text: 'too short' }
    : lengthMargin > 0.3
      ? { level: 'marginal', text: 'long: the last part is ballast' }
      : { level: 'good', text: 'long enough' };

const WHERE: Record<DoublerResult['worst'], string> = {
  'outer hole': 'at the outer screw hole',
  'sleeve end': 'just past the sleeve’s end',
  'along the arm': 'in the tube along the arm',
  sleeve: 'in the sleeve itself',
};

const reserveVerdict = ({ reserve, worst }: DoublerResult): Verdict =>
  reserve < 1
    ? { level: 'bad', text: `breaks ${WHERE[worst]}` }
    : { level: reserve < 1.25 ? 'marginal' : 'good', text: `holds; least ${WHERE[worst]}` };

const bondVerdict = ({ bondPeak, bondYields, bondBreaks }: DoublerResult): Verdict =>
  bondPeak <= bondYields
    ? { level: 'good', text: 'stays elastic' }
    : bondPeak <= bondBreaks
      ? { level: 'marginal', text: 'yields at its end; a tough adhesive takes that once' }
      : { level: 'bad', text: 'opens at its end: taper the sleeve, or thin it' };

export const outputs: readonly Output<DoublerValues, DoublerResult>[] = [
  {
    key: 'required',
    label: 'Required length',
    symbol: '\\ell_{req}',
    quantity: 'length',
    headline: true,
    meaning: 'From the inner end of the tube to the end of the sleeve.',
    value: (r) => r.required.length,
  },
  {
    key: 'margin',
    label: 'Margin of your length',
    quantity: 'percent',
    headline: true,
    digits: 2,
    meaning: 'Your length over the required one, less one.',
    value: (r) => r.lengthMargin,
    verdict: lengthVerdict,
  },
  {
    key: 'reserve',
    label: 'Reserve with the sleeve',
    quantity: 'ratio',
    meaning: 'Allowable over stress at the worst place of tube and sleeve. Below one it breaks.',
    value: (r) => r.reserve,
    verdict: reserveVerdict,
    group: 'Strength',
  },
  {
    key: 'bareReserve',
    label: 'Reserve of the bare tube',
    quantity: 'ratio',
    meaning: 'The same at the outer screw hole without a sleeve.',
    value: (r) => r.bareReserve,
    group: 'Strength',
  },
  {
    key: 'outerHole',
    label: 'Tube stress at the outer hole',
    symbol: '\\sigma_{t0}',
    quantity: 'stress',
    meaning: 'On the section that the hole leaves, with the sleeve in.',
    value: (r) => r.outerHole.tube,
    group: 'Strength',
  },
  {
    key: 'outerHoleBare',
    label: 'The same without a sleeve',
    quantity: 'stress',
    meaning: 'What the tube would see at the outer hole on its own.',
    value: (r) => r.outerHole.bare,
    group: 'Strength',
  },
  {
    key: 'share',
    label: 'Share of the sleeve',
    symbol: 's_i',
    quantity: 'percent',
    meaning: 'Part of the moment at the outer hole that the sleeve carries once it is led in.',
    value: (r) => r.section.atHole.share,
    group: 'Strength',
  },
  {
    key: 'bareEnough',
    label: 'Bare tube is enough from',
    symbol: 'x_1',
    quantity: 'length',
    meaning: 'Past the outer screw. Zero: the whole tube would hold from the screw on.',
    value: (r) => r.required.bareEnough,
    group: 'Length',
  },
  {
    key: 'leadIn',
    label: 'Lead-in',
    symbol: 'x_{95}',
    quantity: 'length',
    meaning: 'The sleeve needs this much inside its end to take up 95 % of its share.',
    value: (r) => r.leadIn,
    group: 'Length',
  },
  {
    key: 'transferLength',
    label: 'Transfer length',
    symbol: '1/\\lambda',
    quantity: 'length',
    meaning: 'The bond hands over 63 % of the share in this length.',
    value: (r) => 1 / r.section.lambda,
    group: 'Length',
  },
  {
    key: 'bondLine',
    label: 'Bond line',
    symbol: 't_a',
    quantity: 'length',
    digits: 2,
    meaning: 'Gap on radius between sleeve and bore.',
    value: (r) => r.section.geometry.bondLine,
    group: 'Bond',
  },
  {
    key: 'bondPeak',
    label: 'Peak bond shear',
    symbol: '\\tau_{max}',
    quantity: 'stress',
    meaning: 'At the outer end of the sleeve, as if the adhesive never yielded.',
    value: (r) => r.bondPeak,
    verdict: bondVerdict,
    group: 'Bond',
  },
  {
    key: 'bondBreaks',
    label: 'Peak that the adhesive takes once',
    symbol: '\\tau_{eq}',
    quantity: 'stress',
    meaning: 'Elastic peak at which a long bond of this adhesive, yielding first, comes apart.',
    value: (r) => r.bondBreaks,
    group: 'Bond',
  },
  {
    key: 'mass',
    label: 'Mass of the sleeve',
    symbol: 'm',
    quantity: 'mass',
    meaning: 'For one arm.',
    value: (r) => r.mass,
    group: 'Mass',
  },
  {
    key: 'wasted',
    label: 'Past the required length',
    quantity: 'mass',
    meaning: 'Grams that carry nothing under this blow, for one arm.',
    value: (r) => r.wasted,
    group: 'Mass',
  },
  {
    key: 'leastWall',
    label: 'Thinnest wall that holds',
    symbol: 't_{min}',
    quantity: 'length',
    meaning: 'At the outer hole; the lightest sleeve for this blow. Zero: none is needed.',
    value: (r) => r.least.wall,
    verdict: (r) => (r.least.enough ? undefined : { level: 'bad', text: 'not even a solid plug is enough' }),
    group: 'Mass',
  },
  {
    key: 'leastMass',
    label: 'Mass of that sleeve',
    quantity: 'mass',
    meaning: 'At the length that it needs.',
    value: (r) => r.least.mass,
    group: 'Mass',
  },
];
