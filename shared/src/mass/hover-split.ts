import { InputError, type Warning } from '../error.ts';
import { requireBetween } from '../require.ts';
import { solveLinear } from '../solve-linear.ts';
import { STANDARD_GRAVITY } from '../quantity/kinds.ts';
import { requireMass, requirePlace } from './limits.ts';
import type { Motor } from './motor.ts';
import { between, type Vector } from './vector.ts';

export interface HoverSplit {
  /** Of each motor, in the order given [N]. */
  thrusts: readonly number[];
  /** The same as shares of full thrust [-]. */
  shares: readonly number[];
  /** Weight over the thrust that can be used while balanced: the busiest motor reaches full thrust first [-]. */
  usableThrust: number;
  /** Ideal power above that of an even split, as a share of it [-]. */
  extraPower: number;
  warnings: readonly Warning[];
}

/**
 * The thrust that each of four motors holds in a level hover when the centre of mass is not in their middle.
 * $$\sum T_i=mg,\quad \sum T_i(x_i-c_x)=0,\quad \sum T_i(y_i-c_y)=0,\quad \sum s_iT_i=0$$
 * For motors at $(\pm a,\pm b)$: $T_i=\tfrac{mg}{4}\left(1+\tfrac{c_xx_i}{a^2}+\tfrac{c_yy_i}{b^2}\right)$. Ideal power goes
 * with $\sum T_i^{3/2}$.
 * @param craft - four motors, mass [kg], centre of mass [m], full thrust of one motor [N]
 * @returns thrusts [N], shares of full thrust [-], usable part of the total [-], extra ideal power [-]
 * @validity still air; height of the centre of mass plays no part; same disc area on all motors
 * @throws InputError when there are not four motors or they cannot balance about all axes
 * @derivation linear statics as written; power of each disc by momentum theory, $P=T^{3/2}/\sqrt{2\rho A}$
 */
export function hoverSplit(craft: {
  motors: readonly Motor[];
  mass: number;
  centre: Vector;
  fullThrust: number;
}): HoverSplit {
  const { motors, mass, centre, fullThrust } = craft;
  requireMass(mass);
  requirePlace(centre, 'centre', 'centre of mass');
  requireBetween(fullThrust, 1e-9, 1e9, { parameter: 'fullThrust', quantity: 'full thrust of a motor', kind: 'force' });
  if (motors.length !== 4) {
    throw new InputError({
      parameter: 'motors',
      quantity: 'number of motors',
      value: motors.length,
      rule: 'must be',
      limit: 4,
    });
  }
  for (const { position } of motors) requirePlace(position, 'motors', 'motor position');
  const weight = mass * STANDARD_GRAVITY;
  const arms = motors.map(({ position }) => between(centre, position));
  const rows = [
    motors.map(() => 1),
    arms.map(({ x }) => x),
    arms.map(({ y }) => y),
    motors.map(({ reaction }) => reaction),
  ];
  const subject = { parameter: 'motors', quantity: 'motor layout', rule: 'must be able to balance about all axes' };
  const parts = solveLinear(rows, [1, 0, 0, 0], subject);
  const thrusts = parts.map((part) => part * weight);
  const shares = thrusts.map((thrust) => thrust / fullThrust);
  const busiest = Math.max(...parts);
  const power = parts.reduce((sum, part) => sum + Math.max(0, part) ** 1.5, 0);
  return {
    thrusts,
    shares,
    usableThrust: 1 / (4 * busiest),
    extraPower: power / (4 * 0.25 ** 1.5) - 1,
    warnings: warningsOf(parts, shares),
  };
}

function warningsOf(parts: readonly number[], shares: readonly number[]): Warning[] {
  const warnings: Warning[] = [];
  if (Math.min(...parts) < 0) {
    warnings.push({
      code: 'hover-outside-motors',
      message: 'This craft cannot hover: the centre of mass is so far out that a motor would have to pull down.',
    });
  }
  if (Math.max(...shares) > 1) {
    warnings.push({
      code: 'hover-above-full-thrust',
      message: 'This craft cannot hover: a motor would need more than its full thrust.',
    });
  }
  return warnings;
}
