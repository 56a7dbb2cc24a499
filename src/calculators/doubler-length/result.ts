import type { Warning } from '@frameworthy/shared';
import { wallBucklingWarnings } from '@frameworthy/shared/beam';
import { equivalentElasticShear, strengthAtTemperature } from '@frameworthy/shared/bond';
import { leastSleeveWall, taperFactor, tubeDoubler } from '@frameworthy/shared/doubler';
import { ROLL_WRAPPED_TUBE } from '@frameworthy/shared/material';
import type { DoublerValues } from './inputs.ts';

/** Round the tube over along it, where only the latter is asked for: as in roll-wrapped tube. */
const ROUND = ROLL_WRAPPED_TUBE.hoopModulus.typical / ROLL_WRAPPED_TUBE.youngsModulus.typical;

/** The tube alone is bent most where the sleeve ends, or at the outer screw where the sleeve does not reach it. */
export function wallWarnings(values: DoublerValues, end: number): Warning[] {
  const { tubeOutside, tubeInside, tubeModulus, armLength, tipForce } = values;
  return wallBucklingWarnings({
    tube: { outerDiameter: tubeOutside, wall: (tubeOutside - tubeInside) / 2 },
    modulusAlong: tubeModulus,
    modulusRound: ROUND * tubeModulus,
    moment: tipForce * Math.max(0, armLength - Math.max(0, end)),
  });
}

/** The sleeve as chosen, the thinnest wall that would do, and what the adhesive bears. */
export function compute(values: DoublerValues) {
  const yields = strengthAtTemperature({ room: values.adhesiveStrength, kept: values.kept });
  const doubler = tubeDoubler(values);
  return {
    ...doubler,
    least: leastSleeveWall(values),
    leftByTaper: taperFactor({ lambda: doubler.section.lambda, taper: values.taper }),
    bondYields: yields,
    bondBreaks: equivalentElasticShear({ yieldShear: yields, plasticRatio: values.plasticRatio }),
    end: values.length - values.edgeDistance - values.screwSpacing,
  };
}

export type DoublerResult = ReturnType<typeof compute>;
