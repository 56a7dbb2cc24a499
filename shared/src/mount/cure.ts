import type { Warning } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';

/** Molar gas constant to the digits that the textbook uses [J/(mol·K)]. */
const GAS_CONSTANT = 8.314;

/** How much faster a resin sets for each ten kelvin: the usual rule, and the range of what is measured [-]. */
export const RATE_PER_TEN = { usual: 2, slowest: 1.5, fastest: 2.5 } as const;

/** Beyond this far from the stated temperature the rule is a guess [K]. */
export const RULE_REACH = 20;

function requireKelvin(value: number, parameter: string): void {
  requireBetween(value, 150, 800, { parameter, quantity: 'absolute temperature' });
}

/**
 * How much faster a reaction runs at one temperature than at another.
 * $$f = \exp\Bigl[\frac{E_a}{R}\Bigl(\frac1{T_1}-\frac1{T_2}\Bigr)\Bigr]$$
 * @param step - activation energy [J/mol], temperatures from and to [K]
 * @returns rate over rate [-]
 * @validity one reaction; thick pots heat themselves, and a resin that turns to glass stops short
 * @throws InputError when a number is out of range
 * @source ncert-2006-chemistry, Arrhenius equation
 */
export function arrheniusFactor(step: { activationEnergy: number; from: number; to: number }): number {
  requireBetween(step.activationEnergy, 0, 3e5, { parameter: 'activationEnergy', quantity: 'activation energy' });
  requireKelvin(step.from, 'from');
  requireKelvin(step.to, 'to');
  return Math.exp((step.activationEnergy / GAS_CONSTANT) * (1 / step.from - 1 / step.to));
}

/**
 * Activation energy behind a change of rate.
 * $$E_a = \frac{R\ln f}{1/T_1-1/T_2}$$
 * @param step - rate over rate [-], temperatures from and to [K]
 * @returns activation energy [J/mol]
 * @validity as arrheniusFactor
 * @throws InputError when a number is out of range or both temperatures are the same
 * @source ncert-2006-chemistry, exercise on doubling from 298 K to 308 K
 */
export function activationEnergy(step: { factor: number; from: number; to: number }): number {
  requireBetween(step.factor, 1e-9, 1e9, { parameter: 'factor', quantity: 'change of rate', kind: 'ratio' });
  requireKelvin(step.from, 'from');
  requireBetween(step.to, step.from + 0.01, 800, { parameter: 'to', quantity: 'absolute temperature' });
  return (GAS_CONSTANT * Math.log(step.factor)) / (1 / step.from - 1 / step.to);
}

/**
 * Time that a resin takes in a warmer or colder shop: pot life, handling, full cure.
 * $$t = t_0\,q^{-\Delta T/10}$$
 * @param stated - time on the sheet [s], shop warmer than the sheet's temperature by [K]
 * @param ratePerTen - how much faster for each ten kelvin [-]
 * @returns time [s]
 * @validity within about 20 K of the sheet; no resin made for room temperature cures fully in a cold one
 * @throws InputError when a number is out of range
 * @source bonstone-ten-degree-rule, technical note
 */
export function timeAtTemperature(
  stated: { time: number; warmerBy: number },
  ratePerTen: number = RATE_PER_TEN.usual,
): number {
  requirePositive(stated.time, { parameter: 'time', quantity: 'time on the sheet', kind: 'time' });
  requireBetween(stated.warmerBy, -100, 200, {
    parameter: 'warmerBy',
    quantity: 'difference of temperature',
    kind: 'temperatureDifference',
  });
  requireBetween(ratePerTen, 1, 10, { parameter: 'ratePerTen', quantity: 'rate per ten kelvin', kind: 'ratio' });
  return stated.time * ratePerTen ** (-stated.warmerBy / 10);
}

/** Sheets state pot life for a pot of this size [kg]. malmgren-glossary. */
export const STATED_POT = 0.1;
/** Mixes above this heat themselves [kg]. adhesive-maker-cure-page. */
export const LARGE_POT = 0.05;

/**
 * Reasons to doubt a time from the rule of ten.
 * @param warmerBy - shop warmer than the sheet's temperature by [K]
 * @param mixed - mass mixed in one pot [kg]
 * @returns warnings
 * @validity common practice beside what makers state
 * @throws InputError when a number is out of range
 * @source malmgren-glossary, pot life
 */
export function cureWarnings(warmerBy: number, mixed: number): Warning[] {
  requireBetween(warmerBy, -100, 200, {
    parameter: 'warmerBy',
    quantity: 'difference of temperature',
    kind: 'temperatureDifference',
  });
  requireBetween(mixed, 0, 1000, { parameter: 'mixed', quantity: 'mass mixed', kind: 'mass' });
  return [
    ...(Math.abs(warmerBy) > RULE_REACH
      ? [
          {
            code: 'cure-rule-far',
            message: 'So far from the sheet’s temperature the rule of ten is a guess: look for the maker’s own curve.',
          },
        ]
      : []),
    ...(mixed > LARGE_POT
      ? [
          {
            code: 'pot-heats',
            message: 'A pot this large heats itself, gels early and may smoke: mix less, or pour it out flat.',
          },
        ]
      : []),
  ];
}
