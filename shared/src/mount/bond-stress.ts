import { requireLength, requireLoad, requireStrength } from '../require-physical.ts';
import { gapAt, type TangentBond } from './tangent-bond.ts';

/** What a motor puts into its mount; the directions of shear and tipping are not known beforehand. */
export interface MountLoad {
  /** In the plane of the plate [N]. */
  shear: number;
  /** Off the plate [N]. */
  lift: number;
  /** About the motor's axis [N·m]. */
  torque: number;
  /** About a level axis, taken at the surface that is looked at [N·m]. */
  tipping: number;
}

export interface BondStrength {
  /** [Pa] */
  shear: number;
  /** Across the bond [Pa]. */
  tension: number;
}

/** Sideways over the tube, or lengthwise along it. */
export type Tipping = 'across' | 'along';

export interface BondStress {
  /** Shear spread evenly over the bond; the torque is not in it [Pa]. */
  meanShear: number;
  /** Highest shear, at the end of the bond [Pa]. */
  peakShear: number;
  /** Highest pull across the bond, tipped sideways over the tube or lengthwise along it [Pa]. */
  tension: Readonly<Record<Tipping, number>>;
  /** Share of the adhesive's strength where both together use most [-]. */
  use: number;
  /** Which way of tipping is worse. */
  worst: Tipping;
  /** Distance of the highest pull from the middle, across the tube, when tipped sideways [m]. */
  peakAt: number;
}

const STEPS = 20;

/** ∫ x²/g dx over the width: x² = R² − H² + 2Hg − g² leaves ∫ dx/g, the width and ∫ g dx. */
function tippingIntegral({ radius, bondLine, width, workingWidth, edgeGap }: TangentBond): number {
  const height = radius + bondLine;
  const half = width / 2;
  const root = Math.sqrt(Math.max(0, radius ** 2 - half ** 2));
  const gapArea = 2 * height * half - (half * root + radius ** 2 * Math.asin(Math.min(1, half / radius)));
  const exact = 4 * height * half - bondLine * (2 * radius + bondLine) * (workingWidth / bondLine) - gapArea;
  // A bond of a hair's width loses its digits in the differences; it is never less than with its edge gap all over.
  return Math.max(exact, (2 * half ** 3) / (3 * edgeGap));
}

/**
 * Stress in the glue between a stiff plate and a stiff tube under shear, lift, torque and tipping. Thin glue in the middle
 * is stiff and takes most; thick glue at the edges takes little.
 * $$\sigma = \frac{1}{g(x)}\Bigl[\frac{N}{L S_0}+\frac{M x}{L S_2}\Bigr]\ \text{or}\ \frac{1}{g(x)}\Bigl[\frac{N}{L S_0}+\frac{6M}{L^2 S_0}\Bigr],\quad
 * \tau = \frac{1}{g(x)}\Bigl[\frac{V}{L S_0}+\frac{T\sqrt{x^2+L^2/4}}{L S_2+L^3S_0/12}\Bigr],\quad S_0=\int\frac{dx}{g},\ S_2=\int\frac{x^2}{g}dx$$
 * $$u = \sqrt{(\tau/\tau_a)^2+(\sigma/\sigma_a)^2}$$
 * @param bond - width and gap, see tangentBondWidth
 * @param length - of the plate along the tube [m]
 * @param load - shear and lift [N], torque and tipping [N·m]
 * @param strength - of the adhesive or of the laminate's skin, whichever is less [Pa]
 * @returns stresses [Pa] and the share of strength that shear and pull use together [-]
 * @validity elastic glue, parts that do not bend: a thin plate or wall peels at its edge sooner. Shear and torque are added
 * as if they pointed the same way
 * @throws InputError when a load is negative or a size or strength is not physical
 * @source brewer-1988-quadratic, quadratic sum of interlaminar stresses
 * @derivation plate moved by δ and turned by θ: the glue at x, y is stretched by (δ + θx)/g(x). Integrating force and
 * moment over width and length gives δ and θ
 */
export function mountBondStress(
  bond: TangentBond,
  length: number,
  load: MountLoad,
  strength: BondStrength,
): BondStress {
  requireLength(length, { parameter: 'plateLength', quantity: 'length of the plate' });
  for (const parameter of ['shear', 'lift'] as const)
    requireLoad(load[parameter], { parameter, quantity: 'load on the mount', kind: 'force' });
  for (const parameter of ['torque', 'tipping'] as const)
    requireLoad(load[parameter], { parameter, quantity: 'load on the mount', kind: 'moment' });
  requireStrength(strength.shear, { parameter: 'adhesiveStrength', quantity: 'shear strength of the adhesive' });
  requireStrength(strength.tension, { parameter: 'tensionStrength', quantity: 'strength across the bond' });
  const { radius, bondLine, width } = bond;
  const first = bond.workingWidth / bondLine;
  const second = tippingIntegral(bond);
  const half = width / 2;
  const height = radius + bondLine;
  const peakAt = Math.min(half, radius * Math.sqrt(1 - (radius / height) ** 2));
  const lift = load.lift / (length * first);
  const along = (6 * load.tipping) / (length ** 2 * first);
  const polar = length * second + (length ** 3 * first) / 12;
  const at = (x: number) => {
    const gap = gapAt(radius, bondLine, x);
    const shear = (load.shear / (length * first) + (load.torque * Math.hypot(x, length / 2)) / polar) / gap;
    const tensions = {
      across: (lift + (load.tipping * x) / (length * second)) / gap,
      along: (lift + along) / gap,
    };
    return { shear, tensions };
  };
  const peak = { shear: 0, across: 0, along: 0 };
  let [use, worst]: [number, Tipping] = [-1, 'across'];
  const places = Array.from({ length: STEPS + 1 }, (_, i) => (half * i) / STEPS).concat(peakAt);
  for (const x of places) {
    const { shear, tensions } = at(x);
    peak.shear = Math.max(peak.shear, shear);
    for (const way of ['across', 'along'] as const) {
      peak[way] = Math.max(peak[way], tensions[way]);
      const together = Math.hypot(shear / strength.shear, tensions[way] / strength.tension);
      if (together > use) [use, worst] = [together, way];
    }
  }
  return {
    meanShear: load.shear / (width * length),
    peakShear: peak.shear,
    tension: { across: peak.across, along: peak.along },
    use,
    worst,
    peakAt,
  };
}
