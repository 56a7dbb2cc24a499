import { InputError, type Warning } from '../error.ts';
import { isInside, nearestOnSegment, sidesOf } from '../polygon.ts';
import { requireFinite, requirePositive } from '../require.ts';
import type { PlanPoint } from './motor-layout.ts';

export interface BodyClearance {
  /** Least distance from the outline to a propeller circle; negative where they cross [m]. */
  clearance: number;
  /** Place on the outline that comes nearest. */
  nearest: PlanPoint;
  warnings: readonly Warning[];
}

/**
 * Room between a body's outline and the propeller circles, seen from above.
 * $$c = \min_i \operatorname{dist}(\text{outline}, m_i) - \tfrac{D}{2}$$
 * @param plan - corners of the outline in order [m], motor axes [m], propeller diameter [m]
 * @returns clearance [m], nearest place and a warning where a circle crosses the body
 * @validity outline that does not cross itself; what lies under a disc costs thrust even where nothing touches
 * @throws InputError when there are fewer than three corners or no motor
 * @derivation distance of a point from a segment, least over all sides
 */
export function bodyClearance(plan: {
  outline: readonly PlanPoint[];
  motors: readonly PlanPoint[];
  propellerDiameter: number;
}): BodyClearance {
  const { outline, motors, propellerDiameter } = plan;
  if (outline.length < 3)
    throw new InputError({
      parameter: 'outline',
      quantity: 'number of corners',
      value: outline.length,
      rule: 'must be at least',
      limit: 3,
    });
  if (motors.length < 1)
    throw new InputError({
      parameter: 'motors',
      quantity: 'number of motors',
      value: motors.length,
      rule: 'must be at least',
      limit: 1,
    });
  requirePositive(propellerDiameter, {
    parameter: 'propellerDiameter',
    quantity: 'propeller diameter',
    kind: 'length',
  });
  for (const { x, y } of [...outline, ...motors]) {
    requireFinite(x, { parameter: 'outline', quantity: 'coordinate', kind: 'length' });
    requireFinite(y, { parameter: 'outline', quantity: 'coordinate', kind: 'length' });
  }
  let best = { distance: Infinity, nearest: outline[0] as PlanPoint };
  for (const motor of motors) {
    const sign = isInside(outline, motor) ? -1 : 1;
    sidesOf(outline).forEach((side) => {
      const nearest = nearestOnSegment(side, motor);
      const distance = sign * Math.hypot(nearest.x - motor.x, nearest.y - motor.y);
      if (distance < best.distance) best = { distance, nearest };
    });
  }
  const clearance = best.distance - propellerDiameter / 2;
  return {
    clearance,
    nearest: best.nearest,
    warnings:
      clearance < 0
        ? [
            {
              code: 'body-under-propeller',
              message:
                'A propeller circle crosses the body: it must stand above or below it with room for a bent arm, and it loses thrust.',
            },
          ]
        : [],
  };
}

/**
 * Outline of a body that is widest in the middle and tapers to both ends.
 * @param body - length, width in the middle, width at the ends [m]
 * @returns six corners, front right first, clockwise
 * @throws InputError when a length is not positive
 * @derivation corners of two trapezia
 */
export function taperedOutline(body: { length: number; waist: number; end: number }): PlanPoint[] {
  requirePositive(body.length, { parameter: 'length', quantity: 'length of the body', kind: 'length' });
  requirePositive(body.waist, { parameter: 'waist', quantity: 'width of the body in the middle', kind: 'length' });
  requirePositive(body.end, { parameter: 'end', quantity: 'width of the body at its ends', kind: 'length' });
  const [y, w, e] = [body.length / 2, body.waist / 2, body.end / 2];
  return [
    { x: e, y },
    { x: w, y: 0 },
    { x: e, y: -y },
    { x: -e, y: -y },
    { x: -w, y: 0 },
    { x: -e, y },
  ];
}
