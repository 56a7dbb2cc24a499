import { InputError, type Warning } from '../error.ts';
import { STANDARD_GRAVITY } from '../quantity/kinds.ts';
import { requireBetween } from '../require.ts';
import { requireMass } from './require-rotor.ts';

export interface HoverReserveInput {
  /** Ready to fly [kg]. */
  mass: number;
  rotors: number;
  /** Of one rotor at full throttle [N]. */
  fullThrust: number;
}

export interface HoverReserve {
  /** Of one rotor in hover [N]. */
  hoverThrust: number;
  /** All thrust over weight [-]. */
  thrustToWeight: number;
  /** Hover thrust over full thrust [-]. */
  thrustShare: number;
  /** Speed of rotation in hover over that at full throttle [-]. */
  speedShare: number;
  warnings: readonly Warning[];
}

/**
 * What part of its thrust an aircraft needs to hover.
 * $$\frac{T}{W} = \frac{n\,T_{max}}{m g},\quad s = \frac{m g}{n\,T_{max}},\quad \frac{\omega_h}{\omega_{max}} = \sqrt{s}$$
 * @param aircraft - mass, number of rotors, full thrust of one
 * @returns hover thrust, thrust to weight, shares of thrust and of speed
 * @validity rotors share the weight equally; thrust as the square of speed. The position of the throttle stick is
 * neither share: it depends on the speed controller and on the curve set in the radio
 * @throws InputError when a number is out of range or the aircraft cannot lift itself
 * @derivation vertical equilibrium; T = kω² of a propeller at standstill
 */
export function hoverReserve({ mass, rotors, fullThrust }: HoverReserveInput): HoverReserve {
  requireMass(mass, 'mass', 'all-up mass');
  requireBetween(rotors, 1, 64, { parameter: 'rotors', quantity: 'number of rotors', kind: 'count' });
  requireBetween(fullThrust, 1e-4, 1e6, {
    parameter: 'fullThrust',
    quantity: 'full thrust of one motor',
    kind: 'force',
  });
  const weight = mass * STANDARD_GRAVITY;
  const thrustToWeight = (rotors * fullThrust) / weight;
  if (thrustToWeight <= 1) {
    throw new InputError({
      parameter: 'fullThrust',
      quantity: 'full thrust of one motor',
      value: fullThrust,
      rule: 'must lift its share of the weight',
      limit: weight / rotors,
      kind: 'force',
    });
  }
  return {
    hoverThrust: weight / rotors,
    thrustToWeight,
    thrustShare: 1 / thrustToWeight,
    speedShare: Math.sqrt(1 / thrustToWeight),
    warnings:
      thrustToWeight < 2
        ? [
            {
              code: 'thrust-reserve-small',
              message: 'Less than twice the weight in thrust: little is left to steer with.',
            },
          ]
        : [],
  };
}
