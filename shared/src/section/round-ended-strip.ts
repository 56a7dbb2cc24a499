import { requireBetween, requirePositive } from '../require.ts';
import type { Rectangle } from './rectangle.ts';
import { DEFAULT_POISSON_RATIO, type Section } from './section.ts';
import { rectangleShearCoefficient } from './shear-coefficient.ts';

/**
 * Plate strip whose two narrow edges are rounded off to half circles.
 * $$I_v = \frac{(w-h)h^3}{12}+\frac{\pi h^4}{64},\quad J \approx \frac{A^4}{4\pi^2 I_p}$$
 * @param strip - width over the round edges and height [m]
 * @returns section
 * @validity width at least the height. Torsion by Saint-Venant's rule for solid sections, exact for the circle, up to
 * a tenth low for a long strip; shear coefficient of the rectangle
 * @throws InputError when a size is not positive or the strip is higher than wide
 * @source young-2002-roark, Table 10.1, any solid compact section
 * @derivation a rectangle of width w-h and a disc cut in halves; a half disc of radius r has its centroid 4r/3π from
 * its flat side and (π/8 - 8/9π) r⁴ about it
 */
export function roundEndedSection({ width, height, poissonRatio = DEFAULT_POISSON_RATIO }: Rectangle): Section {
  requirePositive(height, { parameter: 'height', quantity: 'height', kind: 'length' });
  requirePositive(width, { parameter: 'width', quantity: 'width', kind: 'length' });
  requireBetween(width, height, 1e15, { parameter: 'width', quantity: 'width over round edges', kind: 'length' });
  const radius = height / 2;
  const flat = width - height;
  const halfDiscs = Math.PI * radius ** 2;
  const centroid = flat / 2 + (4 * radius) / (3 * Math.PI);
  const area = flat * height + halfDiscs;
  const vertical = (flat * height ** 3) / 12 + (Math.PI / 4) * radius ** 4;
  const horizontal =
    (height * flat ** 3) / 12 + 2 * (Math.PI / 8 - 8 / (9 * Math.PI)) * radius ** 4 + halfDiscs * centroid ** 2;
  return {
    area,
    vertical: { secondMomentOfArea: vertical, extremeFibre: radius },
    horizontal: { secondMomentOfArea: horizontal, extremeFibre: width / 2 },
    torsionConstant: area ** 4 / (4 * Math.PI ** 2 * (vertical + horizontal)),
    shearCoefficient: rectangleShearCoefficient(poissonRatio),
  };
}
