import { requireBetween } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import { InputError } from '../error.ts';

/** Lengths under the head that small screws are sold in [m]. common-practice. */
export const SCREW_LENGTHS: readonly number[] = [4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 30, 35, 40].map(
  (length) => length * 1e-3,
);

/** Least room between the end of a screw and the winding [m]. common-practice. */
export const WINDING_ROOM = 0.5e-3;

export interface MotorScrewLength {
  /** Under the head [m]. */
  screwLength: number;
  /** Everything between head and motor: plate, washer, tube or its wall [m]. */
  grip: number;
  /** Of the tapped hole in the motor's base, from the face that stands on the plate [m]. */
  threadDepth: number;
  /** From the same face to the first copper above the hole [m]. */
  windingDepth: number;
}

export interface MotorScrewFit {
  /** How far the screw goes into the motor [m]. */
  reach: number;
  /** Thread that holds [m]. */
  engagement: number;
  /** Between its end and the winding; negative where it stands in it [m]. */
  room: number;
  /** Longest screw that leaves the least room [m]. */
  longest: number;
  /** Longest of the usual lengths that does; 0 where none is short enough [m]. */
  longestSold: number;
}

/**
 * Whether a motor screw holds, and whether it reaches the winding.
 * $$e = L-s,\quad \text{room} = h_w - e,\quad L_{max} = s + h_w - 0.5\ \text{mm}$$
 * @param screw - length under the head, grip, depths in the motor [m]
 * @returns reach, engagement, room to the winding and the longest screw [m]
 * @validity measure both depths on your own motor: they differ between motors of the same size
 * @throws InputError when the screw does not reach the motor, or a length is out of range
 * @derivation lengths along the screw
 */
export function motorScrewFit({ screwLength, grip, threadDepth, windingDepth }: MotorScrewLength): MotorScrewFit {
  requireLength(screwLength, { parameter: 'screwLength', quantity: 'screw length' });
  requireBetween(grip, 0, 1, { parameter: 'grip', quantity: 'thickness under the motor', kind: 'length' });
  requireLength(threadDepth, { parameter: 'threadDepth', quantity: 'depth of the thread' });
  requireLength(windingDepth, { parameter: 'windingDepth', quantity: 'depth of the winding' });
  const reach = screwLength - grip;
  if (reach < 1e-4) {
    throw new InputError({
      parameter: 'screwLength',
      quantity: 'screw length',
      value: screwLength,
      rule: 'must be longer than what lies under the motor',
      limit: grip,
      kind: 'length',
    });
  }
  const longest = Math.max(0, grip + windingDepth - WINDING_ROOM);
  return {
    reach,
    engagement: Math.min(reach, threadDepth),
    room: windingDepth - reach,
    longest,
    longestSold: SCREW_LENGTHS.filter((length) => length <= longest + 1e-9).at(-1) ?? 0,
  };
}
