import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';

/** Corner of an outline in the plane of a plate: x forward, y to the left [m]. */
export interface Corner {
  x: number;
  y: number;
}

/** Integrals over an area: about the axes through the origin unless said otherwise. */
export interface AreaMoments {
  /** [m²] */
  area: number;
  /** Centroid [m]. */
  centroid: Corner;
  /** $\int y^2\,dA$: second moment about the x axis through the centroid [m⁴]. */
  aboutX: number;
  /** $\int x^2\,dA$: second moment about the y axis through the centroid [m⁴]. */
  aboutY: number;
  /** $\int xy\,dA$ about the centroid [m⁴]. */
  product: number;
}

/**
 * Area, centroid and second moments of a polygon from its corners, in either sense of rotation.
 * $$A=\tfrac12\sum c_i,\quad A\bar x=\tfrac16\sum (x_i+x_{i+1})c_i,\quad \int y^2\,dA=\tfrac1{12}\sum(y_i^2+y_iy_{i+1}+y_{i+1}^2)c_i,\quad c_i=x_iy_{i+1}-x_{i+1}y_i$$
 * @param corners - three or more, in order round the outline [m]
 * @returns area [m²], centroid [m], second moments about the centroid [m⁴]
 * @validity the outline does not cross itself
 * @throws InputError when there are fewer than three corners, a corner is not a number, or the outline encloses no area
 * @derivation the integrals over each triangle from the first corner to a side, added; corners are taken from the first
 * one so that a small plate far from the origin keeps its digits, then moved to the centroid by parallel axes
 */
export function polygonMoments(corners: readonly Corner[]): AreaMoments {
  const subject = { parameter: 'corners', quantity: 'corner of the outline', kind: 'length' } as const;
  const first = corners[0];
  if (first === undefined || corners.length < 3) {
    throw new InputError({
      parameter: 'corners',
      quantity: 'number of corners',
      value: corners.length,
      rule: 'must be at least',
      limit: 3,
    });
  }
  for (const { x, y } of corners) for (const value of [x, y]) requireBetween(value, -100, 100, subject);
  const local = corners.map(({ x, y }) => ({ x: x - first.x, y: y - first.y }));
  let [area, sx, sy, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  local.forEach((a, i) => {
    const b = local[(i + 1) % local.length] as Corner;
    const c = a.x * b.y - b.x * a.y;
    area += c / 2;
    sx += ((a.x + b.x) * c) / 6;
    sy += ((a.y + b.y) * c) / 6;
    xx += ((a.x ** 2 + a.x * b.x + b.x ** 2) * c) / 12;
    yy += ((a.y ** 2 + a.y * b.y + b.y ** 2) * c) / 12;
    xy += ((a.x * b.y + 2 * a.x * a.y + 2 * b.x * b.y + b.x * a.y) * c) / 24;
  });
  const extent = Math.max(...local.map(({ x, y }) => Math.hypot(x, y)));
  if (!(Math.abs(area) > 1e-9 * extent ** 2) || extent < 1e-7) {
    throw new InputError({ parameter: 'corners', quantity: 'outline', value: 'given', rule: 'must enclose an area' });
  }
  const [u, v] = [sx / area, sy / area];
  const sense = Math.sign(area);
  return {
    area: Math.abs(area),
    centroid: { x: first.x + u, y: first.y + v },
    aboutX: Math.max(0, sense * (yy - area * v * v)),
    aboutY: Math.max(0, sense * (xx - area * u * u)),
    product: sense * (xy - area * u * v),
  };
}
