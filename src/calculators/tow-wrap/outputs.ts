import type { Output, Step } from '~/island/declaration.ts';
import { CASE_WORDS } from '../mount-inputs.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import { STANDARD_CARBON_FIBRE } from '@frameworthy/shared/mount';
import type { WrapResult } from './compute.ts';
import type { WrapValues } from './inputs.ts';

export const outputs: readonly Output<WrapValues, WrapResult>[] = [
  {
    key: 'worstUse',
    label: 'Wraps used at worst',
    quantity: 'percent',
    digits: 2,
    headline: true,
    meaning: 'Without any glue under the plate, in the worst of the four cases.',
    value: ({ use, worst }) => use[worst],
    verdict: ({ use, worst }) => verdictOfUse(use[worst], `their strength: ${CASE_WORDS[worst]}`),
  },
  {
    key: 'holds',
    label: 'Stop that the wraps take, in g',
    quantity: 'ratio',
    digits: 2,
    headline: true,
    meaning: 'Deceleration at which the motor’s own mass breaks the legs on one side.',
    value: ({ holds }) => holds,
  },
  {
    key: 'sideStrength',
    label: 'Legs on one side of a band',
    symbol: 'F',
    quantity: 'force',
    group: 'Strength',
    meaning: 'They break at this pull, with every knock-down.',
    value: ({ strength }) => strength.side,
  },
  {
    key: 'worstPull',
    label: 'Pull on them at worst',
    quantity: 'force',
    group: 'Strength',
    meaning: 'In the worst case, the lifted side or end.',
    value: ({ pull, worst }) => pull[worst].pull,
  },
  {
    key: 'idealStrength',
    label: 'The same, every filament straight and alike',
    quantity: 'force',
    group: 'Strength',
    meaning: 'What the data sheet promises and no hand reaches.',
    value: ({ strength }) => strength.ideal,
  },
  {
    key: 'bendShare',
    label: 'Left after bending round the edge',
    quantity: 'percent',
    group: 'Strength',
    meaning: 'Each filament spends strength on being bent.',
    value: ({ strength }) => strength.bendShare,
    verdict: ({ strength }) =>
      strength.bendShare > 0.7
        ? { level: 'good', text: 'a well rounded edge' }
        : strength.bendShare > 0.4
          ? { level: 'marginal', text: 'round the edge more' }
          : { level: 'bad', text: 'the edge eats the tow' },
  },
  {
    key: 'edgeShare',
    label: 'Left because inner turns carry more',
    quantity: 'percent',
    group: 'Strength',
    meaning: 'The thicker the band over a small radius, the more its inside carries alone.',
    value: ({ strength }) => strength.edgeShare,
  },
  {
    key: 'thickness',
    label: 'Thickness of the band',
    quantity: 'length',
    group: 'Strength',
    meaning: 'Cured. Spread it where this is more than half the edge’s radius.',
    value: ({ strength }) => strength.thickness,
  },
  {
    key: 'torqueLeft',
    label: 'Twist left to glue and screws',
    quantity: 'moment',
    group: 'Strength',
    meaning: 'Of the blade strike, about the motor’s axis: legs that stand upright do not hold it.',
    value: ({ loads }) => loads.strike.torque,
  },
  {
    key: 'tailPull',
    label: 'Hold that the tail needs',
    quantity: 'force',
    group: 'Strength',
    meaning: 'Friction on all turns holds the rest: a tail under the last turn is enough.',
    value: ({ tailPull }) => tailPull,
  },
  {
    key: 'legs',
    label: 'Legs in all',
    quantity: 'count',
    group: 'Tow and resin',
    meaning: 'Two for each turn, two bands.',
    value: ({ legs }) => legs,
  },
  {
    key: 'turnLength',
    label: 'One turn',
    symbol: '\\ell',
    quantity: 'length',
    group: 'Tow and resin',
    meaning: 'Round plate and tube, pulled straight.',
    value: ({ path }) => path.length,
  },
  {
    key: 'towLength',
    label: 'Tow for one mount',
    quantity: 'length',
    group: 'Tow and resin',
    meaning: 'Both bands with their tails.',
    value: ({ towLength }) => towLength,
  },
  {
    key: 'towMass',
    label: 'Its mass, dry',
    quantity: 'mass',
    group: 'Tow and resin',
    meaning: 'Length times mass per length.',
    value: ({ towMass }) => towMass,
  },
  {
    key: 'wrapMass',
    label: 'Wraps of one mount, cured',
    quantity: 'mass',
    group: 'Tow and resin',
    meaning: 'Tow and the resin in it: grams at the tip of the arm.',
    value: ({ wrapMass }) => wrapMass,
  },
  {
    key: 'resinToMix',
    label: 'Resin to mix for the batch',
    quantity: 'mass',
    group: 'Tow and resin',
    meaning: 'Resin and hardener together, waste counted.',
    value: ({ resinToMix }) => resinToMix,
  },
  {
    key: 'potLife',
    label: 'Pot life in your shop',
    quantity: 'workingTime',
    group: 'Cure',
    meaning: 'By the rule of ten degrees, for the pot that the sheet means.',
    value: ({ potLife }) => potLife,
  },
  {
    key: 'cure',
    label: 'Full cure in your shop',
    quantity: 'cureTime',
    group: 'Cure',
    meaning: 'By the rule of ten degrees.',
    value: ({ cure }) => cure.usual,
  },
  {
    key: 'cureLongest',
    label: 'At the slow end of the rule',
    quantity: 'cureTime',
    group: 'Cure',
    meaning: 'Ten degrees change the rate by 1.5 to 2.5, not by two: wait this long.',
    value: ({ cure }) => cure.longest,
  },
];

