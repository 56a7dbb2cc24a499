import { InputError } from '../error.ts';
import type { PlanPoint } from '../layout/motor-layout.ts';
import { requireBetween, requirePositive } from '../require.ts';
import type { FrameOutline } from './frame-outline.ts';

/** Nothing on a small frame is farther out than this [m]. */
const FARTHEST = 10;

/**
 * Refuses an outline that can't be drawn: a size that is not positive, a place that is no number or far out, a plate of
 * fewer than three corners, an arm without length, a frame without motors.
 * @throws InputError whose parameter is the list in which the fault stands: `motors`, `arms`, `plates`
 */
export function requireOutline(outline: FrameOutline): void {
  const at = (parameter: string, quantity: string, ...numbers: (number | undefined)[]) => {
    for (const value of numbers) {
      if (value !== undefined) requireBetween(value, -FARTHEST, FARTHEST, { parameter, quantity, kind: 'length' });
    }
  };
  const place = (parameter: string, quantity: string, ...points: PlanPoint[]) =>
    points.forEach(({ x, y }) => at(parameter, `place of ${quantity}`, x, y));
  const size = (parameter: string, quantity: string, ...numbers: number[]) => {
    for (const value of numbers) requirePositive(value, { parameter, quantity: `size of ${quantity}`, kind: 'length' });
    at(parameter, `size of ${quantity}`, ...numbers);
  };
  if (outline.motors.length < 1)
    throw new InputError({
      parameter: 'motors',
      quantity: 'number of motors',
      value: 0,
      rule: 'must be at least',
      limit: 1,
    });
  for (const { name, at: point, bellDiameter, height, z } of outline.motors) {
    place('motors', name, point);
    size('motors', name, bellDiameter, height);
    at('motors', name, z);
  }
  for (const { name, at: point, diameter, z } of outline.propellers) {
    place('propellers', name, point);
    size('propellers', name, diameter);
    at('propellers', name, z);
  }
  for (const { name, section, innerEnd, outerEnd, rootScrews, z } of outline.arms) {
    place('arms', name, innerEnd, outerEnd, ...rootScrews.map((screw) => screw.at));
    size('arms', name, Math.hypot(outerEnd.x - innerEnd.x, outerEnd.y - innerEnd.y));
    size('arms', `a root hole of ${name}`, ...rootScrews.map((screw) => screw.diameter));
    at('arms', name, z);
    if (section.kind === 'strip') size('arms', name, section.rootWidth, section.tipWidth, section.thickness);
    else {
      size('arms', name, section.outerDiameter, section.wall);
      requireBetween(section.wall, 0, section.outerDiameter / 2, {
        parameter: 'arms',
        quantity: `wall of ${name}`,
        kind: 'length',
      });
    }
  }
  for (const { name, shape, thickness, z } of outline.plates) {
    size('plates', name, thickness);
    at('plates', name, z);
    if (shape.kind === 'polygon') {
      place('plates', name, ...shape.corners);
      if (shape.corners.length < 3)
        throw new InputError({
          parameter: 'plates',
          quantity: `number of corners of ${name}`,
          value: shape.corners.length,
          rule: 'must be at least',
          limit: 3,
        });
    } else {
      place('plates', name, shape.centre);
      size('plates', name, shape.length, shape.width);
      requireBetween(shape.chamfer, 0, Math.min(shape.length, shape.width) / 2, {
        parameter: 'plates',
        quantity: `chamfer of ${name}`,
        kind: 'length',
      });
    }
  }
  for (const { at: point, diameter, length, z } of outline.standoffs) {
    place('standoffs', 'a standoff', point);
    size('standoffs', 'a standoff', diameter, length);
    at('standoffs', 'a standoff', z);
  }
  const boxes = [
    ...outline.electronics.map((box) => ['electronics', box] as const),
    ...(outline.battery ? [['battery', outline.battery] as const] : []),
  ];
  for (const [list, { name, centre, size: sides, tilt }] of boxes) {
    at(list, name, centre.x, centre.y, centre.z, tilt);
    size(list, name, sides.x, sides.y, sides.z);
  }
  for (const { name, at: point, diameter } of outline.holes) {
    place('holes', name, point);
    size('holes', name, diameter);
  }
}
