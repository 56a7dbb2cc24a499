import {
  mountBondStress,
  tangentBondWidth,
  wrapPath,
  wrapPull,
  wrapStrength,
  type MountLoad,
  type TangentBond,
} from '../../mount/index.ts';
import { scaled, type Use } from '../check.ts';
import type { FrameRecord } from '../record.ts';

/** Widest gap that paste fills beside a tube; common practice, no source. */
export const FILL_LIMIT = 1e-3;
/** Fibre by volume in a wrap pressed by hand. */
export const WRAP_FIBRE = 0.45;

/** The glue under the record's motor plate. */
export function mountBond({ arm, mount }: FrameRecord): TangentBond {
  return tangentBondWidth({
    tubeDiameter: arm.tube.outerDiameter,
    bondLine: mount.bondLine,
    fillLimit: FILL_LIMIT,
    filletRadius: mount.fillet,
    plateWidth: mount.plateWidth,
  });
}

/** Shares of strength in bond and wrap that a load on the mount uses, each alone. */
export function mountUses(record: FrameRecord, bond: TangentBond, load: MountLoad): Use[] {
  const { mount, materials, arm } = record;
  const { lapShearStrength, tensionStrength } = materials.adhesive;
  const { use } = mountBondStress(bond, mount.plateLength, load, {
    shear: lapShearStrength.typical,
    tension: tensionStrength.typical,
  });
  const glue: Use = {
    mode: 'mount-bond',
    quantity: 'percent',
    perForce: use,
    allowable: scaled(lapShearStrength, 1 / lapShearStrength.typical),
  };
  const spacing = mount.plateLength - mount.bandWidth;
  if (mount.wrapTurns < 1 || spacing <= 0 || load.lift + load.tipping === 0) return [glue];
  const { handLay } = materials.tow;
  const strength = wrapStrength({
    turns: mount.wrapTurns,
    linearDensity: mount.tow,
    edgeRadius: mount.edgeRadius,
    bandWidth: mount.bandWidth,
    fibreFraction: WRAP_FIBRE,
    handLay: 1,
  }).side;
  const path = wrapPath({ tubeDiameter: arm.tube.outerDiameter, ...mount });
  return [
    glue,
    {
      mode: 'mount-wrap',
      quantity: 'force',
      perForce: wrapPull(path, spacing, load).pull,
      allowable: scaled(handLay, strength),
    },
  ];
}
