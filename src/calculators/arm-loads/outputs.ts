import type { StrikeDirection } from '@frameworthy/shared/impact';
import type { Output, Verdict } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { Judged, LoadResult } from './compute.ts';
import type { LoadValues } from './inputs.ts';

type LoadOutput = Output<LoadValues, LoadResult>;

const GROUPS: Readonly<Record<StrikeDirection, string>> = {
  sideways: 'Sideways',
  vertical: 'Up or down',
  along: 'Along the arm',
};

function blow(direction: StrikeDirection): LoadOutput[] {
  const group = GROUPS[direction];
  const of = (read: (strike: Judged) => number) => ({
    group,
    value: ({ strikes }: LoadResult) => read(strikes[direction]),
  });
  return [
    {
      key: `${direction}Mass`,
      label: 'Mass that the blow meets',
      symbol: 'm_{eff}',
      quantity: 'mass',
      meaning: 'The free craft gives way by turning.',
      ...of(({ effectiveMass }) => effectiveMass),
    },
    {
      key: `${direction}Stiffness`,
      label: 'Stiffness of arm, root and obstacle',
      symbol: 'k',
      quantity: 'stiffness',
      meaning: 'In a row: softer than the softest.',
      ...of(({ stiffness }) => stiffness),
    },
    {
      key: `${direction}Force`,
      label: 'Peak force',
      symbol: 'F',
      quantity: 'force',
      meaning: 'Lower end of the band.',
      ...of(({ peakForce }) => peakForce),
    },
    {
      key: `${direction}High`,
      label: 'Upper end of the band',
      quantity: 'force',
      meaning: 'Where measured peaks lie.',
      ...of(({ high }) => high),
    },
    {
      key: `${direction}Moment`,
      label: 'Moment at the root',
      symbol: 'M',
      quantity: 'moment',
      meaning: 'At the outer screw.',
      ...of(({ rootMoment }) => rootMoment.vertical + rootMoment.horizontal),
    },
    {
      key: `${direction}Stress`,
      label: 'Highest stress in the arm',
      symbol: '\\sigma',
      quantity: 'stress',
      meaning: 'Outer fibre without holes: at the root, or just past a sleeve where that is more.',
      ...of(({ worst }) => worst.stress),
      verdict: ({ strikes }) => verdictOfUse(strikes[direction].use.bending, 'the bending strength'),
    },
    ...(direction === 'sideways'
      ? [
          {
            key: 'sidewaysTwist',
            label: 'Shear by twisting',
            symbol: '\\tau',
            quantity: 'stress' as const,
            meaning: 'A blow above the axis turns the arm about itself.',
            ...of(({ twist }) => twist),
            verdict: ({ strikes }: LoadResult) => verdictOfUse(strikes.sideways.use.twist, 'the shear strength'),
          },
        ]
      : []),
    {
      key: `${direction}Speed`,
      label: 'Survivable speed',
      symbol: 'v_s',
      quantity: 'speed',
      meaning: 'By the linear model; two thirds of it at the upper end.',
      ...of(({ survivable }) => survivable),
    },
  ];
}

function holds({ strikes, first }: LoadResult, { speed }: LoadValues): Verdict {
  const { survivable, survivableLow } = strikes[first];
  if (survivableLow >= speed) return { level: 'good', text: 'holds at this speed' };
  if (survivable >= speed) return { level: 'marginal', text: 'holds at the lower end of the band, not at the upper' };
  return { level: 'bad', text: 'breaks at this speed' };
}

/** A working share that leaves room for flights by the thousand. Common practice. */
function fatigue(use: number): Verdict {
  const { text } = verdictOfUse(use, 'the static strength');
  if (use <= 0.2) return { level: 'good', text };
  return { level: use <= 0.35 ? 'marginal' : 'bad', text: `${text}: too much for thousands of flights` };
}

export const outputs: readonly LoadOutput[] = [
  {
    key: 'firstSpeed',
    label: 'Survivable speed',
    quantity: 'speed',
    meaning: 'Of the direction that breaks the arm first, holes left out, by the linear model.',
    value: ({ strikes, first }) => strikes[first].survivable,
    verdict: holds,
    headline: true,
  },
  {
    key: 'firstSpeedLow',
    label: 'The same at the upper end of the band',
    quantity: 'speed',
    meaning: 'With peaks half as large again.',
    value: ({ strikes, first }) => strikes[first].survivableLow,
    headline: true,
  },
  ...blow('sideways'),
  ...blow('vertical'),
  ...blow('along'),
  {
    key: 'reactionTorque',
    label: 'Reaction torque',
    symbol: 'Q',
    quantity: 'moment',
    group: 'Full thrust',
    meaning: 'Bends the arm sideways.',
    value: ({ thrust }) => thrust.reactionTorque,
  },
  {
    key: 'thrustMoment',
    label: 'Moment at the root by thrust',
    quantity: 'moment',
    group: 'Full thrust',
    meaning: 'Bends the arm upwards.',
    value: ({ thrust }) => thrust.rootMoment.vertical,
  },
  {
    key: 'thrustStress',
    label: 'Highest stress in the arm',
    quantity: 'stress',
    group: 'Full thrust',
    meaning: 'Both bendings together, at the root or past a sleeve, with every punch of the throttle.',
    value: ({ thrust }) => thrust.stress,
    verdict: ({ thrust }) => fatigue(thrust.use),
  },
  {
    key: 'thrustLean',
    label: 'Lean of the motor',
    quantity: 'angle',
    group: 'Full thrust',
    meaning: 'The thrust points inwards by this much.',
    value: ({ thrust }) => thrust.lean,
  },
  {
    key: 'allUp',
    label: 'All-up mass',
    quantity: 'mass',
    group: 'The craft',
    meaning: 'What a blow through the middle would meet.',
    value: ({ craft }) => craft.mass,
  },
  {
    key: 'inertiaRoll',
    label: 'Inertia in roll',
    quantity: 'momentOfInertia',
    group: 'The craft',
    meaning: 'With pitch it decides blows up or down.',
    value: ({ craft }) => craft.inertia.xx,
  },
  {
    key: 'inertiaPitch',
    label: 'Inertia in pitch',
    quantity: 'momentOfInertia',
    group: 'The craft',
    meaning: 'With roll it decides blows up or down.',
    value: ({ craft }) => craft.inertia.yy,
  },
  {
    key: 'inertiaYaw',
    label: 'Inertia in yaw',
    quantity: 'momentOfInertia',
    group: 'The craft',
    meaning: 'It decides blows sideways.',
    value: ({ craft }) => craft.inertia.zz,
  },
];
