import type { Warning } from '../error.ts';
import { requireBetween } from '../require.ts';
import { requireDensity, requireDiameter } from './require-rotor.ts';

export interface HoverRotor {
  /** Thrust of one rotor [N]. */
  thrust: number;
  /** Of the propeller [m]. */
  diameter: number;
  /** [kg/m³] */
  density: number;
  /** Ideal over real shaft power in hover [-]. */
  figureOfMerit: number;
}

export interface HoverPower {
  /** Thrust over disc area [N/m²]. */
  discLoading: number;
  /** Speed of the air through the disc [m/s]. */
  inducedSpeed: number;
  /** Least power that momentum allows [W]. */
  idealPower: number;
  /** Shaft power [W]. */
  power: number;
  warnings: readonly Warning[];
}

/**
 * Hover of one rotor by momentum theory.
 * $$v_i = \sqrt{\frac{T}{2\rho A}},\quad P_{ideal} = T v_i,\quad P = \frac{P_{ideal}}{FM}$$
 * @param rotor - thrust, diameter, air density, figure of merit
 * @returns disc loading, induced speed, ideal and shaft power
 * @validity still air, free of ground and of other rotors; the figure of merit holds all losses of the blades
 * @throws InputError when a number is out of range
 * @source leishman-2006-helicopter, ch. 2, momentum theory in hover
 */
export function hoverPower({ thrust, diameter, density, figureOfMerit }: HoverRotor): HoverPower {
  requireBetween(thrust, 0, 1e9, { parameter: 'thrust', quantity: 'thrust', kind: 'force' });
  requireDiameter(diameter);
  requireDensity(density);
  requireBetween(figureOfMerit, 0.05, 1, { parameter: 'figureOfMerit', quantity: 'figure of merit', kind: 'ratio' });
  const discLoading = thrust / ((Math.PI / 4) * diameter ** 2);
  const inducedSpeed = Math.sqrt(discLoading / (2 * density));
  const idealPower = thrust * inducedSpeed;
  return {
    discLoading,
    inducedSpeed,
    idealPower,
    power: idealPower / figureOfMerit,
    warnings:
      figureOfMerit > 0.8
        ? [
            {
              code: 'figure-of-merit-high',
              message: 'No small propeller reaches this figure of merit: measured ones lie near 0.4 to 0.55.',
            },
          ]
        : [],
  };
}
