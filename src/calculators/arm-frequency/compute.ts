import { massPerLength } from '@frameworthy/shared/section';
import {
  armSensitivity,
  crossings,
  propellerLines,
  quickTipFrequency,
  uniformArmFrequencies,
  type ArmSensitivity,
  type Crossing,
  type UniformArm,
  type UniformArmFrequencies,
} from '@frameworthy/shared/vibration';
import { armMaterial } from '../arm-inputs.ts';
import type { FrequencyValues } from './inputs.ts';

export interface FrequencyResult {
  arm: UniformArm;
  modes: UniformArmFrequencies;
  /** EI up and down [N·m²]. */
  flexuralRigidity: number;
  /** Of the arm from the root to the motor [kg]. */
  beamMass: number;
  /** First frequency up and down by the quick rule [Hz]. */
  quick: number;
  hover: { oncePerRev: number; bladePass: number };
  full: { oncePerRev: number; bladePass: number };
  /** Between hover and full throttle. */
  crossings: readonly Crossing[];
  sensitivity: ArmSensitivity;
}

function materialOf({
  material,
  youngsModulus,
  shearModulus,
  density,
}: FrequencyValues): Pick<UniformArm, 'youngsModulus' | 'shearModulus' | 'density' | 'hoopModulus'> {
  if (material === 'own') return { youngsModulus, shearModulus, density };
  const part = armMaterial(material);
  return {
    youngsModulus: part.youngsModulus.typical,
    shearModulus: part.shearModulus.typical,
    density: part.density.typical,
    ...('hoopModulus' in part ? { hoopModulus: part.hoopModulus.typical } : {}),
  };
}

export function armOf(values: FrequencyValues): UniformArm {
  return {
    shape:
      values.shape === 'tube'
        ? { kind: 'tube', outerDiameter: values.outerDiameter, wall: values.wall }
        : { kind: 'strip', width: values.width, height: values.height },
    length: values.armLength,
    ...materialOf(values),
    motor: {
      mass: values.motorMass,
      diameter: values.motorDiameter,
      height: values.motorHeight,
      offset: values.motorRise,
    },
    root:
      values.root === 'springs'
        ? { vertical: values.rootVertical, horizontal: values.rootHorizontal, twist: values.rootTwist }
        : {},
  };
}

/** Names of the modes as they stand in words and in the plot. */
export const MODE_NAMES = { upDown: 'up and down', sideways: 'sideways', twisting: 'sideways with twist' } as const;

export function compute(values: FrequencyValues): FrequencyResult {
  const arm = armOf(values);
  const modes = uniformArmFrequencies(arm);
  const flexuralRigidity = arm.youngsModulus * modes.section.vertical.secondMomentOfArea;
  const beamMass = massPerLength(modes.section.area, arm.density) * arm.length;
  return {
    arm,
    modes,
    flexuralRigidity,
    beamMass,
    quick: quickTipFrequency({ flexuralRigidity, length: arm.length, beamMass, tipMass: arm.motor.mass }),
    hover: propellerLines(values.hoverSpeed, values.blades),
    full: propellerLines(values.fullSpeed, values.blades),
    crossings: crossings({
      modes: [
        { name: MODE_NAMES.upDown, frequency: modes.upDown[0].frequency },
        { name: MODE_NAMES.sideways, frequency: modes.sideways[0].frequency },
        { name: MODE_NAMES.twisting, frequency: modes.sideways[1].frequency },
      ],
      blades: values.blades,
      from: values.hoverSpeed,
      to: values.fullSpeed,
    }),
    sensitivity: armSensitivity(arm),
  };
}
