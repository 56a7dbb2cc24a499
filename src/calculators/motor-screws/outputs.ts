import { WINDING_ROOM } from '@frameworthy/shared/mount';
import type { Output, Step, Verdict } from '~/island/declaration.ts';
import { CASE_WORDS } from '../mount-inputs.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { Group, ScrewResult } from './compute.ts';
import type { ScrewValues } from './inputs.ts';

type ScrewOutput = Output<ScrewValues, ScrewResult>;

const roomVerdict = (room: number): Verdict =>
  room <= 1e-9
    ? { level: 'bad', text: 'touches the winding' }
    : room < WINDING_ROOM - 1e-9
      ? { level: 'marginal', text: 'too near: a lost washer or a thinner plate closes it' }
      : { level: 'good', text: 'clear of the winding' };

const groupOutputs = (name: 'two' | 'four', label: string): ScrewOutput[] => {
  const of = (result: ScrewResult): Group => result[name];
  const group = `${label} screws`;
  return [
    {
      key: `${name}Shear`,
      label: 'Largest shear in one',
      symbol: 'V',
      quantity: 'force',
      group,
      meaning: 'Whichever way the blow comes from, friction not counted.',
      value: (result) => of(result).shear,
    },
    {
      key: `${name}Pull`,
      label: 'Largest pull in one',
      symbol: 'N',
      quantity: 'force',
      group,
      meaning: 'From thrust, and from the motor tipping about the edge of its base.',
      value: (result) => of(result).tension,
    },
    {
      key: `${name}Use`,
      label: 'Worst screw',
      quantity: 'percent',
      digits: 2,
      group,
      meaning: 'Share of its strength that shear and pull use together.',
      value: (result) => of(result).use,
      verdict: (result) => verdictOfUse(of(result).use, 'the screw'),
    },
  ];
};

export const outputs: readonly ScrewOutput[] = [
  {
    key: 'room',
    label: 'Room before the winding',
    quantity: 'length',
    headline: true,
    meaning: 'Least of the screws in use. Below nothing, the screw stands in the copper.',
    value: ({ room }) => room,
    verdict: ({ room }) => roomVerdict(room),
  },
  {
    key: 'screwUse',
    label: 'Worst screw, as you build it',
    quantity: 'percent',
    digits: 2,
    headline: true,
    meaning: 'Share of its strength that shear and pull use together, in the worst case.',
    value: ({ mine }) => mine.use,
    verdict: ({ mine }) => verdictOfUse(mine.use, `the screw: ${CASE_WORDS[mine.worst]}`),
  },
  ...groupOutputs('two', 'Two'),
  ...groupOutputs('four', 'Four'),
  {
    key: 'extraMass',
    label: 'Mass at the tip',
    symbol: '\\Delta m',
    quantity: 'mass',
    digits: 2,
    group: 'What two more screws cost',
    meaning: 'Of one arm: the two screws themselves.',
    value: ({ extraMass }) => extraMass,
  },
  {
    key: 'keptVertical',
    label: 'Tube left against bending up and down',
    quantity: 'percent',
    group: 'What two more screws cost',
    meaning:
      'Second moment of area at the hole over that of the whole tube; all of it where the tube is not drilled for them.',
    value: ({ kept }) => kept.vertical,
  },
  {
    key: 'keptSideways',
    label: 'Tube left against bending sideways',
    quantity: 'percent',
    group: 'What two more screws cost',
    meaning: 'Upright holes stand near the neutral axis of sideways bending.',
    value: ({ kept }) => kept.sideways,
  },
  {
    key: 'stressShare',
    label: 'Stress at the inner tube hole, of that at the root',
    quantity: 'percent',
    digits: 2,
    group: 'What two more screws cost',
    meaning: 'Up and down, as if the tube there is drilled and at the root is not. The moment out here is small.',
    value: ({ stressShare }) => stressShare,
  },
  {
    key: 'roomBeside',
    label: 'Room of a screw beside the tube',
    quantity: 'length',
    group: 'Length',
    meaning: 'Before the winding; where this pair is not used, that of the other.',
    value: ({ fit }) => (fit.beside ?? fit.through)!.room,
    verdict: ({ fit }) => (fit.beside ? roomVerdict(fit.beside.room) : undefined),
  },
  {
    key: 'roomThrough',
    label: 'Room of a screw through the tube',
    quantity: 'length',
    group: 'Length',
    meaning: 'Before the winding; where this pair is not used, that of the other.',
    value: ({ fit }) => (fit.through ?? fit.beside)!.room,
    verdict: ({ fit }) => (fit.through ? roomVerdict(fit.through.room) : undefined),
  },
  {
    key: 'longestBeside',
    label: 'Longest screw beside the tube',
    symbol: 'L_{max}',
    quantity: 'length',
    group: 'Length',
    meaning: 'Leaves half a millimetre before the winding.',
    value: ({ grip }, { windingDepth }) => Math.max(0, grip.beside + windingDepth - WINDING_ROOM),
  },
  {
    key: 'longestThrough',
    label: 'Longest screw through the tube',
    quantity: 'length',
    group: 'Length',
    meaning: 'The same, with what its head rests on.',
    value: ({ grip }, { windingDepth }) => Math.max(0, grip.through + windingDepth - WINDING_ROOM),
  },
  {
    key: 'engagement',
    label: 'Thread that holds',
    symbol: 'e',
    quantity: 'length',
    group: 'Length',
    meaning: 'Least of the screws in use.',
    value: ({ engagement }) => engagement,
    verdict: ({ engagement, diameter }) =>
      engagement >= diameter - 1e-9
        ? { level: 'good', text: 'one diameter or more' }
        : engagement >= 0.7 * diameter
          ? { level: 'marginal', text: 'less than one diameter' }
          : { level: 'bad', text: 'a few turns' },
  },
  {
    key: 'engagementNeeded',
    label: 'Thread that the loads need',
    quantity: 'length',
    group: 'Length',
    meaning: 'In aluminium of this strength, two lost turns counted; tightening needs its own.',
    value: ({ engagementNeeded }) => engagementNeeded,
  },
  {
    key: 'threadUse',
    label: 'Motor’s thread',
    quantity: 'percent',
    digits: 2,
    group: 'Length',
    meaning: 'Share of the pull that strips it.',
    value: ({ threadUse }) => threadUse,
    verdict: ({ threadUse }) => verdictOfUse(threadUse, 'the thread'),
  },
];

