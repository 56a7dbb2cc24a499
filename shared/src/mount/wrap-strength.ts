import { requireBetween } from '../require.ts';
import { requireLength } from '../require-physical.ts';
import type { MountLoad, Tipping } from './bond-stress.ts';
import { bentFibreShare, loopStressFactor } from './loop.ts';
import { fibreArea, STANDARD_CARBON_FIBRE } from './tow.ts';
import type { WrapPath } from './wrap-path.ts';

/** Stiffness of cured hand-laid tow along over through its thickness: an estimate between resin-rich and pressed. */
export const WRAP_STIFFNESS_RATIO = 12;

export interface WrapBand {
  /** Turns of tow in the band [-]. */
  turns: number;
  /** Of one tow, mass per length [kg/m]. */
  linearDensity: number;
  /** Of the plate's edge, where the tow bends [m]. */
  edgeRadius: number;
  /** Along the tube [m]. */
  bandWidth: number;
  /** [-] */
  fibreFraction: number;
  /** Share of the fibre's strength that hands reach with uneven pull and waves [-]. */
  handLay: number;
}

export interface WrapStrength {
  /** Of the legs on one side of a band, with every knock-down [N]. */
  side: number;
  /** The same with every filament at full strength [N]. */
  ideal: number;
  /** Of the cured band [m]. */
  thickness: number;
  /** Share left because the inner turns carry more at the edge [-]. */
  edgeShare: number;
  /** Share left because each filament is bent round the edge [-]. */
  bendShare: number;
}

/**
 * Strength of the legs on one side of a band of tow.
 * $$F = n\,\frac{T_t}{\rho_f}\,\sigma_f\;k_{hand}\,\frac{k_{bend}}{\alpha}$$
 * @param band - turns, tow, edge radius, width, fibre fraction, share that hands reach
 * @returns strength of one side [N], ideal [N], thickness [m] and the knock-downs [-]
 * @validity standard-modulus carbon, wetted through and cured, every turn laid beside or on the others in one band. The
 * rise at the edge is that of a loop on a pin, on the careful side for a corner
 * @throws InputError when a number is out of range
 * @derivation area by mass times strength; one leg of each turn on each side. The innermost fibre of a loop carries α
 * times the mean and is bent besides, so mean·α + E d/(2r) = σ_f
 */
export function wrapStrength(band: WrapBand): WrapStrength {
  requireBetween(band.turns, 1, 1000, { parameter: 'turns', quantity: 'turns', kind: 'count' });
  requireLength(band.bandWidth, { parameter: 'bandWidth', quantity: 'width of the band' });
  requireBetween(band.fibreFraction, 0.1, 0.75, {
    parameter: 'fibreFraction',
    quantity: 'fibre volume fraction',
    kind: 'percent',
  });
  requireBetween(band.handLay, 0.01, 1, { parameter: 'handLay', quantity: 'share that hands reach', kind: 'percent' });
  const area = band.turns * fibreArea({ linearDensity: band.linearDensity, density: STANDARD_CARBON_FIBRE.density });
  const thickness = area / band.fibreFraction / band.bandWidth;
  const bendShare = bentFibreShare({ ...STANDARD_CARBON_FIBRE, edgeRadius: band.edgeRadius });
  const edgeShare =
    1 /
    loopStressFactor({
      innerRadius: band.edgeRadius,
      outerRadius: band.edgeRadius + thickness,
      stiffnessRatio: WRAP_STIFFNESS_RATIO,
    });
  const ideal = area * STANDARD_CARBON_FIBRE.tensileStrength;
  return { side: ideal * band.handLay * bendShare * edgeShare, ideal, thickness, edgeShare, bendShare };
}

/**
 * Pull in the legs on one side of the most loaded of two bands, one on each end of the plate.
 * $$F = \frac{N}{4\sin\psi}+\max\Bigl(\frac{M}{2R(1-\cos\psi)},\ \frac{M}{2 a\sin\psi}\Bigr)$$
 * @param path - of the tow, see wrapPath
 * @param bandSpacing - between the two bands, along the tube [m]
 * @param load - lift [N] and tipping [N·m]; shear and torque are left to the bond
 * @returns pull [N], and which way of tipping is worse
 * @validity the glue counted for nothing, the plate stiff; it rocks on the tube's top when tipped sideways, and about the
 * other band when tipped lengthwise
 * @throws InputError when a load is negative or the spacing is out of range
 * @derivation equilibrium of the plate: lift on four sides, sideways tipping on two, lengthwise on the two of one band
 */
export function wrapPull(
  path: Pick<WrapPath, 'downShare' | 'lever'>,
  bandSpacing: number,
  load: Pick<MountLoad, 'lift' | 'tipping'>,
): { pull: number; worst: Tipping } {
  requireLength(bandSpacing, { parameter: 'bandSpacing', quantity: 'distance between the bands' });
  requireBetween(load.lift, 0, 1e9, { parameter: 'lift', quantity: 'lift', kind: 'force' });
  requireBetween(load.tipping, 0, 1e9, { parameter: 'tipping', quantity: 'tipping moment', kind: 'moment' });
  requireBetween(path.downShare, 1e-3, 1, {
    parameter: 'plateWidth',
    quantity: 'share of a leg that pulls down',
    kind: 'ratio',
  });
  requireLength(path.lever, { parameter: 'plateWidth', quantity: 'lever of a leg' });
  const across = load.tipping / (2 * path.lever);
  const along = load.tipping / (2 * bandSpacing * path.downShare);
  return {
    pull: load.lift / (4 * path.downShare) + Math.max(across, along),
    worst: across >= along ? 'across' : 'along',
  };
}
