import { requireBetween, requirePositive } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import { subtractAreas } from './area-transfer.ts';
import type { Body } from './body.ts';
import { circleMoments } from './disc-area.ts';
import { type AreaMoments, type Corner, polygonMoments } from './polygon.ts';

export interface Plate {
  /** [m] */
  thickness: number;
  /** [kg/m³] */
  density: number;
  /** Outside corners in order [m]. */
  outline: readonly Corner[];
  /** Cutouts inside it, each by its corners in order [m]. */
  cutouts?: readonly (readonly Corner[])[];
  /** Round holes inside it [m]. */
  holes?: readonly { centre: Corner; radius: number }[];
}

/**
 * Flat plate of any outline with cutouts, thickness along z.
 * $$m=\rho A t,\quad I_{xx}=\rho t\!\int\! y^2dA+\tfrac{m t^2}{12},\quad I_{yy}=\rho t\!\int\! x^2dA+\tfrac{m t^2}{12},\quad I_{zz}=\rho t\!\int\!(x^2+y^2)dA$$
 * @param plate - thickness [m], density [kg/m³], outline, cutouts and holes [m]
 * @returns body about its centre of mass, that centre in the plane of the drawing [m], and the area [m²]
 * @validity cutouts and holes lie inside the outline and do not overlap
 * @throws InputError when a size is out of range or the cutouts leave nothing
 * @derivation a plate is its area swept through the thickness: each moment is the area integral times density and
 * thickness, and the thickness adds its own $m t^2/12$ about the two axes in the plane
 */
export function plateBody(plate: Plate): { body: Body; centre: Corner; area: number } {
  const { thickness, density, outline, cutouts = [], holes = [] } = plate;
  const dense = { parameter: 'density', quantity: 'density', kind: 'density' } as const;
  requireLength(thickness, { parameter: 'thickness', quantity: 'thickness' });
  requirePositive(density, dense);
  requireBetween(density, 1e-3, 1e5, dense);
  const gone: AreaMoments[] = [...cutouts.map(polygonMoments), ...holes.map(circleMoments)];
  const left = subtractAreas(polygonMoments(outline), gone);
  const perArea = density * thickness;
  const mass = perArea * left.area;
  const through = (mass * thickness ** 2) / 12;
  const inertia = {
    xx: perArea * left.aboutX + through,
    yy: perArea * left.aboutY + through,
    zz: perArea * (left.aboutX + left.aboutY),
    xy: perArea * left.product,
    xz: 0,
    yz: 0,
  };
  return { body: { mass, inertia }, centre: left.centroid, area: left.area };
}
