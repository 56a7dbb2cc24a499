import type { Output } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { HoleResult } from './compute.ts';
import type { HoleValues } from './inputs.ts';

type HoleOutput = Output<HoleValues, HoleResult>;

const kept = (
  key: string,
  label: string,
  meaning: string,
  value: (result: HoleResult) => number,
  rest: Partial<HoleOutput> = {},
): HoleOutput => ({
  key,
  label,
  meaning,
  quantity: 'percent',
  digits: 2,
  group: 'Strength kept at the hole',
  value,
  ...rest,
});
const force = (
  key: string,
  label: string,
  meaning: string,
  value: (result: HoleResult) => number,
  rest: Partial<HoleOutput> = {},
): HoleOutput => ({ key, label, meaning, quantity: 'force', group: 'Largest force at the motor', value, ...rest });

export const outputs: readonly HoleOutput[] = [
  kept(
    'notchedShare',
    'Strength kept at the hole',
    'Of the undrilled section’s bending strength: the lowest of net section and both criteria.',
    ({ drilled }) => drilled.notchedShare,
    { headline: true, symbol: 's' },
  ),
  force(
    'armForce',
    'Largest force, with the hole',
    'At the motor: the lower of hole and root.',
    ({ forces }) => forces.armForce,
    {
      headline: true,
      verdict: ({ forces }, { tipForce }) => verdictOfUse(tipForce / forces.armForce, 'it'),
    },
  ),
  {
    key: 'moment',
    label: 'Moment at the hole',
    symbol: 'M',
    quantity: 'moment',
    meaning: 'Falls in a straight line to nothing at the motor.',
    group: 'At the hole',
    value: ({ moment }) => moment,
  },
  {
    key: 'isotropicFactor',
    label: 'Peak at the hole, metal',
    symbol: 'K_t',
    quantity: 'ratio',
    meaning: 'Elastic peak over the outer-fibre stress without the hole, were the part isotropic.',
    group: 'At the hole',
    value: ({ drilled }) => drilled.isotropicFactor,
  },
  {
    key: 'laminateFactor',
    label: 'Peak at the hole, this laminate',
    quantity: 'ratio',
    meaning: 'Fibre along the arm raises it.',
    group: 'At the hole',
    value: ({ drilled }) => drilled.laminateFactor,
  },
  kept(
    'elasticShare',
    'By the elastic peak',
    'If carbon broke where its peak reaches the strength. It does not.',
    ({ drilled }) => drilled.elasticShare,
  ),
  kept(
    'pointShare',
    'By the point criterion',
    'Stress a length d₀ beside the hole.',
    ({ drilled }) => drilled.pointShare,
  ),
  kept(
    'meanShare',
    'By the mean criterion',
    'Mean stress over a length a₀ beside the hole.',
    ({ drilled }) => drilled.meanShare,
  ),
  kept(
    'netShare',
    'By the net section',
    'Section modulus, drilled over whole: the most that can be left.',
    ({ drilled }) => drilled.netShare,
  ),
  kept(
    'shearShare',
    'Of the shear strength',
    'At the neutral axis; near the motor it may decide.',
    ({ drilled }) => drilled.shearShare,
  ),
  force('holeForce', 'At the hole', 'As a notched laminate.', ({ forces }) => forces.holeForce),
  force('wholeForce', 'There without the hole', 'The same section undrilled.', ({ forces }) => forces.wholeForce),
  force(
    'rootForce',
    'At the root, without a hole',
    'At the outer screw, taken whole.',
    ({ forces }) => forces.rootForce,
  ),
  {
    key: 'harmlessFrom',
    label: 'Harmless from',
    symbol: 'x_0',
    quantity: 'length',
    meaning: 'From here outwards the root is weaker in bending.',
    group: 'Largest force at the motor',
    value: ({ forces }) => forces.harmlessFrom,
    verdict: ({ forces }, { station }) =>
      station >= forces.harmlessFrom
        ? { level: 'good', text: 'your hole is farther out' }
        : { level: 'marginal', text: 'your hole is farther in' },
  },
  {
    key: 'netArea',
    label: 'Net area',
    quantity: 'area',
    meaning: 'Through the middle of the hole.',
    group: 'Section',
    value: ({ drilled }) => drilled.net.area,
  },
  {
    key: 'secondMomentWhole',
    label: 'Second moment, undrilled',
    symbol: 'I',
    quantity: 'secondMomentOfArea',
    meaning: 'In the plane of the load.',
    group: 'Section',
    value: ({ drilled }) => drilled.gross.secondMomentOfArea,
  },
  {
    key: 'secondMomentNet',
    label: 'Second moment, with the hole',
    symbol: 'I_{net}',
    quantity: 'secondMomentOfArea',
    meaning: 'About the neutral axis of what is left.',
    group: 'Section',
    value: ({ drilled }) => drilled.net.secondMomentOfArea,
  },
];
