import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';
import { requirePosition } from './column.ts';

/** A standoff's place in the plan, forward and to the left of the middle of the top plate. */
export interface Place {
  x: number;
  y: number;
  /** Names that an error about this place goes by, where it was typed. */
  named?: { x: string; y: string };
}

/** Outline of the top plate. */
export interface TopPlate {
  length: number;
  width: number;
}

/** Fewer let the plate turn about them. */
export const FEWEST_STANDOFFS = 3;

/** A plan whose standoffs lie within this of one line stands on a line. */
const ONE_LINE = 1e-4;

/**
 * Standard deviation of the standoffs' places across the line that fits them best: how far from one line they stand.
 * $$s^2 = \tfrac12\bigl(c_{xx}+c_{yy}-\sqrt{(c_{xx}-c_{yy})^2+4c_{xy}^2}\bigr)$$
 * @param places - positions in the plan
 * @returns distance, nothing for standoffs on one line [m]
 * @validity any plan
 * @throws InputError when a coordinate is out of range
 * @derivation smaller eigenvalue of the two by two matrix of variances
 */
export function spreadAcross(places: readonly Place[]): number {
  places.forEach(({ x, y }) => {
    requirePosition(x, 'x', 'place of a standoff');
    requirePosition(y, 'y', 'place of a standoff');
  });
  const mean = (of: (place: Place) => number) => places.reduce((sum, p) => sum + of(p), 0) / Math.max(1, places.length);
  const [mx, my] = [mean((p) => p.x), mean((p) => p.y)];
  const xx = mean((p) => (p.x - mx) ** 2);
  const yy = mean((p) => (p.y - my) ** 2);
  const xy = mean((p) => (p.x - mx) * (p.y - my));
  return Math.sqrt(Math.max(0, (xx + yy - Math.hypot(xx - yy, 2 * xy)) / 2));
}

/**
 * Refuses a plan that no body can stand on, and says what to change.
 * @throws InputError when there are fewer than three standoffs, two at one place, one outside the plate, or all on one line
 */
export function requirePlan(places: readonly Place[], plate: TopPlate, outerDiameter: number): void {
  requireBetween(plate.length, 1e-3, 100, {
    parameter: 'plateLength',
    quantity: 'length of the top plate',
    kind: 'length',
  });
  requireBetween(plate.width, 1e-3, 100, {
    parameter: 'plateWidth',
    quantity: 'width of the top plate',
    kind: 'length',
  });
  if (!(places.length >= FEWEST_STANDOFFS))
    throw new InputError({
      parameter: 'count',
      quantity: 'number of standoffs',
      value: places.length,
      rule: 'lets the top plate turn: it must be at least',
      limit: FEWEST_STANDOFFS,
      kind: 'count',
    });
  places.forEach((place, index) => {
    for (const axis of ['x', 'y'] as const) {
      const limit = (axis === 'x' ? plate.length : plate.width) / 2 - outerDiameter / 2;
      const subject = {
        parameter: place.named?.[axis] ?? axis,
        quantity: `standoff ${index + 1}, ${axis === 'x' ? 'fore and aft' : 'across'}`,
        value: place[axis],
        kind: 'length',
      } as const;
      requirePosition(place[axis], subject.parameter, subject.quantity);
      if (Math.abs(place[axis]) > limit + 1e-9)
        throw new InputError({
          ...subject,
          rule: 'stands off the plate: make the plate larger, or bring it back to at most',
          limit,
        });
    }
    const other = places.slice(0, index).findIndex((p) => Math.hypot(p.x - place.x, p.y - place.y) < outerDiameter);
    if (other >= 0)
      throw new InputError({
        parameter: places[other]!.x === place.x ? (place.named?.y ?? 'y') : (place.named?.x ?? 'x'),
        quantity: `standoff ${index + 1}`,
        value: 'there',
        rule: `stands in the place of standoff ${other + 1}: move one of them, or take one away`,
      });
  });
  requireOffLine(places);
}

/**
 * Refuses standoffs that stand on one line.
 * @throws InputError at the place of the last one
 */
export function requireOffLine(places: readonly Place[]): void {
  if (spreadAcross(places) >= ONE_LINE) return;
  const extent = (axis: 'x' | 'y') => Math.max(...places.map((p) => p[axis])) - Math.min(...places.map((p) => p[axis]));
  const off = extent('x') < extent('y') ? 'x' : 'y';
  throw new InputError({
    parameter: places.at(-1)?.named?.[off] ?? off,
    quantity: 'layout',
    value: 'given',
    rule: 'puts all standoffs on one line, about which the top plate turns: move one off the line',
  });
}
