/** Holes, slots and wire exits in an arm away from its root screws. */
export { bendingHoleStress, biaxialHoleStress } from './hole-field.ts';
export { type DrilledArm, type DrilledHole, type HoleMaterial, type HolePlace } from './drilled-arm.ts';
export { drilledTubeArm, type DrilledTubeArm } from './drilled-tube-arm.ts';
export { drilledStripArm, type DrilledStripArm } from './drilled-strip-arm.ts';
export { holeInArm, type HoleInArm, type HoleStation } from './hole-in-arm.ts';
export { slottedTwist, type SlottedLength, type SlottedTwist } from './slotted-twist.ts';
export { tipSlot, type TipSlot, type TipSlotResult } from './tip-slot.ts';
export { wireSlot, type WireSlot, type WireSlotResult } from './wire-slot.ts';
