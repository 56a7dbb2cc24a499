import { rigidity, type ArmSegment, type Layer } from '@frameworthy/shared/beam';
import {
  rectangleTorsionModulus,
  roundTubeSection,
  sleeveSection,
  solidRectangleSection,
  type Section,
} from '@frameworthy/shared/section';
import { armMaterial, type ArmMaterial } from './arm-inputs.ts';

/** Values of the shared arm fields. */
export interface ArmValues {
  shape: 'tube' | 'strip';
  outerDiameter: number;
  wall: number;
  sleeveWall: number;
  sleeveReach: number;
  sleeveBondLine: number;
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

export interface ArmOfFields {
  /** Of tube or strip, without a sleeve. */
  section: Section;
  round: boolean;
  /** From the outer screw to the motor axis: with a sleeve, then bare. */
  segments: readonly ArmSegment[];
  /** Part of the arm that is doubled; 0 for a bare arm [m]. */
  doubled: number;
  root: { vertical?: number; horizontal?: number; torsion?: number };
  youngsModulus: number;
  bendingStrength: number;
  shearStrength: number;
  /** Torque over peak shear stress where it is highest: past a sleeve [m³]. */
  torsionModulus: number;
}

/** The arm of the shared fields, from the outer screw to the motor axis: one section, in a tube doubled by its sleeve. */
export function armOfFields(values: ArmValues): ArmOfFields {
  const part = values.material === 'own' ? undefined : armMaterial(values.material);
  const youngsModulus = part?.youngsModulus.typical ?? values.youngsModulus;
  const shearModulus = part?.shearModulus.typical ?? values.shearModulus;
  const { armLength, sleeveReach } = values;
  const round = values.shape === 'tube';
  const section = round ? roundTubeSection(values) : solidRectangleSection(values);
  const layer = (one: Section): Layer => ({ section: one, youngsModulus, shearModulus });
  const sleeve =
    round && values.sleeveWall > 0 ? [layer(sleeveSection({ ...values, bondLine: values.sleeveBondLine }))] : [];
  const doubled = sleeve.length > 0 ? Math.min(Math.max(sleeveReach, 0), armLength) : 0;
  const segments: ArmSegment[] = [
    ...(doubled > 0 ? [{ length: doubled, layers: [layer(section), ...sleeve] }] : []),
    ...(doubled < armLength ? [{ length: armLength - doubled, layers: [layer(section)] }] : []),
  ];
  const turning = segments.at(-1)!.layers.reduce((sum, one) => sum + one.section.torsionConstant, 0);
  return {
    section,
    round,
    segments,
    doubled,
    root:
      values.root === 'springs'
        ? { vertical: values.rootVertical, horizontal: values.rootHorizontal, torsion: values.rootTwist }
        : {},
    youngsModulus,
    bendingStrength: part?.bendingStrength.typical ?? values.bendingStrength,
    shearStrength: part?.shearStrength.typical ?? values.shearStrength,
    torsionModulus: round
      ? turning / section.vertical.extremeFibre
      : rectangleTorsionModulus(values.width, values.height),
  };
}

/** What a section of the arm carries. */
export interface SectionLoad {
  /** Bending moments [N·m]. */
  vertical?: number;
  horizontal?: number;
  /** [N] */
  axial?: number;
}

export interface WorstPlace {
  /** Outer-fibre stress of tube or strip [Pa]. */
  stress: number;
  /** From the outer screw: 0, or where the sleeve ends [m]. */
  at: number;
  /** Second moment of tube and sleeve there, as one of the tube's modulus [m⁴]. */
  secondMomentOfArea: Readonly<Record<'vertical' | 'horizontal', number>>;
}

/**
 * Where the outer fibre of tube or strip is stressed most: at the root, or just past the sleeve. Loads only fall towards the
 * motor, so each stretch is worst at its inner end. Holes, and the step in stiffness at the sleeve's end, are left out.
 */
export function worstPlace(arm: ArmOfFields, load: (at: number) => SectionLoad): WorstPlace {
  const { section, youngsModulus, round } = arm;
  const places = arm.segments.map((segment, i): WorstPlace => {
    const at = i === 0 ? 0 : arm.doubled;
    const { vertical = 0, horizontal = 0, axial = 0 } = load(at);
    const secondMomentOfArea = {
      vertical: rigidity(segment, 'vertical').flexural / youngsModulus,
      horizontal: rigidity(segment, 'horizontal').flexural / youngsModulus,
    };
    const up = (vertical * section.vertical.extremeFibre) / secondMomentOfArea.vertical;
    const aside = (horizontal * section.horizontal.extremeFibre) / secondMomentOfArea.horizontal;
    const area = segment.layers.reduce((sum, layer) => sum + layer.section.area, 0);
    // A round tube has one farthest fibre for both; a strip has a corner where they add.
    const bending = round ? Math.hypot(up, aside) : up + aside;
    return { stress: bending + axial / area, at, secondMomentOfArea };
  });
  return places.reduce((worst, place) => (place.stress > worst.stress ? place : worst));
}

/** The worst place in a few words, as part of a sentence. */
export const placeWords = ({ doubled }: ArmOfFields, at: number): string =>
  doubled === 0 ? 'the bare root' : at > 0 ? 'the tube past its sleeve' : 'the tube at the root';

/** Outside radius of the sleeve; 0 for a bare arm [m]. */
export const sleeveRadius = ({ doubled, segments }: ArmOfFields): number =>
  doubled > 0 ? segments[0]!.layers[1]!.section.vertical.extremeFibre : 0;
