import { requireBetween } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import type { AreaMoments, Corner } from './polygon.ts';

/**
 * Round area: a screw hole or a lightening hole as a cutout.
 * $$A=\pi r^2,\quad I=\tfrac{\pi}{4}r^4$$
 * @param circle - centre and radius [m]
 * @returns moments about its centre
 * @throws InputError when radius or centre is out of range
 * @source gere-2004-mechanics, Appendix D, circle
 */
export function circleMoments({ centre, radius }: { centre: Corner; radius: number }): AreaMoments {
  requireLength(radius, { parameter: 'radius', quantity: 'radius of the hole' });
  for (const value of [centre.x, centre.y]) {
    requireBetween(value, -100, 100, { parameter: 'centre', quantity: 'centre of the hole', kind: 'length' });
  }
  const about = (Math.PI / 4) * radius ** 4;
  return { area: Math.PI * radius ** 2, centroid: centre, aboutX: about, aboutY: about, product: 0 };
}

/**
 * Half disc with its straight side along x and its round side towards +y.
 * $$A=\tfrac{\pi}{2}r^2,\quad \bar y=\tfrac{4r}{3\pi},\quad I_x=\left(\tfrac{\pi}{8}-\tfrac{8}{9\pi}\right)r^4\approx 0.1098\,r^4$$
 * @param half - middle of the straight side and radius [m]
 * @returns moments about its centroid
 * @throws InputError when radius or place is out of range
 * @source gere-2004-mechanics, Appendix D, semicircle
 */
export function halfDiscMoments({ centre, radius }: { centre: Corner; radius: number }): AreaMoments {
  const whole = circleMoments({ centre, radius });
  return {
    area: whole.area / 2,
    centroid: { x: centre.x, y: centre.y + (4 * radius) / (3 * Math.PI) },
    aboutX: (Math.PI / 8 - 8 / (9 * Math.PI)) * radius ** 4,
    aboutY: whole.aboutY / 2,
    product: 0,
  };
}
