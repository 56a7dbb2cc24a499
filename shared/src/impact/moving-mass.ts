import { requireNotNegative, requirePositive } from '../require.ts';

export interface MovingMass {
  /** Mass behind the blow: for a hit off the centre of mass, the effective mass [kg]. */
  mass: number;
  /** [m/s] */
  speed: number;
  /** Of everything that gives, in series [N/m]. */
  stiffness: number;
}

export interface Blow {
  /** [N] */
  peakForce: number;
  /** Of all springs together, at the peak [m]. */
  deflection: number;
  /** From contact to rest: a quarter of a period [s]. */
  timeToPeak: number;
}

/**
 * A mass stopped by a spring, gravity left out: a hit from the side.
 * $$F = v\sqrt{k m},\quad \delta = v\sqrt{m/k},\quad t = \tfrac{\pi}{2}\sqrt{m/k}$$
 * @param hit - mass, speed, stiffness
 * @returns peak force, deflection and time to the peak
 * @validity linear spring, nothing yields or bottoms out; measured peaks of small frames lie up to about 1.5 times
 * higher, see peakForceBand
 * @throws InputError when a number is out of range
 * @source hibbeler-mechanics, § 14.4, horizontal impact
 */
export function movingMassImpact({ mass, speed, stiffness }: MovingMass): Blow {
  requirePositive(mass, { parameter: 'mass', quantity: 'mass', kind: 'mass' });
  requireNotNegative(speed, { parameter: 'speed', quantity: 'speed', kind: 'speed' });
  requirePositive(stiffness, { parameter: 'stiffness', quantity: 'stiffness', kind: 'stiffness' });
  const inverseFrequency = Math.sqrt(mass / stiffness);
  return {
    peakForce: speed * Math.sqrt(stiffness * mass),
    deflection: speed * inverseFrequency,
    timeToPeak: (Math.PI / 2) * inverseFrequency,
  };
}
