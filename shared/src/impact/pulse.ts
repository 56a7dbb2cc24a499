import { requireNotNegative, requirePositive } from '../require.ts';

export interface Pulse {
  /** Peak acceleration [m/s²]. */
  peakAcceleration: number;
  /** From start to end of contact [s]. */
  duration: number;
}

const requirePulse = ({ peakAcceleration, duration }: Pulse): void => {
  requireNotNegative(peakAcceleration, {
    parameter: 'peakAcceleration',
    quantity: 'peak acceleration',
    kind: 'acceleration',
  });
  requirePositive(duration, { parameter: 'duration', quantity: 'contact time', kind: 'time' });
};

/**
 * Change of speed by a half-sine pulse.
 * $$\Delta v = \tfrac{2}{\pi} A t$$
 * @param pulse - peak and duration
 * @returns change of speed, rebound included [m/s]
 * @validity pulse shaped as half a sine
 * @throws InputError when the peak is negative or the time not positive
 * @source mil-202g-213, Table 213-I
 */
export function halfSineSpeedChange(pulse: Pulse): number {
  requirePulse(pulse);
  return (2 / Math.PI) * pulse.peakAcceleration * pulse.duration;
}

/**
 * Change of speed by a saw-tooth pulse that ends at its peak.
 * $$\Delta v = \tfrac12 A t$$
 * @param pulse - peak and duration
 * @returns change of speed [m/s]
 * @validity straight rise, sudden end
 * @throws InputError when the peak is negative or the time not positive
 * @source mil-202g-213, Table 213-I
 */
export function sawToothSpeedChange(pulse: Pulse): number {
  requirePulse(pulse);
  return (pulse.peakAcceleration * pulse.duration) / 2;
}

export interface ContactTime {
  /** [kg] */
  mass: number;
  /** Speed lost, and rebound where there is one [m/s]. */
  speedChange: number;
  /** [s] */
  duration: number;
}

/**
 * Peak force where the contact time is known and the stiffness is not.
 * $$F = \frac{\pi m \Delta v}{2t}$$
 * @param contact - mass, change of speed, contact time
 * @returns peak force, π/2 times the mean [N]
 * @validity pulse shaped as half a sine
 * @throws InputError when a number is out of range
 * @derivation the half-sine's impulse (2/π) F t is the change of momentum m Δv
 */
export function halfSinePeakForce({ mass, speedChange, duration }: ContactTime): number {
  requirePositive(mass, { parameter: 'mass', quantity: 'mass', kind: 'mass' });
  requireNotNegative(speedChange, { parameter: 'speedChange', quantity: 'change of speed', kind: 'speed' });
  requirePositive(duration, { parameter: 'duration', quantity: 'contact time', kind: 'time' });
  return (Math.PI * mass * speedChange) / (2 * duration);
}
