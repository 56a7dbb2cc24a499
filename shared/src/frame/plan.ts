import { InputError } from '../error.ts';
import { motorLayout, type MotorLayout } from '../layout/index.ts';
import type { FrameRecord } from './record.ts';

/** Where things are, worked out from a record. Heights from the arm's axis, up is positive [m]. */
export interface FramePlan {
  layout: MotorLayout;
  /** From the middle of the motors to the outer root screw. */
  rootDistance: number;
  /** From the middle of the motors to the inner end of an arm; below nothing where it passes the middle. */
  innerEnd: number;
  /** Of the arm, up and down. */
  armHeight: number;
  underside: number;
  /** Upper face of the main plate, on which boards and standoffs stand. */
  deck: number;
  /** Underside and upper face of the top plate. */
  topPlate: number;
  top: number;
}

/**
 * Plan and heights of a frame.
 * $$r = \tfrac12 W - L,\quad z_{deck} = \tfrac12 h + t_m,\quad z_{top} = z_{deck} + \ell + t_t$$
 * @param record - a valid record
 * @returns motor places, root distance and heights [m]
 * @validity arms lie on the diagonals, between cross plate and main plate; standoffs stand on the main plate
 * @throws InputError where an arm is longer than half the wheelbase, or the layout cannot be
 * @derivation lengths along the diagonal, thicknesses one on the other
 */
export function framePlan(record: FrameRecord): FramePlan {
  const { arm, body } = record;
  const layout = motorLayout({ propellerDiameter: record.propeller.diameter, ...record.layout });
  const rootDistance = layout.wheelbase / 2 - arm.length;
  if (rootDistance < 0) {
    throw new InputError({
      parameter: 'arm.length',
      quantity: 'length of the arm',
      value: arm.length,
      rule: 'must be at most half the wheelbase',
      limit: layout.wheelbase / 2,
      kind: 'length',
    });
  }
  const armHeight = arm.kind === 'tube' ? arm.tube.outerDiameter : arm.strip.thickness;
  const deck = armHeight / 2 + body.mainPlate.thickness;
  const topPlate = deck + body.standoff.length;
  return {
    layout,
    rootDistance,
    innerEnd: rootDistance - arm.root.screwSpacing - arm.root.endDistance,
    armHeight,
    underside: -armHeight / 2 - body.crossPlate.thickness,
    deck,
    topPlate,
    top: topPlate + body.topPlate.thickness,
  };
}
