import { equivalentElasticShear, sleeveBond, strengthAtTemperature, usefulOverlap } from '@frameworthy/shared/bond';
import type { BondValues } from './inputs.ts';

/** The bond under the load that is chosen, in SI. */
export function bondOf({ kind, moment, pull, torque, tubeShear, sleeveShear, ...values }: BondValues) {
  const twisted = kind === 'torque';
  return sleeveBond({
    ...values,
    kind,
    load: { bending: moment, axial: pull, torque }[kind],
    tubeModulus: twisted ? tubeShear : values.tubeModulus,
    sleeveModulus: twisted ? sleeveShear : values.sleeveModulus,
  });
}

export function compute(values: BondValues) {
  const yields = strengthAtTemperature({ room: values.adhesiveStrength, kept: values.kept });
  const bond = bondOf(values);
  const breaks = equivalentElasticShear({ yieldShear: yields, plasticRatio: values.plasticRatio });
  return {
    ...bond,
    useful: usefulOverlap(bond.lambda),
    yields,
    breaks,
    /** Load may grow by this before the peak yields. */
    elasticReserve: yields / bond.peak,
    /** Load may grow by this before the bond comes apart: at its ends, or yielded from end to end. */
    onceReserve: Math.min(breaks / bond.peak, yields / bond.mean),
  };
}

export type BondResult = ReturnType<typeof compute>;
