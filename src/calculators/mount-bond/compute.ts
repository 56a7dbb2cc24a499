import { strengthAtTemperature } from '@frameworthy/shared/bond';
import {
  MOUNT_CASES,
  mountBondStress,
  tangentBondWidth,
  type BondStress,
  type MountCase,
  type MountLoad,
  type TangentBond,
} from '@frameworthy/shared/mount';
import { loadsAt, worstOf } from '../mount-inputs.ts';
import { GLUE_DENSITY, type BondValues } from './inputs.ts';

export interface BondResult {
  bond: TangentBond;
  loads: Readonly<Record<MountCase, MountLoad>>;
  stress: Readonly<Record<MountCase, BondStress>>;
  worst: MountCase;
  /** Deceleration at which the bond is used up, in g. */
  holds: number;
  area: number;
  glueMass: number;
}

export function compute(values: BondValues): BondResult {
  const bond = tangentBondWidth({ ...values, tubeDiameter: values.outerDiameter });
  const loads = loadsAt(values, values.plateThickness);
  const strength = {
    shear: strengthAtTemperature({ room: values.adhesiveStrength, kept: values.kept }),
    tension: strengthAtTemperature({ room: values.tensionStrength, kept: values.kept }),
  };
  const each = MOUNT_CASES.map(
    (name) => [name, mountBondStress(bond, values.bondLength, loads[name], strength)] as const,
  );
  const stress = Object.fromEntries(each) as Record<MountCase, BondStress>;
  const uses = Object.fromEntries(each.map(([name, { use }]) => [name, use])) as Record<MountCase, number>;
  return {
    bond,
    loads,
    stress,
    worst: worstOf(uses),
    holds: values.deceleration / Math.max(uses.stop, uses.pull),
    area: bond.width * values.bondLength,
    glueMass: bond.glueArea * values.bondLength * GLUE_DENSITY,
  };
}
