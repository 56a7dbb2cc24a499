import type { Warning } from '../error.ts';
import type { BendingPlane, Plane } from '../section/index.ts';

/** Where the hole stands for the bending considered. */
export type HolePlace = 'extreme fibre' | 'neutral axis' | 'between';

export interface HoleMaterial {
  /** K at a small hole in a wide sheet of the laminate, 3 where it is isotropic [-]. */
  holeFactor: number;
  /** d0 of the point stress criterion [m]. */
  pointLength: number;
  /** a0 of the average stress criterion [m]. */
  meanLength: number;
}

export interface DrilledHole {
  /** [m] */
  holeDiameter: number;
  holeAxis: Plane;
  /** Plane in which the arm is bent. */
  bending: Plane;
  material: HoleMaterial;
}

/** What a hole leaves of the bending strength of the section that it stands in: shares of the section without it. */
export interface DrilledArm {
  place: HolePlace;
  gross: { area: number } & BendingPlane;
  net: { area: number } & BendingPlane;
  /** Elastic section modulus, net over gross [-]. */
  netShare: number;
  /** Peak stress at the hole over the outer-fibre stress without it, isotropic wall [-]. */
  isotropicFactor: number;
  /** The same with the constants of the laminate [-]. */
  laminateFactor: number;
  /** Left if the part broke where the elastic peak reaches the strength [-]. */
  elasticShare: number;
  /** Left by the point stress criterion [-]. */
  pointShare: number;
  /** Left by the average stress criterion [-]. */
  meanShare: number;
  /** The lowest of net section and both criteria [-]. */
  notchedShare: number;
  /** Left of the strength against the shear of a force across the arm [-]. */
  shearShare: number;
  warnings: readonly Warning[];
}

type Given = Omit<DrilledArm, 'netShare' | 'elasticShare' | 'notchedShare'>;

/** Section moduli and the shares that follow from them; a hole never adds strength. */
export function withShares(given: Given): DrilledArm {
  const modulus = ({ secondMomentOfArea, extremeFibre }: BendingPlane): number => secondMomentOfArea / extremeFibre;
  const netShare = Math.min(1, modulus(given.net) / modulus(given.gross));
  const pointShare = Math.min(1, given.pointShare);
  const meanShare = Math.min(1, given.meanShare);
  return {
    ...given,
    netShare,
    elasticShare: Math.min(netShare, 1 / given.laminateFactor),
    pointShare,
    meanShare,
    notchedShare: Math.min(netShare, pointShare, meanShare),
  };
}
