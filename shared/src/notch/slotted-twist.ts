import { requireFinite, requireNotNegative } from '../require.ts';
import { requireModulus } from '../require-physical.ts';
import { openTubeTorsion, roundTubeSection, slottedTubeSection, type RoundTube } from '../section/index.ts';

export interface SlottedLength {
  tube: RoundTube;
  /** [m] */
  slotWidth: number;
  /** Slotted length that nothing holds closed, between the mount and the whole tube [m]. */
  length: number;
  /** About the tube's axis [N·m]. */
  torque: number;
  /** Along the tube [Pa]. */
  youngsModulus: number;
  /** Of the wall [Pa]. */
  shearModulus: number;
}

export interface SlottedTwist {
  /** Twist of the same length of whole tube [rad]. */
  whole: number;
  /** Both ends free to warp: the most that it can be [rad]. */
  free: number;
  /** One end kept from warping by the whole tube, the other free: an estimate [rad]. */
  held: number;
  /** Stress along the tube at the edges of the slot where the whole tube begins [Pa]. */
  warpingStress: number;
  /** Shear stress in the open wall, free to warp [Pa]. */
  shearStress: number;
  /** Torsion constant, slotted over whole [-]. */
  share: number;
  /** Stiffness with one end held over that of the whole tube [-]. */
  heldShare: number;
}

/** 1 - tanh(u)/u without losing its digits where u is small. */
const lag = (u: number): number => (u < 0.02 ? u ** 2 / 3 - (2 * u ** 4) / 15 : 1 - Math.tanh(u) / u);

/**
 * Twist of a slotted length of tube between two bounds: an open section free to warp, and the same with one end held.
 * $$\varphi_{free} = \frac{T l}{G J},\quad \varphi_{held} = \frac{T l}{G}\Bigl[\frac{1}{I_p} + \frac1J\Bigl(1-\frac{\tanh k l}{k l}\Bigr)\Bigr],
 * \quad k = \sqrt{\frac{G J}{E\,\Gamma}}$$
 * @param slotted - tube, slot, free length, torque, moduli
 * @returns twist of the whole tube, free and held; stresses
 * @validity linear, thin wall, uniform torque. A short slot lies near the held value, a long one near the free one. The
 * whole tube behind it also gives a little, so that the held value is on the low side
 * @throws InputError when the sizes do not make a slotted tube or a number is out of range
 * @derivation Vlasov's torsion of open thin-walled bars, G J φ' - E Γ φ''' = T with φ' = 0 at the held end and φ'' = 0 at
 * the free one. Where nothing can warp every point shears as it turns, which the polar second moment of the slotted
 * section gives; Vlasov leaves it out, so it is added. The bimoment at the held end is (T/k) tanh kl
 */
export function slottedTwist(slotted: SlottedLength): SlottedTwist {
  const { tube, slotWidth, length, torque, youngsModulus, shearModulus } = slotted;
  const open = openTubeTorsion({ ...tube, slotWidth });
  const section = slottedTubeSection({ ...tube, slotWidth, slotFaces: 'vertical' });
  requireNotNegative(length, { parameter: 'length', quantity: 'slotted length', kind: 'length' });
  requireFinite(torque, { parameter: 'torque', quantity: 'torque', kind: 'moment' });
  requireModulus(youngsModulus, { parameter: 'youngsModulus', quantity: 'modulus along the tube' });
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'shear modulus' });
  const { torsionConstant, warpingConstant } = open;
  const decay = Math.sqrt((shearModulus * torsionConstant) / (youngsModulus * warpingConstant));
  const polar = section.vertical.secondMomentOfArea + section.horizontal.secondMomentOfArea;
  const unit = (torque * length) / shearModulus;
  const free = unit / torsionConstant;
  const given = Math.min(1 / torsionConstant, 1 / polar + lag(decay * length) / torsionConstant);
  const bimoment = (torque * Math.tanh(decay * length)) / decay;
  const whole = roundTubeSection(tube).torsionConstant;
  return {
    whole: unit / whole,
    free,
    held: unit * given,
    warpingStress: (Math.abs(bimoment) * open.sectorialCoordinate) / warpingConstant,
    shearStress: (Math.abs(torque) * tube.wall) / torsionConstant,
    share: torsionConstant / whole,
    heldShare: 1 / (whole * given),
  };
}