export const steps: readonly Step<ScrewValues, ScrewResult>[] = [
  {
    id: 'reach',
    says: 'Plate and what else lies under the motor are taken off the screw’s length; the rest may not reach the winding',
    formula: '\\text{room} = h_w - (L - t_p - t_u)',
    numbers: '\\text{room} = \\slot{winding} - (\\slot{length} - \\slot{plate} - \\slot{rest}) = \\slot{room}',
    slots: (v, { fit, grip }) => {
      const [one, under, screwLength] = fit.beside
        ? [fit.beside, grip.beside, v.screwLength]
        : [fit.through!, grip.through, v.throughLength];
      return {
        winding: { value: v.windingDepth, quantity: 'length' },
        length: { value: screwLength, quantity: 'length' },
        plate: { value: v.plateThickness, quantity: 'length' },
        rest: { value: under - v.plateThickness, quantity: 'length' },
        room: { value: one.room, quantity: 'length' },
      };
    },
  },
  {
    id: 'torque',
    says: 'A blade that is stopped twists the motor; shared by four screws and by two',
    formula: 'V = \\frac{F_b}{n} + \\frac{F_b D_p}{2}\\,\\frac{r}{\\sum r^2}',
    numbers:
      'V_4 = \\slot{four},\\quad V_2 = \\slot{two}\\quad\\text{from } F_b = \\slot{force},\\ \\tfrac12F_bD_p = \\slot{torque}',
    slots: (v, { two, four, loads }) => ({
      four: { value: four.shear, quantity: 'force' },
      two: { value: two.shear, quantity: 'force' },
      force: { value: v.bladeForce, quantity: 'force' },
      torque: { value: loads.strike.torque, quantity: 'moment' },
    }),
  },
  {
    id: 'tip',
    says: 'In the stop the motor tips about the edge of its base, and the far screws pull',
    formula: 'N = \\frac{M\\,d}{\\sum d^2},\\quad M = m\\,a\\,h_m',
    numbers: 'N_4 = \\slot{four},\\quad N_2 = \\slot{two}\\quad\\text{from } M = \\slot{moment}',
    slots: (_, { two, four, loads }) => ({
      four: { value: four.tension, quantity: 'force' },
      two: { value: two.tension, quantity: 'force' },
      moment: { value: loads.stop.tipping, quantity: 'moment' },
    }),
  },
];
