import type { PlateOutline } from './types.ts';

/** How far behind an end of the plate a point must stay, `y` off the middle line with `air` to every edge; Infinity where it never fits. */
export function endSetback(plate: PlateOutline, end: 'nose' | 'tail', y: number, air: number): number {
  if (y + air > plate.width / 2 + 1e-9) return Infinity;
  const taper = plate[end];
  if (!taper || taper.width === plate.width) return air;
  const slope = (plate.width - taper.width) / 2 / taper.length;
  return Math.max(air, (y - taper.width / 2 + air * Math.hypot(1, slope)) / slope);
}
