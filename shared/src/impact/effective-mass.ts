import { requireFinite, requirePositive } from '../require.ts';

/** One axis about which the blow turns the body. */
export interface Turn {
  /** From the centre of mass to the line of the blow, square to both [m]. */
  lever: number;
  /** About the axis through the centre of mass [kg·m²]. */
  momentOfInertia: number;
}

export interface OffCentreBlow {
  /** [kg] */
  mass: number;
  turns: readonly Turn[];
}

/**
 * The mass that a free rigid body shows at a point off its centre: it gives way by turning, so the blow feels less.
 * $$\frac{1}{m_{eff}} = \frac1m + \sum\frac{r_i^2}{I_i}$$
 * @param blow - mass, and lever and inertia about each axis that it turns about
 * @returns effective mass, never above the mass [kg]
 * @validity free body (in the air), rigid, axes principal, blow short enough that nothing has turned far
 * @throws InputError when mass or an inertia is not positive
 * @derivation an impulse J along the line gives the point the speed J/m from translation and (J r/I) r from turning;
 * J over that speed is m_eff
 */
export function effectiveMass({ mass, turns }: OffCentreBlow): number {
  requirePositive(mass, { parameter: 'mass', quantity: 'mass', kind: 'mass' });
  const turning = turns.reduce((sum, { lever, momentOfInertia }) => {
    requireFinite(lever, { parameter: 'lever', quantity: 'lever of the blow', kind: 'length' });
    requirePositive(momentOfInertia, {
      parameter: 'momentOfInertia',
      quantity: 'moment of inertia',
      kind: 'momentOfInertia',
    });
    return sum + lever ** 2 / momentOfInertia;
  }, 0);
  return 1 / (1 / mass + turning);
}
