import type { Match } from '@frameworthy/shared/arm';
import type { Output, Verdict } from '~/island/declaration.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import { ratio, type ArmResult } from './compute.ts';
import type { ArmValues } from './inputs.ts';
import type { Part } from './parts.ts';

type ArmOutput = Output<ArmValues, ArmResult>;
type Kind = ArmOutput['quantity'];

/** One line of each arm's column. */
const PART_LINES: readonly [name: string, label: string, quantity: Kind, meaning: string, of: (part: Part) => number][] = [
  ['Mass', 'Mass', 'mass', 'From its end in the body to its end beyond the motor.', (p) => p.mass],
  ['Vertical', 'Stiffness up and down', 'stiffness', 'Force at the motor for a millimetre.', (p) => p.stiffness.vertical],
  ['Sideways', 'Stiffness sideways', 'stiffness', 'The same in the plane of the propellers.', (p) => p.stiffness.horizontal],
  ['Twist', 'Stiffness in twist', 'rotationalStiffness', 'Against the motor leaning over.', (p) => p.stiffness.torsion],
  ['Rise', 'Motor rises under full thrust', 'length', 'By bending of the arm alone.', (p) => p.thrust.deflection],
  ['Tilt', 'Motor tilts under full thrust', 'angle', 'Inwards, towards the body.', (p) => p.thrust.tilt],
  ['Drift', 'Motor moves aside under reaction torque', 'length', 'At full thrust.', (p) => p.torque.deflection],
  ['Turn', 'Motor turns under reaction torque', 'angle', 'About its own axis, with the end of the arm.', (p) => p.torque.turn],
  ['RootVertical', 'Largest force up or down, by the root', 'force', 'At the motor, for the drilled section at the outer screw.', (p) => p.root.vertical],
  ['RootSideways', 'Largest force sideways, by the root', 'force', 'The same for a blow in the plane of the propellers.', (p) => p.root.horizontal],
  ['MiddleVertical', 'Largest force up or down, by mid-span', 'force', 'For the whole section half way out.', (p) => p.middle.vertical],
  ['MiddleSideways', 'Largest force sideways, by mid-span', 'force', 'Where it is below the root’s, the arm breaks half way out.', (p) => p.middle.horizontal],
  ['Frequency', 'First frequency up and down', 'frequency', 'Quick estimate with a rigid root.', (p) => p.frequency.vertical],
  ['FrequencySideways', 'First frequency sideways', 'frequency', 'Without the lean of the motor, which lowers it.', (p) => p.frequency.horizontal],
]; // prettier-ignore

function verdictOf(name: string, part: Part, { thrust }: ArmValues): Verdict | undefined {
  if (name === 'RootVertical') return verdictOfUse(thrust / part.root.vertical, 'it at full thrust');
  const weaker = name === 'MiddleSideways' && part.middle.horizontal < part.root.horizontal;
  return weaker ? { level: 'marginal', text: 'the taper makes mid-span the weakest' } : undefined;
}

const column = (which: 'tube' | 'strip', group: string): ArmOutput[] =>
  PART_LINES.map(([name, label, quantity, meaning, of]) => ({
    key: which + name,
    label,
    quantity,
    group,
    meaning,
    value: (result) => of(result[which]),
    verdict: (result, values) => verdictOf(name, result[which], values),
  }));

const over = (
  key: string,
  label: string,
  meaning: string,
  of: (part: Part) => number,
  headline = false,
): ArmOutput => ({
  key,
  label,
  quantity: 'ratio',
  digits: 2,
  meaning,
  value: (result) => ratio(result, of),
  ...(headline ? { headline } : { group: 'Tube over strip' }),
});

interface Matching {
  key: string;
  label: string;
  meaning: string;
  group: string;
  /** What is said where even the smallest, or even the largest size does not match. */
  below: string;
  above: string;
  of: (result: ArmResult) => Match;
  verdict?: (size: number, values: ArmValues) => Verdict | undefined;
}

const matching = ({ of, below, above, verdict, ...rest }: Matching): ArmOutput => {
  const size = (result: ArmResult): number => {
    const match = of(result);
    return 'size' in match ? match.size : Number.NaN;
  };
  return {
    ...rest,
    quantity: 'length',
    value: size,
    impossible: (result) => {
      const match = of(result);
      if ('size' in match) return undefined;
      return match.outOfReach === 'below the smallest' ? below : above;
    },
    verdict: (result, values) => verdict?.(size(result), values),
  };
};

const asBeam = (width: number, { armLength }: ArmValues): Verdict | undefined =>
  width > armLength / 5 ? { level: 'bad', text: 'too wide for an arm: over a fifth of its length' } : undefined;

/** Room by which wires still pull through: common practice. */
const PULLING = 1.15;

