import { clearanceHole } from '../fastener/index.ts';
import { PATTERN_SPACING, type FitItem } from '../fit/index.ts';
import { fourArmOutline, type ArmSection, type FrameOutline, type OutlineHole } from '../outline/index.ts';
import { pastMotor } from './arm.ts';
import { currentArrangement } from './arrangement.ts';
import type { FrameRecord } from './record.ts';

function sectionOf({ arm }: FrameRecord): ArmSection {
  const { width, thickness } = arm.strip;
  return arm.kind === 'tube'
    ? { kind: 'tube', ...arm.tube }
    : { kind: 'strip', rootWidth: width, tipWidth: width, thickness };
}

/** Holes in the main plate under a board whose pattern and screws are known. */
function boardHoles({ name, x, y, pattern, screw }: FitItem): OutlineHole[] {
  if (!pattern || !screw) return [];
  const half = PATTERN_SPACING[pattern] / 2;
  const diameter = clearanceHole(screw.thread, 'fine');
  return [half, -half].flatMap((along) =>
    [half, -half].map((aside) => ({ name: `screw of ${name}`, at: { x: aside - y, y: along + x }, diameter })),
  );
}

/**
 * The frame as its drawings need it.
 * @param record - a valid record
 * @returns outline, x to the right, y forward, z from the underside of the cross plate [m]
 * @validity as fourArmOutline; cutouts and the holes of the motors are not drawn
 * @throws InputError where the plan cannot be
 * @derivation fourArmOutline, filled from the record; its x is forward and its y to the left
 */
export function frameOutline(record: FrameRecord): FrameOutline {
  const { arm, motor, mount, body, battery, name, revision } = record;
  const { root } = arm;
  const { standoff } = body;
  const { standoffs, items } = currentArrangement(record);
  const outline = fourArmOutline({
    name: `${name}, revision ${revision}`,
    layout: { propellerDiameter: record.propeller.diameter, ...record.layout },
    motor: {
      bellDiameter: motor.diameter,
      height: motor.height,
      propellerHeight: motor.propellerHeight,
      seat: arm.kind === 'tube' ? mount.plateThickness : 0,
    },
    arm: { ...root, section: sectionOf(record), length: arm.length, beyondMotor: pastMotor(record) },
    body: {
      length: body.length,
      width: body.width,
      end: body.end,
      tongueWidth: body.tongueWidth,
      crossPlate: body.crossPlate.thickness,
      mainPlate: body.mainPlate.thickness,
      topPlate: body.topPlate.thickness,
      topLength: body.topPlate.length,
    },
    standoff: {
      places: standoffs.map(({ x, y }) => ({ x: -y, y: x })),
      length: standoff.length,
      diameter: standoff.outerDiameter,
      holeDiameter: clearanceHole(standoff.screw, 'fine'),
    },
    electronics: items.map((item) => ({
      name: item.name,
      centre: { x: -item.y, y: item.x, z: item.z + item.height / 2 },
      size: { x: item.width, y: item.length, z: item.height },
      ...(item.tilt ? { tilt: item.tilt } : {}),
    })),
    battery,
  });
  return { ...outline, holes: [...outline.holes, ...items.flatMap(boardHoles)] };
}
