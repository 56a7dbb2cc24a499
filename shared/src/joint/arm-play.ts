import { requireNotNegative, requirePositive } from '../require.ts';

export interface ArmPlayInput {
  /** Hole in the arm less screw, on diameter [m]. */
  armClearance: number;
  /** Hole in the plates less screw, on diameter [m]. */
  plateClearance: number;
  /** [m] */
  screwSpacing: number;
  /** From the outer screw to the motor axis [m]. */
  armLength: number;
  /** Height over which a screw guides the arm: the tube's outside diameter or the plate arm's thickness [m]. */
  armHeight: number;
}

export interface ArmPlay {
  /** How far the arm may turn in the plane of the propellers, either way [rad]. */
  angle: number;
  /** How far the motor may stand beside its place, either way [m]. */
  motorError: number;
  /** How far the motor may lean about the arm's own axis, either way [rad]. */
  lean: number;
}

/**
 * How far an arm may stand out of line when its screws have clearance.
 * $$\theta = \frac{c}{s},\quad y = c\Bigl(\frac{L}{s}+\frac12\Bigr),\quad \varphi = \frac{c}{h}$$
 * @param input - clearances, spacing, arm length, arm height
 * @returns angle, motor error and lean, each either way from the middle
 * @validity screws upright in the plates, friction not holding; small angles
 * @throws InputError when a clearance is negative or a length not positive
 * @derivation each screw lets the arm shift by c/2 either way, c being both clearances together. Shifted opposite ways
 * over the spacing s, the arm turns by c/s; at the motor that is the shift c/2 of the outer screw plus cL/s. Across the
 * height h the same holds for the arm rolling about its axis
 */
export function armPlay({ armClearance, plateClearance, screwSpacing, armLength, armHeight }: ArmPlayInput): ArmPlay {
  requireNotNegative(armClearance, { parameter: 'armClearance', quantity: 'clearance in the arm', kind: 'length' });
  requireNotNegative(plateClearance, {
    parameter: 'plateClearance',
    quantity: 'clearance in the plates',
    kind: 'length',
  });
  requirePositive(screwSpacing, { parameter: 'screwSpacing', quantity: 'screw spacing', kind: 'length' });
  requirePositive(armLength, { parameter: 'armLength', quantity: 'arm length', kind: 'length' });
  requirePositive(armHeight, { parameter: 'armHeight', quantity: 'height of the arm', kind: 'length' });
  const clearance = armClearance + plateClearance;
  return {
    angle: clearance / screwSpacing,
    motorError: clearance * (armLength / screwSpacing + 0.5),
    lean: clearance / armHeight,
  };
}
