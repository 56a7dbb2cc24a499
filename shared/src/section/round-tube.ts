import { requireBelow, requirePositive } from '../require.ts';
import { DEFAULT_POISSON_RATIO, type Section } from './section.ts';
import { roundShearCoefficient } from './shear-coefficient.ts';

export interface RoundTube {
  /** Outside diameter D [m]. */
  outerDiameter: number;
  /** Wall thickness t [m]. */
  wall: number;
  /** For the shear coefficient only [-]. */
  poissonRatio?: number;
}

/**
 * Refuses a tube that cannot be made.
 * @throws InputError when a size is not positive or the wall does not leave a bore
 */
export function requireTube({ outerDiameter, wall }: RoundTube): void {
  requirePositive(outerDiameter, { parameter: 'outerDiameter', quantity: 'outside diameter', kind: 'length' });
  const subject = { parameter: 'wall', quantity: 'wall thickness', kind: 'length' } as const;
  requirePositive(wall, subject);
  requireBelow(wall, outerDiameter / 2, 'must be smaller than the outer radius', subject);
}

/**
 * Round tube, exact for any wall.
 * $$A = \pi(r_o^2-r_i^2),\quad I = \tfrac{\pi}{4}(r_o^4-r_i^4),\quad J = 2I$$
 * @param tube - outside diameter and wall [m]
 * @returns section, the same in both planes
 * @validity any wall below the outer radius
 * @throws InputError when the sizes do not make a tube
 * @source gere-2004-mechanics, Appendix D, circular ring
 */
export function roundTubeSection(tube: RoundTube): Section {
  requireTube(tube);
  const outer = tube.outerDiameter / 2;
  // Differences of powers as products: a thin wall keeps its digits.
  const inner = outer - tube.wall;
  const squares = tube.wall * (outer + inner);
  const secondMomentOfArea = (Math.PI / 4) * squares * (outer ** 2 + inner ** 2);
  const plane = { secondMomentOfArea, extremeFibre: outer };
  return {
    area: Math.PI * squares,
    vertical: plane,
    horizontal: plane,
    torsionConstant: 2 * secondMomentOfArea,
    shearCoefficient: roundShearCoefficient(inner / outer, tube.poissonRatio ?? DEFAULT_POISSON_RATIO),
  };
}

/**
 * Solid round bar.
 * $$A = \pi r^2,\quad I = \tfrac{\pi}{4} r^4,\quad J = 2I$$
 * @param bar - diameter [m], Poisson's ratio for the shear coefficient [-]
 * @returns section, the same in both planes
 * @validity any diameter
 * @throws InputError when the diameter is not positive
 * @source gere-2004-mechanics, Appendix D, circle
 */
export function solidRoundSection(bar: { diameter: number; poissonRatio?: number }): Section {
  requirePositive(bar.diameter, { parameter: 'diameter', quantity: 'diameter', kind: 'length' });
  const radius = bar.diameter / 2;
  const plane = { secondMomentOfArea: (Math.PI / 4) * radius ** 4, extremeFibre: radius };
  return {
    area: Math.PI * radius ** 2,
    vertical: plane,
    horizontal: plane,
    torsionConstant: 2 * plane.secondMomentOfArea,
    shearCoefficient: roundShearCoefficient(0, bar.poissonRatio ?? DEFAULT_POISSON_RATIO),
  };
}
