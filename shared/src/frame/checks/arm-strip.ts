import { InputError } from '../../error.ts';
import {
  bearingStress,
  CHARACTERISTIC_LENGTHS,
  COARSE_THREADS,
  notchedStrengthRatio,
  shearOutStress,
  twoScrewRoot,
} from '../../joint/index.ts';
import { drilledRectangleSection } from '../../section/index.ts';
import { armSection } from '../arm.ts';
import { scaled, type Use } from '../check.ts';
import type { FrameRecord } from '../record.ts';
import { screwPerForce } from './arm-tube.ts';

/** Uses of a plate arm per newton across it at the motor, in one plane. Its screws stand upright through the plate. */
export function stripUses(record: FrameRecord, plane: 'vertical' | 'horizontal'): Use[] {
  const { arm, materials } = record;
  const { root, strip } = arm;
  const { bearingStrength, shearStrength, bendingStrength } = materials.plate;
  const size = { width: strip.width, height: strip.thickness };
  const net = drilledRectangleSection({ ...size, holeDiameter: root.holeDiameter })[plane];
  const whole = armSection(record)[plane];
  // Bent up and down, the hole's edge sees the full bending stress of its fibre, so the notched strength counts.
  const notched =
    plane === 'vertical'
      ? notchedStrengthRatio({
          holeDiameter: root.holeDiameter,
          characteristicLength: CHARACTERISTIC_LENGTHS.point,
        })
      : 1;
  const reactions = twoScrewRoot({ tipForce: 1, armLength: arm.length, screwSpacing: root.screwSpacing });
  const uses: Use[] = [
    {
      mode: 'outer-hole',
      quantity: 'stress',
      perForce: (arm.length * net.extremeFibre) / net.secondMomentOfArea,
      allowable: scaled(bendingStrength, notched),
    },
    {
      mode: 'bare-arm',
      quantity: 'stress',
      perForce: ((arm.length - root.holeDiameter) * whole.extremeFibre) / whole.secondMomentOfArea,
      allowable: bendingStrength,
    },
  ];
  if (plane === 'vertical') {
    return [...uses, screwPerForce(record, { shear: 0, tension: reactions.outer })];
  }
  const diameter = COARSE_THREADS[root.thread].diameter;
  const thickness = strip.thickness;
  // Across the strip each screw has half the strip's width to tear through, along it the distance to the end or the next hole.
  const beside = (strip.width - root.holeDiameter) / 2;
  if (beside <= 0) {
    throw new InputError({
      parameter: 'arm.strip.width',
      quantity: 'width of the strip',
      value: strip.width,
      rule: 'must be larger than its holes',
      limit: root.holeDiameter,
      kind: 'length',
    });
  }
  return [
    ...uses,
    screwPerForce(record, { shear: reactions.outer, tension: 0 }),
    ...(['outer', 'inner'] as const).flatMap((hole): Use[] => [
      {
        mode: `bearing-${hole}`,
        quantity: 'stress',
        perForce: bearingStress({ force: reactions[hole], diameter, thickness }),
        allowable: bearingStrength,
      },
      {
        mode: `tear-out-${hole}`,
        quantity: 'stress',
        perForce: shearOutStress({ force: reactions[hole], shearLength: beside, thickness }),
        allowable: shearStrength,
      },
    ]),
  ];
}
