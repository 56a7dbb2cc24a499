import type { Output } from '~/island/declaration.ts';
import type { PlacementResult, PlacementValues } from './compute.ts';
import { hoverVerdict, likenessVerdict, offsetVerdict } from './verdicts.ts';

type PlacementOutput = Output<PlacementValues, PlacementResult>;

const turn = (rest: Omit<PlacementOutput, 'quantity' | 'digits'>): PlacementOutput => ({
  quantity: 'angularAcceleration',
  digits: 4,
  ...rest,
});
const percent = (rest: Omit<PlacementOutput, 'quantity'>): PlacementOutput => ({ quantity: 'percent', ...rest });
const PLACE = 'In this place';
const HOVER = 'In hover';
const TURNED = 'Turned a quarter';
const OTHER = 'On the other side of the body';

export const outputs: readonly PlacementOutput[] = [
  turn({
    key: 'roll',
    label: 'Roll acceleration',
    symbol: '\\alpha_x',
    meaning: 'How hard the craft answers full stick to the side.',
    value: ({ chosen }) => chosen.agility.roll,
    headline: true,
  }),
  turn({
    key: 'pitch',
    label: 'Pitch acceleration',
    symbol: '\\alpha_y',
    meaning: 'The same fore and aft.',
    value: ({ chosen }) => chosen.agility.pitch,
    headline: true,
  }),
  turn({
    key: 'yaw',
    label: 'Yaw acceleration',
    symbol: '\\alpha_z',
    meaning: 'From reaction torque alone, so it is always the weak axis.',
    value: ({ chosen }) => chosen.agility.yaw,
    group: PLACE,
  }),
  percent({
    key: 'likeness',
    label: 'Roll and pitch alike',
    meaning: 'The slower of the two as a share of the faster. At 100 % one tune fits both.',
    value: ({ chosen }) => chosen.agility.likeness,
    verdict: ({ chosen }) => likenessVerdict(chosen),
    group: PLACE,
  }),
  {
    key: 'forwardOffset',
    label: 'Centre of mass ahead of the motors’ middle',
    symbol: 'c_x',
    quantity: 'length',
    meaning: 'Below zero it is behind. This is what the motors pay for in every second of flight.',
    value: ({ chosen }) => chosen.forwardOffset,
    verdict: offsetVerdict,
    group: PLACE,
  },
  {
    key: 'heightOffset',
    label: 'Centre of mass above the propellers',
    symbol: 'c_z',
    quantity: 'length',
    meaning: 'Below zero it hangs under the discs. Near zero, drag and gusts at the propellers push without turning.',
    value: ({ chosen }) => chosen.heightOffset,
    group: PLACE,
  },
  {
    key: 'allUp',
    label: 'All-up mass',
    symbol: 'm',
    quantity: 'mass',
    meaning: 'The sum of what you entered; weigh the craft to check it.',
    value: ({ chosen }) => chosen.properties.mass,
    group: PLACE,
  },
  percent({
    key: 'frontShare',
    label: 'Each front motor',
    meaning: 'Thrust in hover as a share of its full thrust.',
    value: ({ chosen }) => chosen.frontShare,
    verdict: ({ chosen }) => hoverVerdict(chosen.frontShare),
    group: HOVER,
  }),
  percent({
    key: 'rearShare',
    label: 'Each rear motor',
    meaning: 'Thrust in hover as a share of its full thrust.',
    value: ({ chosen }) => chosen.rearShare,
    verdict: ({ chosen }) => hoverVerdict(chosen.rearShare),
    group: HOVER,
  }),
  percent({
    key: 'usableThrust',
    label: 'Thrust that can be used in balance',
    meaning:
      'The busier pair reaches full thrust first and the other must wait: the share of all thrust that is left for a level climb.',
    value: ({ chosen }) => chosen.hover.usableThrust,
    group: HOVER,
  }),
  percent({
    key: 'extraPower',
    label: 'Extra power of an uneven hover',
    meaning: 'Ideal power above that of an even split. It stays small until the offset is large.',
    value: ({ chosen }) => chosen.hover.extraPower,
    group: HOVER,
    digits: 2,
  }),
  turn({
    key: 'turnedRoll',
    label: 'Roll acceleration',
    meaning: 'With the pack turned a quarter, all else alike.',
    value: ({ turned }) => turned.agility.roll,
    group: TURNED,
  }),
  turn({
    key: 'turnedPitch',
    label: 'Pitch acceleration',
    meaning: 'With the pack turned a quarter, all else alike.',
    value: ({ turned }) => turned.agility.pitch,
    group: TURNED,
  }),
  turn({
    key: 'turnedYaw',
    label: 'Yaw acceleration',
    meaning: 'The same: a turn about the vertical changes nothing about the vertical.',
    value: ({ turned }) => turned.agility.yaw,
    group: TURNED,
  }),
  percent({
    key: 'turnedLikeness',
    label: 'Roll and pitch alike',
    meaning: 'The slower as a share of the faster, pack turned.',
    value: ({ turned }) => turned.agility.likeness,
    verdict: ({ turned }) => likenessVerdict(turned),
    group: TURNED,
  }),
  percent({
    key: 'turnedRollChange',
    label: 'Change in roll',
    meaning: 'What turning the pack does to the roll acceleration.',
    value: ({ chosen, turned }) => turned.agility.roll / chosen.agility.roll - 1,
    group: TURNED,
    digits: 2,
  }),
  percent({
    key: 'turnedPitchChange',
    label: 'Change in pitch',
    meaning: 'What turning the pack does to the pitch acceleration.',
    value: ({ chosen, turned }) => turned.agility.pitch / chosen.agility.pitch - 1,
    group: TURNED,
    digits: 2,
  }),
  turn({
    key: 'otherRoll',
    label: 'Roll acceleration',
    meaning: 'With the pack on the other side of the body, all else alike.',
    value: ({ otherSide }) => otherSide.agility.roll,
    group: OTHER,
  }),
  turn({
    key: 'otherPitch',
    label: 'Pitch acceleration',
    meaning: 'With the pack on the other side of the body, all else alike.',
    value: ({ otherSide }) => otherSide.agility.pitch,
    group: OTHER,
  }),
  turn({
    key: 'otherYaw',
    label: 'Yaw acceleration',
    meaning: 'The same: height plays no part about the vertical.',
    value: ({ otherSide }) => otherSide.agility.yaw,
    group: OTHER,
  }),
  {
    key: 'otherHeight',
    label: 'Centre of mass above the propellers',
    quantity: 'length',
    meaning: 'Where it goes when the pack changes sides.',
    value: ({ otherSide }) => otherSide.heightOffset,
    group: OTHER,
  },
];
