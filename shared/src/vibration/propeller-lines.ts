import { InputError } from '../error.ts';
import { requireBelow, requireBetween, requirePositive } from '../require.ts';

const requireBlades = (blades: number): void => {
  const subject = { parameter: 'blades', quantity: 'number of blades', kind: 'count' } as const;
  requireBetween(blades, 1, 12, subject);
  if (!Number.isInteger(blades)) throw new InputError({ ...subject, value: blades, rule: 'must be a whole number' });
};

/**
 * What a propeller shakes with: its imbalance once a turn, its blades as often as there are blades.
 * $$f_1=\frac{\omega}{2\pi},\quad f_B=B f_1$$
 * @param speed - of the propeller [rad/s]
 * @param blades - of the propeller [-]
 * @returns both frequencies [Hz]
 * @validity definition
 * @throws InputError when speed or blade count is out of range
 * @derivation counting
 */
export function propellerLines(speed: number, blades: number): { oncePerRev: number; bladePass: number } {
  requirePositive(speed, { parameter: 'speed', quantity: 'speed of the propeller', kind: 'rotationalSpeed' });
  requireBlades(blades);
  const oncePerRev = speed / (2 * Math.PI);
  return { oncePerRev, bladePass: blades * oncePerRev };
}

export type PropellerLine = 'once per turn' | 'blade pass';

export interface Crossing {
  /** Name of the mode. */
  mode: string;
  line: PropellerLine;
  /** At which the line meets the mode [rad/s]. */
  speed: number;
  /** [Hz] */
  frequency: number;
}

export interface CrossingInput {
  modes: readonly { name: string; frequency: number }[];
  blades: number;
  /** Slowest and fastest speed of the throttle range [rad/s]. */
  from: number;
  to: number;
}

/**
 * Where the lines of a propeller meet the frequencies of an arm within a range of speed.
 * $$\omega = 2\pi f\ \text{(once per turn)},\quad \omega = \frac{2\pi f}{B}\ \text{(blade pass)}$$
 * @param input - modes, blades, range of speed
 * @returns crossings, slowest first
 * @validity frequencies that do not change with speed
 * @throws InputError when a number is out of range or the range is empty
 * @derivation solves propellerLines for the speed
 */
export function crossings({ modes, blades, from, to }: CrossingInput): Crossing[] {
  requireBlades(blades);
  const speed = { quantity: 'speed of the propeller', kind: 'rotationalSpeed' } as const;
  requirePositive(from, { parameter: 'from', ...speed });
  requirePositive(to, { parameter: 'to', ...speed });
  requireBelow(from, to, 'must be below the speed at full throttle', { parameter: 'from', ...speed });
  return modes
    .flatMap(({ name, frequency }): Crossing[] => {
      requirePositive(frequency, { parameter: 'frequency', quantity: 'frequency', kind: 'frequency' });
      const turn = 2 * Math.PI * frequency;
      return [
        { mode: name, line: 'once per turn', speed: turn, frequency },
        { mode: name, line: 'blade pass', speed: turn / blades, frequency },
      ];
    })
    .filter((crossing) => crossing.speed >= from && crossing.speed <= to)
    .sort((a, b) => a.speed - b.speed);
}
