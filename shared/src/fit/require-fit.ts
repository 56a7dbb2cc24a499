import { InputError } from '../error.ts';
import { requireBetween, requireFinite, requirePositive } from '../require.ts';
import type { FitClearance, PlateOutline, PlateTaper } from './types.ts';

const length = (parameter: string, quantity: string) => ({ parameter, quantity, kind: 'length' }) as const;

/**
 * Refuses a size that no part in a small body has: outside 0.1 mm to 1 m.
 * @throws InputError when it is outside.
 */
export function requireFitSize(value: number, parameter: string, quantity: string): void {
  requirePositive(value, length(parameter, quantity));
  requireBetween(value, 1e-4, 1, length(parameter, quantity));
}

/**
 * Refuses a place that is not within a metre of the middle.
 * @throws InputError when it is farther off or not a number.
 */
export function requireFitPlace(value: number, parameter: string, quantity: string): void {
  requireFinite(value, length(parameter, quantity));
  requireBetween(value, -1, 1, length(parameter, quantity));
}

/**
 * Refuses a gap below nothing or beyond 0.1 m.
 * @throws InputError when it is out of range.
 */
export function requireClearance(clearance: FitClearance): void {
  const words = {
    columns: 'clearance to standoffs',
    items: 'clearance between parts',
    edge: 'clearance to the edge',
    height: 'clearance in height',
  };
  for (const key of ['columns', 'items', 'edge', 'height'] as const)
    requireBetween(clearance[key], 0, 0.1, length(key, words[key]));
}

function requireTaper(taper: PlateTaper | undefined, plate: PlateOutline, end: 'nose' | 'tail'): void {
  if (!taper) return;
  requireFitSize(taper.width, end, `width of the ${end}`);
  requireBetween(taper.width, 0, plate.width, length(end, `width of the ${end}`));
  requireFitSize(taper.length, end, `length over which the ${end} narrows`);
}

/**
 * Refuses an outline that no plate has: wider ends than middle, or ends that narrow over more than the length.
 * @throws InputError when a number is out of range.
 */
export function requirePlate(plate: PlateOutline): void {
  requireFitSize(plate.length, 'length', 'length of the plate');
  requireFitSize(plate.width, 'width', 'width of the plate');
  requireFitPlace(plate.x ?? 0, 'x', 'middle of the plate');
  requireTaper(plate.nose, plate, 'nose');
  requireTaper(plate.tail, plate, 'tail');
  const tapers = (plate.nose?.length ?? 0) + (plate.tail?.length ?? 0);
  if (tapers > plate.length + 1e-9) {
    throw new InputError({
      ...length('length', 'length of the plate'),
      value: plate.length,
      rule: 'is shorter than its narrowing ends, which take at least',
      limit: tapers,
    });
  }
}
