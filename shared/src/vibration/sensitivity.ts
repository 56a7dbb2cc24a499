import { requirePositive } from '../require.ts';
import { firstFrequencies, type FirstFrequencies, type UniformArm } from './uniform-arm.ts';

/** Change of the first frequencies for each unit of a size. */
export type FrequencySlopes = FirstFrequencies;

export interface ArmSensitivity {
  /** Change of the first frequencies per length of arm [Hz/m]. */
  length: FrequencySlopes;
  /** Per outside diameter of the tube, or width of the strip [Hz/m]. */
  size: FrequencySlopes;
  /** Per wall of the tube, or height of the strip [Hz/m]. */
  wall: FrequencySlopes;
  /** Per mass at the tip, its shape the same [Hz/kg]. */
  mass: FrequencySlopes;
}

/** Relative step of the difference: the error is of its square. */
const STEP = 1e-4;

/**
 * What each millimetre of tube and each gram of motor do to the first frequencies.
 * @param arm - as uniformArmFrequencies
 * @returns slopes at this arm
 * @validity small changes
 * @throws InputError when a number is out of range
 * @derivation central difference of firstFrequencies
 */
export function armSensitivity(arm: UniformArm): ArmSensitivity {
  const slopes = (value: number, change: (to: number) => UniformArm): FrequencySlopes => {
    requirePositive(value, { parameter: 'value', quantity: 'size of the arm' });
    const [low, high] = [firstFrequencies(change(value * (1 - STEP))), firstFrequencies(change(value * (1 + STEP)))];
    const slope = (plane: keyof FirstFrequencies): number => (high[plane] - low[plane]) / (2 * STEP * value);
    return { upDown: slope('upDown'), sideways: slope('sideways') };
  };
  const { shape, motor } = arm;
  return {
    length: slopes(arm.length, (length) => ({ ...arm, length })),
    size:
      shape.kind === 'tube'
        ? slopes(shape.outerDiameter, (outerDiameter) => ({ ...arm, shape: { ...shape, outerDiameter } }))
        : slopes(shape.width, (width) => ({ ...arm, shape: { ...shape, width } })),
    wall:
      shape.kind === 'tube'
        ? slopes(shape.wall, (wall) => ({ ...arm, shape: { ...shape, wall } }))
        : slopes(shape.height, (height) => ({ ...arm, shape: { ...shape, height } })),
    mass: slopes(motor.mass, (mass) => ({ ...arm, motor: { ...motor, mass } })),
  };
}
