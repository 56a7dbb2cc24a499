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
  ['Mass', 'Mass', 'mass', 'From end to end.', (p) => p.mass],
  ['Vertical', 'Stiffness up and down', 'stiffness', 'Force at the motor over its movement.', (p) => p.stiffness.vertical],
  ['Sideways', 'Stiffness sideways', 'stiffness', 'In the plane of the propellers.', (p) => p.stiffness.horizontal],
  ['Twist', 'Stiffness in twist', 'rotationalStiffness', 'Against leaning over.', (p) => p.stiffness.torsion],
  ['Rise', 'Motor rises under full thrust', 'length', 'By the arm alone.', (p) => p.thrust.deflection],
  ['Tilt', 'Motor tilts under full thrust', 'angle', 'Towards the body.', (p) => p.thrust.tilt],
  ['Drift', 'Motor moves aside under reaction torque', 'length', 'At full thrust.', (p) => p.torque.deflection],
  ['Turn', 'Motor turns under reaction torque', 'angle', 'About its own axis.', (p) => p.torque.turn],
  ['RootVertical', 'Largest force up or down, by the root', 'force', 'At the motor, by the drilled section.', (p) => p.root.vertical],
  ['RootSideways', 'Largest force sideways, by the root', 'force', 'At the motor, by the drilled section.', (p) => p.root.horizontal],
  ['MiddleVertical', 'Largest force up or down, by mid-span', 'force', 'At the motor, by the section half way out.', (p) => p.middle.vertical],
  ['MiddleSideways', 'Largest force sideways, by mid-span', 'force', 'At the motor, by the section half way out.', (p) => p.middle.horizontal],
  ['Frequency', 'First frequency up and down', 'frequency', 'Quick estimate with a rigid root.', (p) => p.frequency.vertical],
  ['FrequencySideways', 'First frequency sideways', 'frequency', 'Quick estimate with a rigid root.', (p) => p.frequency.horizontal],
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

/** Room by which wires still pull through: common practice. */
const PULLING = 1.15;

type Words = [below: string, above: string];
const STIFF: Words = ['stiffer', 'softer'];
const HEAVY: Words = ['heavier', 'lighter'];

interface Sizes {
  group: string;
  meaning: string;
  /** The smallest and the largest that are looked at, and what they are held against. */
  least: string;
  most: string;
  other: string;
  verdict?: (size: number, values: ArmValues) => Verdict | undefined;
}

/** A size of one arm that matches the other, or why there is none. */
const matching = (
  { group, meaning, least, most, other, verdict }: Sizes,
  key: string,
  label: string,
  [below, above]: Words,
  of: (result: ArmResult) => Match,
): ArmOutput => {
  const size = (result: ArmResult): number => {
    const match = of(result);
    return 'size' in match ? match.size : Number.NaN;
  };
  return {
    key,
    label,
    group,
    meaning,
    quantity: 'length',
    value: size,
    impossible: (result) => {
      const match = of(result);
      if ('size' in match) return undefined;
      return `even ${match.outOfReach === 'below the smallest' ? `${least} is ${below}` : `${most} is ${above}`} than the ${other}`;
    },
    verdict: (result, values) => verdict?.(size(result), values),
  };
};

const WIDTH: Sizes = {
  group: 'Strip to match the tube',
  meaning: 'Same thickness, same taper.',
  least: 'one no wider than thick',
  most: 'one twice as wide as the arm is long',
  other: 'tube',
  verdict: (width, { armLength }) =>
    width > armLength / 5 ? { level: 'bad', text: 'too wide for an arm: over a fifth of its length' } : undefined,
};
const THICKNESS: Sizes = {
  ...WIDTH,
  meaning: 'At the widths given.',
  least: 'the thinnest',
  most: 'one as thick as wide',
  verdict: undefined,
};
const WALL: Sizes = {
  group: 'Tube wall to match the strip',
  meaning: 'Same diameter, same material.',
  least: 'one as thin as paper',
  most: 'a solid bar',
  other: 'strip',
};

export const outputs: readonly ArmOutput[] = [
  over('massRatio', 'Mass, tube over strip', 'Below 1 the tube is lighter.', (p) => p.mass, true),
  over(
    'verticalRatio',
    'Stiffness up and down, tube over strip',
    'Above 1 the tube is stiffer.',
    (p) => p.stiffness.vertical,
    true,
  ),
  over('sidewaysRatio', 'Stiffness sideways', 'Above 1 the tube is stiffer.', (p) => p.stiffness.horizontal),
  over('twistRatio', 'Stiffness in twist', 'Above 1 the tube is stiffer.', (p) => p.stiffness.torsion),
  over('strengthRatio', 'Strength up and down at the root', 'Above 1 the tube is stronger.', (p) => p.root.vertical),
  over(
    'strengthSidewaysRatio',
    'Strength sideways at the root',
    'Above 1 the tube is stronger.',
    (p) => p.root.horizontal,
  ),
  over('perGramRatio', 'Stiffness up and down per gram', 'What a gram buys.', (p) => p.stiffness.vertical / p.mass),
  ...column('tube', 'Round tube'),
  ...column('strip', 'Plate strip'),
  matching(WIDTH, 'widthVertical', 'Root width as stiff up and down', STIFF, ({ width }) => width.vertical),
  matching(WIDTH, 'widthSideways', 'Root width as stiff sideways', STIFF, ({ width }) => width.sideways),
  matching(WIDTH, 'widthMass', 'Root width as heavy', HEAVY, ({ width }) => width.mass),
  matching(THICKNESS, 'thicknessVertical', 'Thickness as stiff up and down', STIFF, ({ thickness }) => thickness),
  matching(WALL, 'wallVertical', 'Wall as stiff up and down', STIFF, ({ wall }) => wall.vertical),
  matching(WALL, 'wallSideways', 'Wall as stiff sideways', STIFF, ({ wall }) => wall.sideways),
  matching(WALL, 'wallMass', 'Wall as heavy', HEAVY, ({ wall }) => wall.mass),
  {
    key: 'bore',
    label: 'Bore of the tube',
    quantity: 'length',
    group: 'Wires in the bore',
    meaning: 'For the motor wires.',
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
    meaning: 'Smallest circle round them.',
    value: ({ wireRoom }) => wireRoom,
  },
  {
    key: 'thickestWire',
    label: 'Thickest wire that fits',
    quantity: 'length',
    group: 'Wires in the bore',
    meaning: 'Over the insulation.',
    value: ({ thickestWire }) => thickestWire,
  },
];
