import { requireBelow, requirePositive } from '../require.ts';
import { rectangleTorsionConstant } from './rectangle-torsion.ts';
import { DEFAULT_POISSON_RATIO, type Section } from './section.ts';
import { rectangleShearCoefficient } from './shear-coefficient.ts';

export interface Rectangle {
  /** In the plane of the propellers [m]. */
  width: number;
  /** Up and down: the thickness of a plate arm [m]. */
  height: number;
  /** For the shear coefficient only [-]. */
  poissonRatio?: number;
}

/**
 * Solid rectangle: the strip of a plate arm.
 * $$I_v = \frac{w h^3}{12},\quad I_h = \frac{h w^3}{12}$$
 * @param strip - width and height [m]
 * @returns section; torsion by the Saint-Venant series
 * @validity any ratio of sides
 * @throws InputError when a side is not positive
 * @source gere-2004-mechanics, Appendix D, rectangle
 */
export function solidRectangleSection({ width, height, poissonRatio = DEFAULT_POISSON_RATIO }: Rectangle): Section {
  const torsionConstant = rectangleTorsionConstant(width, height);
  return {
    area: width * height,
    vertical: { secondMomentOfArea: (width * height ** 3) / 12, extremeFibre: height / 2 },
    horizontal: { secondMomentOfArea: (height * width ** 3) / 12, extremeFibre: width / 2 },
    torsionConstant,
    shearCoefficient: rectangleShearCoefficient(poissonRatio),
  };
}

/**
 * Strip with a screw hole through its thickness, at the hole's centre: two webs side by side.
 * $$I_v = \frac{(w-d) h^3}{12},\quad I_h = \frac{h (w^3-d^3)}{12}$$
 * @param strip - width, height and hole diameter [m]
 * @returns net section; torsion as the sum of the two webs
 * @validity hole on the centre line
 * @throws InputError when a size is not positive or the hole is as wide as the strip
 * @derivation the hole removes a rectangle d wide and h high about the same centre
 */
export function drilledRectangleSection(strip: Rectangle & { holeDiameter: number }): Section {
  const { width, height, holeDiameter, poissonRatio = DEFAULT_POISSON_RATIO } = strip;
  solidRectangleSection({ width, height, poissonRatio });
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requirePositive(holeDiameter, hole);
  requireBelow(holeDiameter, width, 'must be smaller than the width of the strip', hole);
  const web = (width - holeDiameter) / 2;
  return {
    area: 2 * web * height,
    vertical: { secondMomentOfArea: (2 * web * height ** 3) / 12, extremeFibre: height / 2 },
    horizontal: { secondMomentOfArea: (height * (width ** 3 - holeDiameter ** 3)) / 12, extremeFibre: width / 2 },
    torsionConstant: 2 * rectangleTorsionConstant(web, height),
    shearCoefficient: rectangleShearCoefficient(poissonRatio),
  };
}
