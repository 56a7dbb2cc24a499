import { requireFinite, requireNotNegative, requirePositive } from '../require.ts';
import { requireModulus, requireStrength } from '../require-physical.ts';
import {
  openTubeTorsion,
  roundTubeSection,
  slottedTubeSection,
  type Plane,
  type RoundTube,
  type Section,
} from '../section/index.ts';
import { tensionRatios } from './bending-field.ts';
import type { HoleMaterial } from './drilled-arm.ts';
import { slottedTwist, type SlottedTwist } from './slotted-twist.ts';

export interface TipSlot {
  tube: RoundTube;
  slotWidth: number;
  slotFaces: Plane;
  /** Inner end of the slot, inwards of the motor axis; negative where it ends outside of it [m]. */
  slotReach: number;
  /** How far inwards of the motor axis the mount grips the tube all round [m]. */
  mountGrip: number;
  /** From the outer root screw to the motor axis [m]. */
  armLength: number;
  /** At the motor, up or down [N]. */
  verticalForce: number;
  /** At the motor, in the plane of the propellers [N]. */
  horizontalForce: number;
  /** Of the sideways force above the tube's axis [m]. */
  strikeHeight: number;
  /** Of the propeller, about the motor axis [N·m]. */
  reactionTorque: number;
  material: HoleMaterial;
  /** [Pa] */
  bendingStrength: number;
  /** [Pa] */
  shearStrength: number;
  /** [Pa] */
  youngsModulus: number;
  /** [Pa] */
  shearModulus: number;
}

export interface TipSlotResult {
  section: Section & { centroidOffset: number };
  /** Of the strength at the round inner end, where the slot stands at the extreme fibre [-]. */
  notchedRatio: number;
  /** Moments at the inner end of the slot [N·m]. */
  moment: { vertical: number; horizontal: number };
  /** Stress over strength of the open section there [-]. */
  use: { vertical: number; horizontal: number };
  /** How far inwards the slot may reach before it is weaker than the arm's root [m]. */
  farthest: number;
  /** Slotted length that neither mount nor whole tube holds [m]. */
  openLength: number;
  /** Torque about the shear centre of the open section [N·m]. */
  torque: number;
  /** Of the shear centre from the tube's axis [m]. */
  shearCentre: number;
  twist: SlottedTwist;
  /** Torque that the open wall bears, free to warp [N·m]. */
  openTorque: number;
  /** Torque that the whole tube bears [N·m]. */
  wholeTorque: number;
}

/**
 * A slot that is open at the tip of a tube arm: bending at its inner end, how far it may reach, and its torsion.
 * $$u = \frac{M c}{I_{open}\,s\,\sigma_0},\quad a_{max} = \min\Bigl(L\frac{s Z_{open}}{Z},\;
 * L\,\frac{Z_{open}\sigma_0 - T_r}{Z\sigma_0 - T_r}\Bigr),\quad T = F_h (z+e)\ \text{or}\ F_h z + F_v e$$
 * @param slot - tube, slot, mount, loads at the motor, material
 * @returns uses, reach, torque and twist
 * @validity tube of one section; the root whole. The notched ratio is that of a round hole as wide as the slot, on the
 * open section's own stress: on the safe side. A slot that ends outside of the motor axis carries no moment
 * @throws InputError when the sizes do not make a slotted tube or a number is out of range
 * @derivation the root breaks at F = σ0 Z/L; with that force the moment at a reach a is F a, and sideways the reaction
 * torque T_r stands in both. Forces through the tube's axis miss the shear centre of the open section by e
 */
export function tipSlot(slot: TipSlot): TipSlotResult {
  const { tube, slotWidth, slotFaces, slotReach, mountGrip, armLength, strikeHeight, reactionTorque } = slot;
  const section = slottedTubeSection({ ...tube, slotWidth, slotFaces });
  requireFinite(slotReach, { parameter: 'slotReach', quantity: 'reach of the slot', kind: 'length' });
  requireFinite(mountGrip, { parameter: 'mountGrip', quantity: 'reach of the mount', kind: 'length' });
  requirePositive(armLength, { parameter: 'armLength', quantity: 'length of the arm', kind: 'length' });
  const loads = [slot.verticalForce, slot.horizontalForce, strikeHeight, reactionTorque];
  for (const [i, parameter] of ['verticalForce', 'horizontalForce', 'strikeHeight', 'reactionTorque'].entries())
    requireNotNegative(loads[i]!, { parameter, quantity: 'load at the motor' });
  requireStrength(slot.bendingStrength, { parameter: 'bendingStrength', quantity: 'bending strength' });
  requireStrength(slot.shearStrength, { parameter: 'shearStrength', quantity: 'shear strength' });
  requireModulus(slot.youngsModulus, { parameter: 'youngsModulus', quantity: 'modulus along the tube' });

  const ratios = tensionRatios(slotWidth, slot.material);
  const notchedRatio = Math.min(ratios.point, ratios.mean);
  const whole = roundTubeSection(tube);
  const strongest = (slot.bendingStrength * whole.vertical.secondMomentOfArea) / whole.vertical.extremeFibre;
  const bears = (plane: Plane): number =>
    ((slot.bendingStrength * section[plane].secondMomentOfArea) / section[plane].extremeFibre) *
    (plane === slotFaces ? notchedRatio : 1);
  const inside = Math.max(0, slotReach);
  const moment = {
    vertical: slot.verticalForce * inside,
    horizontal: inside > 0 ? slot.horizontalForce * inside + reactionTorque : 0,
  };
  // A root that the reaction torque alone breaks leaves no force to compare with.
  const sideways =
    strongest > reactionTorque ? (bears('horizontal') - reactionTorque) / (strongest - reactionTorque) : 0;
  const { shearCentre, torsionConstant } = openTubeTorsion({ ...tube, slotWidth });
  const openLength = Math.max(0, slotReach - Math.max(0, mountGrip));
  const torque =
    slot.horizontalForce * strikeHeight +
    (slotFaces === 'vertical' ? slot.horizontalForce : slot.verticalForce) * shearCentre;
  return {
    section,
    notchedRatio,
    moment,
    use: { vertical: moment.vertical / bears('vertical'), horizontal: moment.horizontal / bears('horizontal') },
    farthest: armLength * Math.max(0, Math.min(bears('vertical') / strongest, sideways)),
    openLength,
    torque,
    shearCentre,
    twist: slottedTwist({ ...slot, length: openLength, torque }),
    openTorque: (slot.shearStrength * torsionConstant) / tube.wall,
    wholeTorque: (slot.shearStrength * whole.torsionConstant) / (tube.outerDiameter / 2),
  };
}
