import { tipSlot, wireSlot, type TipSlotResult, type WireSlotResult } from '@frameworthy/shared/notch';
import { roundTubeSection, type Section } from '@frameworthy/shared/section';
import { holeMaterial, wallNamed } from '../notch-inputs.ts';
import type { NotchValues } from './inputs.ts';

export interface NotchResult {
  slot: TipSlotResult;
  wires: WireSlotResult;
  whole: Section;
  /** Stiffness in twist of the open length over that of whole tube, one end held; 1 where nothing is open [-]. */
  heldShare: number;
  /** The same, free to warp [-]. */
  freeShare: number;
  /** Stress at the slot's corners from the twist over the notched strength [-]. */
  warpingUse: number;
}

export function compute(values: NotchValues): NotchResult {
  const tube = { outerDiameter: values.outerDiameter, wall: values.wall };
  const wall = wallNamed(values.tubeMaterial, values);
  const slot = tipSlot({
    ...values,
    tube,
    material: holeMaterial(wall, values),
    bendingStrength: wall.bendingStrength,
    shearStrength: wall.shearStrength,
    youngsModulus: wall.modulusX,
    shearModulus: wall.shearModulus,
  });
  const wires = wireSlot({ ...values, slotLength: values.slotReach + values.tubePast });
  return {
    slot,
    wires,
    whole: roundTubeSection(tube),
    heldShare: slot.openLength === 0 ? 1 : slot.twist.heldShare,
    freeShare: slot.openLength === 0 ? 1 : slot.twist.share,
    warpingUse: slot.twist.warpingStress / (wall.bendingStrength * slot.notchedRatio),
  };
}
