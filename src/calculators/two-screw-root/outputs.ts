import type { Output } from '~/island/declaration.ts';
import type { HoleMode, HoleUse } from '@frameworthy/shared/joint';
import { verdictOfUse } from '../verdict-of-use.ts';
import { MODE_WORDS, useOf, type RootResult, type RootValues } from './compute.ts';

type RootOutput = Output<RootValues, RootResult>;

const stress = (
  hole: HoleUse['hole'],
  mode: HoleMode,
  rest: Pick<RootOutput, 'key' | 'label' | 'meaning' | 'symbol'>,
  of: string,
): RootOutput => ({
  ...rest,
  quantity: 'stress',
  group: hole === 'outer' ? 'Outer hole' : 'Inner hole',
  value: (result) => useOf(result, hole, mode).stress,
  verdict: (result) => verdictOfUse(useOf(result, hole, mode).use, of),
});

export const outputs: readonly RootOutput[] = [
  {
    key: 'innerLoad',
    label: 'Load on the inner hole',
    symbol: 'F_i',
    quantity: 'force',
    meaning: 'What the inner screw holds down when the motor is hit from the side.',
    value: ({ root }) => root.horizontal.inner,
    headline: true,
  },
  {
    key: 'weakestUse',
    label: 'Weakest hole',
    quantity: 'percent',
    digits: 2,
    meaning: 'Share of the wall’s strength used where it is used most.',
    value: ({ root }) => root.weakest.use,
    verdict: ({ root }) =>
      verdictOfUse(
        root.weakest.use,
        `the strength against ${MODE_WORDS[root.weakest.mode]}, ${root.weakest.hole} hole`,
      ),
    headline: true,
  },
  {
    key: 'outerLoad',
    label: 'Load on the outer hole',
    symbol: 'F_o',
    quantity: 'force',
    meaning: 'Larger than the inner load by the force at the motor.',
    value: ({ root }) => root.horizontal.outer,
    group: 'Outer hole',
  },
  stress(
    'outer',
    'bearing',
    { key: 'outerBearing', label: 'Bearing', symbol: '\\sigma_b', meaning: 'Mean pressure of the screw on the walls.' },
    'the bearing strength',
  ),
  stress(
    'outer',
    'tear-out',
    {
      key: 'outerTearOut',
      label: 'Tear-out between the holes',
      symbol: '\\tau',
      meaning: 'Mean shear or splitting stress in the wall between the holes, half of which each hole may use.',
    },
    'the shear strength',
  ),
  stress(
    'outer',
    'net-section-horizontal',
    {
      key: 'bendingSideways',
      label: 'Bending sideways',
      meaning: 'Outer-fibre stress of the drilled tube. The holes stand at its neutral axis and cost little.',
    },
    'the bending strength',
  ),
  stress(
    'outer',
    'net-section-vertical',
    {
      key: 'bendingUpright',
      label: 'Bending up or down',
      meaning: 'Outer-fibre stress with the holes at the extreme fibre, against the strength of the notched wall.',
    },
    'the notched bending strength',
  ),
  stress(
    'inner',
    'bearing',
    { key: 'innerBearing', label: 'Bearing', symbol: '\\sigma_b', meaning: 'Mean pressure of the screw on the walls.' },
    'the bearing strength',
  ),
  stress(
    'inner',
    'tear-out',
    {
      key: 'innerTearOut',
      label: 'Tear-out at the tube end',
      symbol: '\\tau',
      meaning: 'Mean shear or splitting stress in the wall between hole and end.',
    },
    'the shear strength',
  ),
  {
    key: 'screwUse',
    label: 'Outer screw',
    quantity: 'percent',
    digits: 2,
    meaning: 'Share of the screw’s strength used by shear and pull together, in two shear planes.',
    value: ({ screw }) => screw,
    verdict: ({ screw }) => verdictOfUse(screw, 'the screw'),
    group: 'Screws and plates',
  },
  {
    key: 'platePush',
    label: 'Plates press at the outer screw',
    quantity: 'force',
    meaning: 'Contact force of the vertical load, which pinches the tube and pulls on the screw.',
    value: ({ root }) => root.vertical.outer,
    group: 'Screws and plates',
  },
  {
    key: 'mass',
    label: 'Tube of one arm',
    quantity: 'mass',
    meaning: 'From its inner end to the motor axis, with a sleeve over the root where there is one.',
    value: ({ mass }) => mass,
    group: 'Screws and plates',
  },
];