export const steps: readonly Step<WrapValues, WrapResult>[] = [
  {
    id: 'ideal',
    says: 'Fibre in the legs on one side, times its strength',
    formula: 'F_0 = n\\,\\frac{T_t}{\\rho_f}\\,\\sigma_f',
    numbers: 'F_0 = \\slot{turns}\\cdot\\frac{\\slot{tow}}{\\slot{density}}\\cdot\\slot{strength} = \\slot{force}',
    slots: (v, { strength }) => ({
      turns: { value: v.turns, quantity: 'count' },
      tow: { value: v.linearDensity, quantity: 'linearDensity' },
      density: { value: STANDARD_CARBON_FIBRE.density, quantity: 'density' },
      strength: { value: STANDARD_CARBON_FIBRE.tensileStrength, quantity: 'stress' },
      force: { value: strength.ideal, quantity: 'force' },
    }),
  },
  {
    id: 'side',
    says: 'Less what hands, bent filaments and the inner turns cost',
    formula: 'F = F_0\\,k\\,k_\\mathrm{bend}\\,k_\\mathrm{edge}',
    numbers: 'F = \\slot{ideal}\\cdot\\slot{hands}\\cdot\\slot{bend}\\cdot\\slot{edge} = \\slot{force}',
    slots: (v, { strength }) => ({
      ideal: { value: strength.ideal, quantity: 'force' },
      hands: { value: v.handLay, quantity: 'percent' },
      bend: { value: strength.bendShare, quantity: 'percent' },
      edge: { value: strength.edgeShare, quantity: 'percent' },
      force: { value: strength.side, quantity: 'force' },
    }),
  },
  {
    id: 'across',
    says: 'Tipped sideways in the stop, the legs on the lifted side of both bands pull at their lever about the tube’s top',
    formula: 'F_q = \\frac{M}{2\\,R\\,(1-\\cos\\psi)}',
    numbers: 'F_q = \\frac{\\slot{moment}}{2\\cdot\\slot{lever}} = \\slot{force}',
    slots: (_, { loads, path }) => ({
      moment: { value: loads.stop.tipping, quantity: 'moment' },
      lever: { value: path.lever, quantity: 'length' },
      force: { value: loads.stop.tipping / (2 * path.lever), quantity: 'force' },
    }),
  },
  {
    id: 'along',
    says: 'Tipped lengthwise, both sides of one band hold, at the distance of the other',
    formula: 'F_l = \\frac{M}{2\\,s\\sin\\psi}',
    numbers: 'F_l = \\frac{\\slot{moment}}{2\\cdot\\slot{spacing}\\cdot\\slot{share}} = \\slot{force}',
    slots: (v, { loads, path }) => ({
      moment: { value: loads.stop.tipping, quantity: 'moment' },
      spacing: { value: v.bandSpacing, quantity: 'length' },
      share: { value: path.downShare, quantity: 'ratio' },
      force: { value: loads.stop.tipping / (2 * v.bandSpacing * path.downShare), quantity: 'force' },
    }),
  },
];
