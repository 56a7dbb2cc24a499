import type { ArmSegment } from '@frameworthy/shared/beam';
import {
  rectangleTorsionModulus,
  roundTubeSection,
  solidRectangleSection,
  type Section,
} from '@frameworthy/shared/section';
import { armMaterial, type ArmMaterial } from './arm-inputs.ts';

/** Values of the shared arm fields. */
export interface ArmValues {
  shape: 'tube' | 'strip';
  outerDiameter: number;
  wall: number;
  width: number;
  height: number;
  armLength: number;
  material: ArmMaterial | 'own';
  youngsModulus: number;
  shearModulus: number;
  bendingStrength: number;
  shearStrength: number;
  root: 'springs' | 'clamped';
  rootVertical: number;
  rootHorizontal: number;
  rootTwist: number;
}

export interface OneSectionArm {
  section: Section;
  segments: readonly [ArmSegment];
  root: { vertical?: number; horizontal?: number; torsion?: number };
  youngsModulus: number;
  bendingStrength: number;
  shearStrength: number;
  /** Torque over peak shear stress [m³]. */
  torsionModulus: number;
}

/** The bare arm of the shared fields: one section from the outer screw to the motor axis. */
export function oneSectionArm(values: ArmValues): OneSectionArm {
  const part = values.material === 'own' ? undefined : armMaterial(values.material);
  const youngsModulus = part?.youngsModulus.typical ?? values.youngsModulus;
  const shearModulus = part?.shearModulus.typical ?? values.shearModulus;
  const tube = values.shape === 'tube';
  const section = tube ? roundTubeSection(values) : solidRectangleSection(values);
  return {
    section,
    segments: [{ length: values.armLength, layers: [{ section, youngsModulus, shearModulus }] }],
    root:
      values.root === 'springs'
        ? { vertical: values.rootVertical, horizontal: values.rootHorizontal, torsion: values.rootTwist }
        : {},
    youngsModulus,
    bendingStrength: part?.bendingStrength.typical ?? values.bendingStrength,
    shearStrength: part?.shearStrength.typical ?? values.shearStrength,
    torsionModulus: tube
      ? section.torsionConstant / section.vertical.extremeFibre
      : rectangleTorsionModulus(values.width, values.height),
  };
}
