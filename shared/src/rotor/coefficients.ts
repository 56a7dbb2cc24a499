import { requireBetween } from '../require.ts';
import { requireDensity, requireDiameter } from './require-rotor.ts';

export interface PropellerCoefficients {
  /** Thrust over ρn²D⁴, n in turns a second [-]. */
  thrustCoefficient: number;
  /** Power over ρn³D⁵ [-]. */
  powerCoefficient: number;
}

export interface StaticPropeller extends PropellerCoefficients {
  /** [m] */
  diameter: number;
  /** [kg/m³] */
  density: number;
}

export interface PropellerConstants {
  /** Thrust over angular speed squared [N·s²]. */
  thrustPerSpeedSquared: number;
  /** Reaction torque over thrust [m]. */
  torquePerThrust: number;
  /** Ideal over real power at standstill [-]. */
  figureOfMerit: number;
}

function requireCoefficients({ thrustCoefficient, powerCoefficient }: PropellerCoefficients): void {
  requireBetween(thrustCoefficient, 1e-4, 10, {
    parameter: 'thrustCoefficient',
    quantity: 'thrust coefficient',
    kind: 'ratio',
  });
  requireBetween(powerCoefficient, 1e-4, 10, {
    parameter: 'powerCoefficient',
    quantity: 'power coefficient',
    kind: 'ratio',
  });
}

/**
 * Figure of merit of a propeller at standstill from its coefficients.
 * $$FM = \sqrt{\tfrac{2}{\pi}}\;\frac{C_T^{3/2}}{C_P}$$
 * @param propeller - coefficients of a static test [-]
 * @returns figure of merit [-]
 * @validity no forward speed
 * @throws InputError when a coefficient is out of range
 * @derivation ideal power T sqrt(T/2ρA) with T = C_T ρ n² D⁴ and A = πD²/4, over C_P ρ n³ D⁵
 */
export function figureOfMerit(propeller: PropellerCoefficients): number {
  requireCoefficients(propeller);
  return (propeller.thrustCoefficient ** 1.5 * Math.sqrt(2 / Math.PI)) / propeller.powerCoefficient;
}

/**
 * Constants of a propeller at standstill from its coefficients.
 * $$k = \frac{C_T\,\rho D^4}{4\pi^2},\quad \frac{Q}{T} = \frac{C_P}{C_T}\,\frac{D}{2\pi}$$
 * @param propeller - coefficients, diameter, air density
 * @returns thrust per speed squared, torque per thrust, figure of merit
 * @validity no forward speed; coefficients drift with speed of rotation on small blades
 * @throws InputError when a number is out of range
 * @source deters-2014-reynolds, definitions of the coefficients
 */
export function staticPropeller(propeller: StaticPropeller): PropellerConstants {
  const { thrustCoefficient, powerCoefficient, diameter, density } = propeller;
  const merit = figureOfMerit(propeller);
  requireDiameter(diameter);
  requireDensity(density);
  return {
    thrustPerSpeedSquared: (thrustCoefficient * density * diameter ** 4) / (4 * Math.PI ** 2),
    torquePerThrust: ((powerCoefficient / thrustCoefficient) * diameter) / (2 * Math.PI),
    figureOfMerit: merit,
  };
}

/**
 * Thrust and shaft power at a speed of rotation.
 * $$T = C_T\,\rho n^2 D^4,\quad P = C_P\,\rho n^3 D^5$$
 * @param propeller - coefficients, diameter, air density
 * @param turns - speed of rotation n, in turns a second [Hz]
 * @returns thrust [N] and power [W]
 * @validity coefficients taken at the same advance ratio
 * @throws InputError when a number is out of range
 * @source deters-2014-reynolds, definitions of the coefficients
 */
export function thrustAndPower(propeller: StaticPropeller, turns: number): { thrust: number; power: number } {
  const { thrustCoefficient, powerCoefficient, diameter, density } = propeller;
  requireCoefficients(propeller);
  requireDiameter(diameter);
  requireDensity(density);
  requireBetween(turns, 0, 1e4, { parameter: 'turns', quantity: 'speed of rotation', kind: 'frequency' });
  return {
    thrust: thrustCoefficient * density * turns ** 2 * diameter ** 4,
    power: powerCoefficient * density * turns ** 3 * diameter ** 5,
  };
}

/**
 * Diameter and speed of rotation that a thrust needs at an advance ratio.
 * $$D = \frac{J}{V}\sqrt{\frac{T}{C_T\,\rho}},\quad n = \frac{V}{J D}$$
 * @param need - thrust [N], flight speed [m/s], advance ratio [-], thrust coefficient [-], density [kg/m³]
 * @returns diameter [m] and turns a second [Hz]
 * @validity coefficient taken at that advance ratio
 * @throws InputError when a number is out of range
 * @source fox-fluid-mechanics, Example 10.14
 */
export function propellerForThrust(need: {
  thrust: number;
  speed: number;
  advanceRatio: number;
  thrustCoefficient: number;
  density: number;
}): {
  diameter: number;
  turns: number;
} {
  requireBetween(need.thrust, 1e-6, 1e9, { parameter: 'thrust', quantity: 'thrust', kind: 'force' });
  requireBetween(need.speed, 1e-3, 1e3, { parameter: 'speed', quantity: 'flight speed', kind: 'speed' });
  requireBetween(need.advanceRatio, 1e-3, 10, { parameter: 'advanceRatio', quantity: 'advance ratio', kind: 'ratio' });
  requireCoefficients({ thrustCoefficient: need.thrustCoefficient, powerCoefficient: 1 });
  requireDensity(need.density);
  // nD = V/J, so the thrust fixes D alone.
  const tipTravel = need.speed / need.advanceRatio;
  const diameter = Math.sqrt(need.thrust / (need.thrustCoefficient * need.density)) / tipTravel;
  return { diameter, turns: tipTravel / diameter };
}
