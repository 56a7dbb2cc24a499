import { drilledStripArm, drilledTubeArm, holeInArm, type DrilledArm, type HoleInArm } from '@frameworthy/shared/notch';
import { tubePeakShearStress } from '@frameworthy/shared/section';
import { holeMaterial, wallNamed, type NotchedWall } from '../notch-inputs.ts';
import type { HoleValues } from './inputs.ts';

export interface HoleResult {
  drilled: DrilledArm;
  forces: HoleInArm;
  wall: NotchedWall;
  /** K of the laminate in a wide sheet [-]. */
  holeFactor: number;
  /** At the hole, under the reader's force [N·m]. */
  moment: number;
}

export function compute(values: HoleValues): HoleResult {
  const tubular = values.part === 'tube';
  const wall = wallNamed(tubular ? values.tubeMaterial : values.plateMaterial, values);
  const material = holeMaterial(wall, values);
  const { holeDiameter, holeAxis, bending } = values;
  const hole = { holeDiameter, holeAxis, bending, material };
  const tube = { outerDiameter: values.outerDiameter, wall: values.wall };
  const strip = { width: values.width, height: values.height };
  const drilled = tubular
    ? drilledTubeArm({ tube, walls: values.walls, ...hole })
    : drilledStripArm({ strip, offset: values.offset, ...hole });
  const forces = holeInArm({
    drilled,
    holeDiameter,
    station: values.station,
    armLength: values.armLength,
    bendingStrength: wall.bendingStrength,
    shearStrength: wall.shearStrength,
    shearPerForce: tubular ? tubePeakShearStress(tube, 1) : 1.5 / drilled.gross.area,
  });
  return {
    drilled,
    forces,
    wall,
    holeFactor: material.holeFactor,
    moment: values.tipForce * forces.lever,
  };
}

export const PLACE_WORDS: Readonly<Record<DrilledArm['place'], string>> = {
  'extreme fibre': 'at the extreme fibre',
  'neutral axis': 'at the neutral axis',
  between: 'between neutral axis and edge',
};
