import { armBending } from './arm-bending.ts';
import { armTwist } from './arm-twist.ts';
import type { ArmSegment } from './segment.ts';

export interface TipStiffness {
  /** Force over movement up and down [N/m]. */
  vertical: number;
  /** Force over movement in the plane of the propellers [N/m]. */
  horizontal: number;
  /** Torque over twist about the arm [N·m/rad]. */
  torsion: number;
}

/**
 * Stiffness of an arm at the motor axis in both planes and in torsion.
 * $$k = F/w(L),\quad k_t = T/\varphi(L)$$
 * @param segments - from the outer screw to the motor axis
 * @param root - rotational springs at the root, fixed where not given [N·m/rad]
 * @returns the three stiffnesses
 * @validity as armBending and armTwist
 * @throws InputError when a number is out of range
 * @derivation unit load over the movement that armBending and armTwist give
 */
export function tipStiffness(
  segments: readonly ArmSegment[],
  root: { vertical?: number; horizontal?: number; torsion?: number } = {},
): TipStiffness {
  const bending = (plane: 'vertical' | 'horizontal'): number =>
    1 / armBending({ segments, plane, tipForce: 1, rootStiffness: root[plane], steps: 1 }).tipDeflection;
  return {
    vertical: bending('vertical'),
    horizontal: bending('horizontal'),
    torsion: 1 / armTwist({ segments, torque: 1, rootStiffness: root.torsion }),
  };
}
