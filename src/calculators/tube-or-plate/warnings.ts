import type { Warning } from '@frameworthy/shared';
import { tubeBuckling } from '@frameworthy/shared/beam';
import { thinTubeWarnings } from '@frameworthy/shared/vibration';
import type { ArmValues } from './inputs.ts';
import { tubeMaterial } from './materials.ts';
import type { Part } from './parts.ts';

/** Length over width below which a strip is a plate and not a beam: common practice. */
const LEAST_SLENDERNESS = 5;

/** Reasons to doubt the tube as a beam. */
export function tubeWarnings(values: ArmValues, tube: Part): Warning[] {
  const { outerDiameter, wall, armLength } = values;
  const { youngsModulus, hoopModulus, density } = tubeMaterial(values);
  const warnings: Warning[] = [];
  // An orthotropic wall buckles and flattens by the geometric mean of its moduli along and round the tube.
  const { bucklingMoment, ovalisationMoment } = tubeBuckling({
    radius: (outerDiameter - wall) / 2,
    wall,
    youngsModulus: Math.sqrt(youngsModulus * hoopModulus),
  });
  if (Math.min(bucklingMoment, ovalisationMoment) < tube.root.vertical * armLength) {
    warnings.push({
      code: 'tube-wall-buckles',
      message: 'Round tube: the wall is so thin that it buckles or flattens below the force given for the root.',
    });
  }
  if (thinTubeWarnings({ outerDiameter, wall, hoopModulus, density }, tube.frequency.vertical).length > 0) {
    warnings.push({
      code: 'tube-wall-too-thin',
      message: 'Round tube: the wall goes oval near the frequency of the arm: it is no beam any more.',
    });
  }
  if (armLength < LEAST_SLENDERNESS * outerDiameter) {
    warnings.push({
      code: 'tube-too-short',
      message: 'Round tube: shorter than five times its width: beam theory is a guess.',
    });
  }
  return warnings;
}

/** Reasons to doubt the strip as a beam. */
export function stripWarnings({ armLength, rootWidth, tipWidth, thickness }: ArmValues): Warning[] {
  const warnings: Warning[] = [];
  const widest = Math.max(rootWidth, tipWidth);
  if (armLength < LEAST_SLENDERNESS * Math.max(widest, thickness)) {
    warnings.push({
      code: 'strip-too-wide',
      message: 'Plate strip: shorter than five times its width: beam theory is a guess.',
    });
  }
  if (thickness > Math.min(rootWidth, tipWidth)) {
    warnings.push({
      code: 'strip-on-edge',
      message: 'Plate strip: thicker than wide. It may tip over under thrust, which is left out.',
    });
  }
  return warnings;
}
