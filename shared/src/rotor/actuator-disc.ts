import { requireBelow, requireBetween } from '../require.ts';
import { requireDensity, requireDiameter } from './require-rotor.ts';

export interface DiscInFlight {
  /** [m] */
  diameter: number;
  /** [kg/m³] */
  density: number;
  /** Air ahead of the disc [m/s]. */
  flightSpeed: number;
  /** Air far behind the disc [m/s]. */
  wakeSpeed: number;
}

export interface DiscInFlightResult {
  /** [kg/s] */
  massFlow: number;
  /** [N] */
  thrust: number;
  /** Thrust times flight speed [W]. */
  thrustPower: number;
  /** Thrust power over power put into the air [-]. */
  idealEfficiency: number;
  /** Across the disc [Pa]. */
  pressureJump: number;
}

/**
 * Propeller in forward flight as an actuator disc.
 * $$\dot m = \rho A\,\tfrac12(V+V_w),\quad T = \dot m(V_w-V),\quad \eta = \frac{2}{1+V_w/V}$$
 * @param disc - diameter, air density, flight and wake speed
 * @returns mass flow, thrust, power, ideal efficiency, pressure jump
 * @validity uniform flow through the disc, no swirl
 * @throws InputError when a number is out of range or the wake is slower than the flight
 * @source murugaperumal-gas-dynamics, Example 6.9; khan-fluid-mechanics, Example 5.8
 */
export function discInFlight({ diameter, density, flightSpeed, wakeSpeed }: DiscInFlight): DiscInFlightResult {
  requireDiameter(diameter);
  requireDensity(density);
  requireBetween(wakeSpeed, 1e-6, 1e3, { parameter: 'wakeSpeed', quantity: 'wake speed', kind: 'speed' });
  const flight = { parameter: 'flightSpeed', quantity: 'flight speed', kind: 'speed' } as const;
  requireBetween(flightSpeed, 0, 1e3, flight);
  requireBelow(flightSpeed, wakeSpeed, 'must be below the wake speed', flight);
  const area = (Math.PI / 4) * diameter ** 2;
  const massFlow = (density * area * (flightSpeed + wakeSpeed)) / 2;
  const thrust = massFlow * (wakeSpeed - flightSpeed);
  return {
    massFlow,
    thrust,
    thrustPower: thrust * flightSpeed,
    idealEfficiency: (2 * flightSpeed) / (flightSpeed + wakeSpeed),
    pressureJump: thrust / area,
  };
}