type Compared = 'stiff' | 'heavy';
const more = (what: Compared) => (what === 'stiff' ? 'stiffer' : 'heavier');
const less = (what: Compared) => (what === 'stiff' ? 'softer' : 'lighter');

const widthAs = (what: Compared) => ({
  group: 'Strip to match the tube',
  below: `even a strip no wider than thick is ${more(what)} than the tube`,
  above: `even a strip twice as wide as the arm is long is ${less(what)} than the tube`,
  verdict: asBeam,
});
const wallAs = (what: Compared) => ({
  group: 'Tube wall to match the strip',
  below: `even a wall as thin as paper is ${more(what)} than the strip`,
  above: `even a solid bar of this diameter is ${less(what)} than the strip`,
});

export const outputs: readonly ArmOutput[] = [
  over(
    'massRatio',
    'Mass, tube over strip',
    'Below 1 the tube is lighter, its motor mount included.',
    (p) => p.mass,
    true,
  ),
  over(
    'verticalRatio',
    'Stiffness up and down, tube over strip',
    'Above 1 the tube is stiffer against thrust.',
    (p) => p.stiffness.vertical,
    true,
  ),
  over('sidewaysRatio', 'Stiffness sideways', 'In the plane of the propellers.', (p) => p.stiffness.horizontal),
  over('twistRatio', 'Stiffness in twist', 'About the arm’s own axis.', (p) => p.stiffness.torsion),
  over(
    'strengthRatio',
    'Strength up and down at the root',
    'Largest tip force of one over the other.',
    (p) => p.root.vertical,
  ),
  over(
    'strengthSidewaysRatio',
    'Strength sideways at the root',
    'The same in the plane of the propellers.',
    (p) => p.root.horizontal,
  ),
  over(
    'perGramRatio',
    'Stiffness up and down per gram',
    'What a gram buys in one over what it buys in the other.',
    (p) => p.stiffness.vertical / p.mass,
  ),
  ...column('tube', 'Round tube'),
  ...column('strip', 'Plate strip'),
  matching({
    ...widthAs('stiff'),
    key: 'widthVertical',
    label: 'Root width as stiff up and down',
    meaning: 'Same thickness, same taper.',
    of: ({ width }) => width.vertical,
  }),
  matching({
    ...widthAs('stiff'),
    key: 'widthSideways',
    label: 'Root width as stiff sideways',
    meaning: 'Same thickness, same taper.',
    of: ({ width }) => width.sideways,
  }),
  matching({
    ...widthAs('heavy'),
    key: 'widthMass',
    label: 'Root width as heavy',
    meaning: 'Same thickness, same taper, and the tube with its motor mount.',
    of: ({ width }) => width.mass,
  }),
  matching({
    group: 'Strip to match the tube',
    key: 'thicknessVertical',
    label: 'Thickness as stiff up and down',
    meaning: 'At the widths given: thickness counts with its cube.',
    below: 'even the thinnest plate is stiffer than the tube',
    above: 'even a plate as thick as the strip is narrow is softer than the tube',
    of: ({ thickness }) => thickness,
  }),
  ...(
    [
      ['wallVertical', 'Wall as stiff up and down', 'vertical'],
      ['wallSideways', 'Wall as stiff sideways', 'sideways'],
      ['wallMass', 'Wall as heavy', 'mass'],
    ] as const
  ).map(([key, label, which]) =>
    matching({
      ...wallAs(which === 'mass' ? 'heavy' : 'stiff'),
      key,
      label,
      meaning: which === 'mass' ? 'Same diameter, motor mount included.' : 'Same diameter and material.',
      of: ({ wall }) => wall[which],
    }),
  ),
  {
    key: 'bore',
    label: 'Bore of the tube',
    quantity: 'length',
    group: 'Wires in the bore',
    meaning: 'Where the motor wires run.',
    value: ({ bore }) => bore,
    verdict: ({ bore, wireRoom }) =>
      bore < wireRoom
        ? { level: 'bad', text: 'too narrow for the wires' }
        : bore < PULLING * wireRoom
          ? { level: 'marginal', text: 'the wires fit and will not pull through' }
          : { level: 'good', text: 'the wires fit' },
  },
  {
    key: 'wireRoom',
    label: 'Bore that the wires ask for',
    quantity: 'length',
    group: 'Wires in the bore',
    meaning: 'Smallest circle round all of them.',
    value: ({ wireRoom }) => wireRoom,
  },
  {
    key: 'thickestWire',
    label: 'Thickest wire that fits',
    quantity: 'length',
    group: 'Wires in the bore',
    meaning: 'Over the insulation, as many of them.',
    value: ({ thickestWire }) => thickestWire,
  },
];
