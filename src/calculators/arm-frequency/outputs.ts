import type { ArmSensitivity } from '@frameworthy/shared/vibration';
import type { Output, Verdict } from '~/island/declaration.ts';
import type { FrequencyResult } from './compute.ts';
import type { FrequencyValues } from './inputs.ts';

type FrequencyOutput = Output<FrequencyValues, FrequencyResult>;

/** Within this share of a line the arm swells the shaking several times over, with the little damping that carbon has. */
const NEAR = 0.15;

/** Where a frequency stands against once per turn between hover and full throttle. */
export function standing(frequency: number, { hover, full }: Pick<FrequencyResult, 'hover' | 'full'>): Verdict {
  const over = frequency / hover.oncePerRev;
  if (Math.abs(over - 1) < NEAR) return { level: 'bad', text: 'close to once per turn in hover' };
  if (over < 1) return { level: 'marginal', text: 'below once per turn in hover: passed on every take-off' };
  const top = frequency / full.oncePerRev;
  if (top > 1 + NEAR) return { level: 'good', text: 'above once per turn at full throttle' };
  if (top > 1 - NEAR) return { level: 'marginal', text: 'close to once per turn at full throttle' };
  return { level: 'marginal', text: 'met by once per turn between hover and full throttle' };
}

const meets = (
  key: string,
  label: string,
  meaning: string,
  speed: (result: FrequencyResult, blades: number) => number,
): FrequencyOutput => ({
  key,
  label,
  quantity: 'rotationalSpeed',
  group: 'Where the lines meet',
  meaning,
  value: (result, { blades }) => speed(result, blades),
  verdict: (result, { blades, hoverSpeed, fullSpeed }) => {
    const at = speed(result, blades);
    if (at < hoverSpeed) return { level: 'good', text: 'below hover' };
    return at > fullSpeed
      ? { level: 'good', text: 'beyond full throttle' }
      : { level: 'marginal', text: 'within the throttle range' };
  },
});

const slope = (
  key: string,
  label: string,
  meaning: string,
  step: number,
  pick: (s: ArmSensitivity) => number,
): FrequencyOutput => ({
  key,
  label,
  quantity: 'frequency',
  group: 'What a change does, up and down',
  meaning,
  digits: 2,
  value: ({ sensitivity }) => pick(sensitivity) * step,
});

const TURN = 2 * Math.PI;

export const outputs: readonly FrequencyOutput[] = [
  {
    key: 'upDown',
    label: 'First frequency, up and down',
    symbol: 'f_v',
    quantity: 'frequency',
    meaning: 'How fast the motor nods when the arm is plucked upwards.',
    value: ({ modes }) => modes.upDown[0].frequency,
    verdict: (result) => standing(result.modes.upDown[0].frequency, result),
    headline: true,
  },
  {
    key: 'sideways',
    label: 'First frequency, sideways',
    symbol: 'f_h',
    quantity: 'frequency',
    meaning:
      'The motor swings in the plane of the propellers and leans over, because it sits above the arm. An out-of-balance propeller pulls this way.',
    value: ({ modes }) => modes.sideways[0].frequency,
    verdict: (result) => standing(result.modes.sideways[0].frequency, result),
    headline: true,
  },
  {
    key: 'sidewaysTwist',
    label: 'Second frequency, sideways with twist',
    quantity: 'frequency',
    group: 'Further modes',
    meaning: 'The other mixture of swing and lean, the two against each other.',
    value: ({ modes }) => modes.sideways[1].frequency,
  },
  {
    key: 'twistShare',
    label: 'Twist in the first sideways mode',
    quantity: 'percent',
    group: 'Further modes',
    meaning: 'Share of the spring energy that sits in twist of the arm and its root: where stiffness would help.',
    value: ({ modes }) => modes.sideways[0].twistShare,
  },
  {
    key: 'upDownSecond',
    label: 'Second frequency, up and down',
    quantity: 'frequency',
    group: 'Further modes',
    meaning: 'The arm bends into an S and the motor rocks.',
    value: ({ modes }) => modes.upDown[1].frequency,
  },
  {
    key: 'hoverTurn',
    label: 'Once per turn in hover',
    quantity: 'frequency',
    group: 'Propeller',
    meaning: 'What an out-of-balance propeller shakes with.',
    value: ({ hover }) => hover.oncePerRev,
  },
  {
    key: 'fullTurn',
    label: 'Once per turn at full throttle',
    quantity: 'frequency',
    group: 'Propeller',
    meaning: 'The same at the other end of the throttle.',
    value: ({ full }) => full.oncePerRev,
  },
  {
    key: 'hoverBlades',
    label: 'Blade pass in hover',
    quantity: 'frequency',
    group: 'Propeller',
    meaning: 'Each blade that passes over the arm gives it a push of air.',
    value: ({ hover }) => hover.bladePass,
  },
  {
    key: 'fullBlades',
    label: 'Blade pass at full throttle',
    quantity: 'frequency',
    group: 'Propeller',
    meaning: 'The same at full throttle.',
    value: ({ full }) => full.bladePass,
  },
  meets(
    'upDownTurn',
    'Up and down meets once per turn',
    'Speed at which the imbalance shakes the arm up and down at its own frequency.',
    ({ modes }) => TURN * modes.upDown[0].frequency,
  ),
  meets(
    'sidewaysTurn',
    'Sideways meets once per turn',
    'Speed at which the imbalance shakes the arm sideways at its own frequency.',
    ({ modes }) => TURN * modes.sideways[0].frequency,
  ),
  meets(
    'upDownBlades',
    'Up and down meets blade pass',
    'Speed at which the blades pass as often as the arm nods.',
    ({ modes }, blades) => (TURN * modes.upDown[0].frequency) / blades,
  ),
  meets(
    'twistBlades',
    'Sideways with twist meets blade pass',
    'Speed at which the blades pass as often as the second sideways mode swings.',
    ({ modes }, blades) => (TURN * modes.sideways[1].frequency) / blades,
  ),
  slope(
    'perLength',
    'One millimetre longer',
    'Change of the first frequency for a longer arm.',
    1e-3,
    (s) => s.length.upDown,
  ),
  slope(
    'perSize',
    'One millimetre more across',
    'Change for a larger tube of the same wall, or a wider strip.',
    1e-3,
    (s) => s.size.upDown,
  ),
  slope(
    'perWall',
    'A tenth of a millimetre more wall',
    'Change for a thicker wall, or a thicker plate.',
    1e-4,
    (s) => s.wall.upDown,
  ),
  slope(
    'perMass',
    'One gram more at the tip',
    'Change for a heavier motor, the same in size.',
    1e-3,
    (s) => s.mass.upDown,
  ),
];
