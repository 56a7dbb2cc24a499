import type { Warning } from '../error.ts';
import { requirePositive } from '../require.ts';
import { roundTubeSection, solidRectangleSection, type Section } from '../section/index.ts';
import { armModes, type ArmMode } from './modes.ts';
import { cylinderMotor } from './motor.ts';
import { thinTubeWarnings } from './validity.ts';

export type ArmShape =
  | { kind: 'tube'; outerDiameter: number; wall: number }
  /** A strip of plate: width in the plane of the propellers, height up and down. */
  | { kind: 'strip'; width: number; height: number };

export interface UniformArm {
  shape: ArmShape;
  /** From the outer screw to the motor axis [m]. */
  length: number;
  /** Along the arm [Pa]. */
  youngsModulus: number;
  /** [Pa] */
  shearModulus: number;
  /** [kg/m³] */
  density: number;
  /** Everything at the tip, as a cylinder; `offset` of its centre of mass above the arm's axis. */
  motor: { mass: number; diameter: number; height: number; offset: number };
  /** Springs at the root, fixed where not given [N·m/rad]. */
  root?: { vertical?: number; horizontal?: number; twist?: number };
}

export interface UniformArmFrequencies {
  section: Section;
  /** First and second. */
  upDown: readonly [ArmMode, ArmMode];
  /** Sideways with twist, the three lowest. */
  sideways: readonly [ArmMode, ArmMode, ArmMode];
  warnings: readonly Warning[];
}

/** Modulus round a tube over that along it where nothing is known: pultruded tube is near it, rolled tube above. */
const HOOP_SHARE = 0.1;

/**
 * Frequencies of an arm of one section with a motor at its end.
 * @param arm - shape, length, material, motor, root
 * @returns modes up and down, and sideways with twist
 * @validity as armModes; doubler, holes and wires left out
 * @throws InputError when a number is out of range
 * @derivation armModes with one segment in each plane
 */
export function uniformArmFrequencies(arm: UniformArm): UniformArmFrequencies {
  const { shape, length, youngsModulus, shearModulus, density, root = {} } = arm;
  const section = shape.kind === 'tube' ? roundTubeSection(shape) : solidRectangleSection(shape);
  const segments = [{ length, layers: [{ section, youngsModulus, shearModulus, density }] }];
  const motor = cylinderMotor(arm.motor);
  const vertical = armModes({ segments, plane: 'vertical', motor, rootBending: root.vertical });
  const horizontal = armModes({
    segments,
    plane: 'horizontal',
    motor,
    rootBending: root.horizontal,
    rootTwist: root.twist,
    count: 3,
  });
  const [first, second] = vertical.modes as readonly [ArmMode, ArmMode];
  const sideways = horizontal.modes as readonly [ArmMode, ArmMode, ArmMode];
  const tube =
    shape.kind === 'tube'
      ? thinTubeWarnings({ ...shape, hoopModulus: HOOP_SHARE * youngsModulus, density }, first.frequency)
      : [];
  const all = [...vertical.warnings, ...horizontal.warnings, ...tube];
  return {
    section,
    upDown: [first, second],
    sideways,
    warnings: all.filter((w, i) => all.findIndex((other) => other.code === w.code) === i),
  };
}

export interface FrequencySlopes {
  upDown: number;
  sideways: number;
}

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
 * @derivation central difference of uniformArmFrequencies
 */
export function armSensitivity(arm: UniformArm): ArmSensitivity {
  const slopes = (value: number, change: (to: number) => UniformArm): FrequencySlopes => {
    requirePositive(value, { parameter: 'value', quantity: 'size of the arm' });
    const [low, high] = [
      uniformArmFrequencies(change(value * (1 - STEP))),
      uniformArmFrequencies(change(value * (1 + STEP))),
    ];
    const slope = (of: (f: UniformArmFrequencies) => number): number => (of(high) - of(low)) / (2 * STEP * value);
    return { upDown: slope((f) => f.upDown[0].frequency), sideways: slope((f) => f.sideways[0].frequency) };
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
