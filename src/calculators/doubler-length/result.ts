import { equivalentElasticShear, strengthAtTemperature } from '@frameworthy/shared/bond';
import { leastSleeveWall, taperFactor, tubeDoubler } from '@frameworthy/shared/doubler';
import type { DoublerValues } from './inputs.ts';

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
