import type { ArmSegment, Layer } from '../beam/index.ts';
import {
  roundTubeSection,
  sleeveSection as sectionOfSleeve,
  solidRectangleSection,
  type Section,
} from '../section/index.ts';
import type { FrameRecord } from './record.ts';

/** Section of the arm without its sleeve. */
export function armSection({ arm }: FrameRecord): Section {
  return arm.kind === 'tube'
    ? roundTubeSection(arm.tube)
    : solidRectangleSection({ width: arm.strip.width, height: arm.strip.thickness });
}

export const hasSleeve = ({ arm }: FrameRecord): boolean => arm.kind === 'tube' && arm.sleeve.wall > 0;

/**
 * Sizes of the sleeve: it fills the bore but for the bond line.
 * @param record - a valid record
 * @returns outside diameter and wall [m]
 * @validity tube arms
 * @derivation bore less twice the bond line
 */
export function sleeveOf({ arm: { tube, sleeve } }: FrameRecord): { outside: number; wall: number } {
  return { outside: tube.outerDiameter - 2 * tube.wall - 2 * sleeve.bondLine, wall: sleeve.wall };
}

/**
 * Section of the sleeve.
 * @param record - a valid record
 * @returns the section of a round tube
 * @validity arms with a sleeve
 * @throws InputError where the bore leaves no room for it: names the sleeve, and not the tube
 * @derivation the sleeve of the section topic, filled from the record
 */
export function sleeveSection({ arm: { tube, sleeve } }: FrameRecord): Section {
  return sectionOfSleeve({ ...tube, bondLine: sleeve.bondLine, sleeveWall: sleeve.wall }, 'arm.sleeve.wall');
}

/** How far the sleeve reaches past the outer screw; below nothing where it ends before. */
export const sleeveReach = ({ arm: { sleeve, root } }: FrameRecord): number =>
  sleeve.length - root.endDistance - root.screwSpacing;

/** Material of the arm. */
export const armMaterial = ({ arm, materials }: FrameRecord) =>
  arm.kind === 'tube' ? materials.tube : materials.plate;

/**
 * The arm from the outer screw to the motor axis: with its sleeve, then bare.
 * @param record - a valid record
 * @returns segments for the beam functions
 * @validity screw holes and the taper of the sleeve left out
 * @throws InputError where sizes do not make a section
 * @derivation geometry
 */
export function armSegments(record: FrameRecord): ArmSegment[] {
  const { arm } = record;
  const material = armMaterial(record);
  const layer = (section: Section): Layer => ({
    section,
    youngsModulus: material.youngsModulus.typical,
    shearModulus: material.shearModulus.typical,
    density: material.density.typical,
  });
  const bare = layer(armSection(record));
  const reach = hasSleeve(record) ? Math.min(Math.max(sleeveReach(record), 0), arm.length) : 0;
  return [
    ...(reach > 0 ? [{ length: reach, layers: [bare, layer(sleeveSection(record))] }] : []),
    ...(reach < arm.length ? [{ length: arm.length - reach, layers: [bare] }] : []),
  ];
}

/**
 * Springs of the arm's root.
 * @param record - a valid record
 * @returns stiffness up and down, sideways and in twist, as the beam functions take them [N·m/rad]
 * @validity any record
 * @derivation look-up
 */
export function rootSprings({ arm: { root } }: FrameRecord): { vertical: number; horizontal: number; torsion: number } {
  return { vertical: root.stiffnessVertical, horizontal: root.stiffnessHorizontal, torsion: root.stiffnessTwist };
}

/**
 * Arm past the motor's axis: half the motor plate of a tube, half the motor of a plate arm.
 * @param record - a valid record
 * @returns length [m]
 * @validity arms that end with what the motor stands on; a skid past it is not in the record
 * @derivation look-up
 */
export function pastMotor({ arm, mount, motor }: FrameRecord): number {
  return (arm.kind === 'tube' ? mount.plateLength : motor.diameter) / 2;
}
