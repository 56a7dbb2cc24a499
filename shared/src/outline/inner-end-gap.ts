import { requireBetween, requirePositive } from '../require.ts';

/**
 * Room between the inner ends of two neighbouring arms that point at one middle.
 * $$c = 2\left(e\sin\tfrac{\theta}{2} - \tfrac{w}{2}\cos\tfrac{\theta}{2}\right)$$
 * @param ends - inner end from the middle e, width of the arm there w [m], angle between the two arms θ [rad]
 * @returns distance between the nearest corners [m]; negative where the arms run into each other
 * @validity square ends of equal arms in one plane, seen from above
 * @throws InputError when the width or the angle is out of range
 * @derivation twice the distance of a corner from the line midway between the arms
 */
export function innerEndGap({ distance, width, angle }: { distance: number; width: number; angle: number }): number {
  requireBetween(distance, -10, 10, { parameter: 'distance', quantity: 'inner end from the middle', kind: 'length' });
  requirePositive(width, { parameter: 'width', quantity: 'width of the arm', kind: 'length' });
  requireBetween(angle, 0, Math.PI, { parameter: 'angle', quantity: 'angle between neighbouring arms', kind: 'angle' });
  return 2 * (distance * Math.sin(angle / 2) - (width / 2) * Math.cos(angle / 2));
}
