import { requireBelow, requireBetween } from '../require.ts';
import { requireAround } from './require-around.ts';
import type { FrameThread } from './thread-limits.ts';

export type Seat = 'cap-head' | 'button-head' | 'washer';

const seats = (cap: number, button: number, washer: number): Record<Seat, number> => ({
  'cap-head': cap * 1e-3,
  'button-head': button * 1e-3,
  washer: washer * 1e-3,
});

/**
 * Outside diameter of what presses on the plate [m]: cap heads iso-2004-4762, button heads iso-2011-7380, washers
 * iso-2000-7089, all recalled.
 */
export const SEAT_DIAMETERS: Readonly<Record<FrameThread, Readonly<Record<Seat, number>>>> = {
  M2: seats(3.8, 3.5, 5),
  'M2.5': seats(4.5, 4.7, 6),
  M3: seats(5.5, 5.7, 7),
  M4: seats(7, 7.6, 9),
};

/**
 * Pressure of a clamped head, washer or nut on the plate under it.
 * $$p = \frac{F}{\frac{\pi}{4}(d_s^2-d_h^2)}$$
 * @param seat - clamping force [N], outside diameter of the seat and diameter of the hole [m]
 * @returns mean pressure [Pa]
 * @validity head flat and square to the plate, pressure even; a thin washer under a small head spreads it less
 * @throws InputError when a number is out of range or the seat is no wider than the hole
 * @derivation force over the ring that touches
 */
export function seatPressure({
  force,
  seatDiameter,
  holeDiameter,
}: {
  force: number;
  seatDiameter: number;
  holeDiameter: number;
}): number {
  requireBetween(force, 0, 1e9, { parameter: 'force', quantity: 'clamping force', kind: 'force' });
  return force / seatArea({ seatDiameter, holeDiameter });
}

/**
 * Area of the ring on which a head, washer or nut rests.
 * $$A = \tfrac{\pi}{4}(d_s^2-d_h^2)$$
 * @param seat - outside diameter of the seat and diameter of the hole [m]
 * @returns area [m²]
 * @validity hole and seat on one axis
 * @throws InputError when a number is out of range or the seat is no wider than the hole
 * @derivation area of a ring
 */
export function seatArea({ seatDiameter, holeDiameter }: { seatDiameter: number; holeDiameter: number }): number {
  requireBetween(seatDiameter, 1e-4, 1, {
    parameter: 'seatDiameter',
    quantity: 'diameter under the head',
    kind: 'length',
  });
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requireBetween(holeDiameter, 1e-4, 1, hole);
  requireBelow(holeDiameter, 0.999 * seatDiameter, 'must be smaller than what rests on it', hole);
  return (Math.PI / 4) * (seatDiameter - holeDiameter) * (seatDiameter + holeDiameter);
}

/** A nut pressed into a plate from the side that it is pulled away from. */
export interface PressNut {
  /** Of the flange that rests on the plate [m]. */
  flangeDiameter: number;
  /** In the plate, for the body of the nut [m]. */
  nutHole: number;
}

/**
 * Area of the ring on which the flange of a press nut rests.
 * $$A = \tfrac{\pi}{4}(d_f^2-d_n^2)$$
 * @param nut - diameter of the flange and of the hole for the nut's body [m]
 * @param screwDiameter - nominal [m]
 * @returns area [m²]
 * @validity pulled so that the flange presses on the plate; the knurl is not counted
 * @throws InputError when a number is out of range, or the hole is no wider than the screw or no narrower than the flange
 * @derivation area of a ring
 */
export function flangeArea({ flangeDiameter, nutHole }: PressNut, screwDiameter: number): number {
  const hole = { parameter: 'nutHole', quantity: 'hole for the nut' };
  requireBetween(flangeDiameter, 1e-4, 1, {
    parameter: 'flangeDiameter',
    quantity: 'flange of the nut',
    kind: 'length',
  });
  requireAround(nutHole, screwDiameter, hole);
  requireBelow(nutHole, 0.999 * flangeDiameter, 'must be smaller than the flange', { ...hole, kind: 'length' });
  return seatArea({ seatDiameter: flangeDiameter, holeDiameter: nutHole });
}
