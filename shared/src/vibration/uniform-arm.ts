import type { Warning } from '../error.ts';
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
  /** Round a tube, for the warning of a thin wall; a tenth of that along it where not given [Pa]. */
  hoopModulus?: number;
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

/** The arm as armModes takes it, plane by plane. */
function planesOf({ shape, length, youngsModulus, shearModulus, density, motor, root = {} }: UniformArm) {
  const section = shape.kind === 'tube' ? roundTubeSection(shape) : solidRectangleSection(shape);
  const shared = {
    segments: [{ length, layers: [{ section, youngsModulus, shearModulus, density }] }],
    motor: cylinderMotor(motor),
  };
  return {
    section,
    vertical: { ...shared, plane: 'vertical', rootBending: root.vertical },
    horizontal: { ...shared, plane: 'horizontal', rootBending: root.horizontal, rootTwist: root.twist },
  } as const;
}

/**
 * Frequencies of an arm of one section with a motor at its end.
 * @param arm - shape, length, material, motor, root
 * @returns modes up and down, and sideways with twist
 * @validity as armModes; doubler, holes and wires left out
 * @throws InputError when a number is out of range
 * @derivation armModes with one segment in each plane
 */
export function uniformArmFrequencies(arm: UniformArm): UniformArmFrequencies {
  const { shape, youngsModulus, density, hoopModulus = HOOP_SHARE * youngsModulus } = arm;
  const { section, ...planes } = planesOf(arm);
  const vertical = armModes(planes.vertical);
  const horizontal = armModes({ ...planes.horizontal, count: 3 });
  const [first, second] = vertical.modes as readonly [ArmMode, ArmMode];
  const sideways = horizontal.modes as readonly [ArmMode, ArmMode, ArmMode];
  const tube = shape.kind === 'tube' ? thinTubeWarnings({ ...shape, hoopModulus, density }, first.frequency) : [];
  const all = [...vertical.warnings, ...horizontal.warnings, ...tube];
  return {
    section,
    upDown: [first, second],
    sideways,
    warnings: all.filter((w, i) => all.findIndex((other) => other.code === w.code) === i),
  };
}

export interface FirstFrequencies {
  /** [Hz] */
  upDown: number;
  /** [Hz] */
  sideways: number;
}

/**
 * The first frequency in each plane alone, for slopes and curves that need many of them.
 * @param arm - as uniformArmFrequencies
 * @returns first frequencies up and down and sideways [Hz]
 * @validity as uniformArmFrequencies
 * @throws InputError when a number is out of range
 * @derivation armModes with one mode
 */
export function firstFrequencies(arm: UniformArm): FirstFrequencies {
  const planes = planesOf(arm);
  const first = (plane: typeof planes.vertical | typeof planes.horizontal): number =>
    (armModes({ ...plane, count: 1 }).modes[0] as ArmMode).frequency;
  return { upDown: first(planes.vertical), sideways: first(planes.horizontal) };
}
