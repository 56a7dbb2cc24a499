import { requireBetween } from '../require.ts';
import { requireLength, requireModulus, requireStrength } from '../require-physical.ts';
import type { AdhesiveLayer } from './single-lap.ts';

export interface DuctileAdhesive extends AdhesiveLayer {
  /** Shear stress at which the adhesive yields [Pa]. */
  yieldShear: number;
  /** Shear strain after yield over the elastic strain at yield; 0 for a brittle adhesive. */
  plasticRatio: number;
}

export function requireDuctile({ shearModulus, thickness, yieldShear, plasticRatio }: DuctileAdhesive): void {
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'adhesive shear modulus' });
  requireLength(thickness, { parameter: 'bondLine', quantity: 'bond-line thickness' });
  requireStrength(yieldShear, { parameter: 'strength', quantity: 'adhesive shear strength' });
  requireBetween(plasticRatio, 0, 1000, {
    parameter: 'plasticRatio',
    quantity: 'plastic over elastic strain',
    kind: 'ratio',
  });
}

export interface DoubleLapStiffness {
  /** Modulus times thickness of the sheet in the middle [N/m]. */
  inner: number;
  /** Modulus times thickness of one sheet outside [N/m]. */
  outer: number;
}

function requireStiffness({ inner, outer }: DoubleLapStiffness): void {
  requireBetween(inner, 1e-3, 1e15, {
    parameter: 'inner',
    quantity: 'stiffness of the inner sheet',
    kind: 'stiffness',
  });
  requireBetween(outer, 1e-3, 1e15, { parameter: 'outer', quantity: 'stiffness of an outer sheet', kind: 'stiffness' });
}

/**
 * Most that a long double lap carries before its adhesive breaks at the end.
 * $$P = \sqrt{2h\tau_p\left(\tfrac12\gamma_e+\gamma_p\right)\,2E_it_i\left(1+\frac{E_it_i}{2E_ot_o}\right)}$$
 * @param given - the adhesive, and the stiffness of the sheets [N/m]
 * @returns load per width of the whole joint [N/m]; the lower of the two ends
 * @validity long overlap; peel at the ends of the outer sheets does not break it first
 * @throws InputError for values that are not physical
 * @source hart-smith-1973-doublelap, plateau of the double lap
 */
export function doubleLapPlateau({
  adhesive,
  stiffness,
}: {
  adhesive: DuctileAdhesive;
  stiffness: DoubleLapStiffness;
}): number {
  requireDuctile(adhesive);
  requireStiffness(stiffness);
  const { shearModulus, thickness, yieldShear, plasticRatio } = adhesive;
  const elasticStrain = yieldShear / shearModulus;
  const energy = 2 * thickness * yieldShear * elasticStrain * (0.5 + plasticRatio);
  const both = 2 * stiffness.outer;
  const innerEnd = 2 * stiffness.inner * (1 + stiffness.inner / both);
  const outerEnd = 2 * both * (1 + both / stiffness.inner);
  return Math.sqrt(energy * Math.min(innerEnd, outerEnd));
}

/**
 * Elastic peak shear at which a long bond of a ductile adhesive breaks: what it would show had it not yielded.
 * $$\tau_{eq} = \tau_p\sqrt{1+2\gamma_p/\gamma_e}$$
 * @param given - shear stress at yield [Pa]; plastic over elastic strain
 * @returns shear stress to hold an elastic peak against [Pa]
 * @validity long overlap: at least the useful overlap plus what yields; one overload, not fatigue
 * @throws InputError for values that are not physical
 * @derivation In a long bond the end load is fixed by the energy under the adhesive's stress-strain curve,
 * N² ∝ h τp (γe/2 + γp). Put the elastic triangle τ²h/(2G) in its place and solve for τ. The plateau of the double lap
 * is the same statement.
 */
export function equivalentElasticShear({
  yieldShear,
  plasticRatio,
}: {
  yieldShear: number;
  plasticRatio: number;
}): number {
  requireStrength(yieldShear, { parameter: 'strength', quantity: 'adhesive shear strength' });
  requireBetween(plasticRatio, 0, 1000, {
    parameter: 'plasticRatio',
    quantity: 'plastic over elastic strain',
    kind: 'ratio',
  });
  return yieldShear * Math.sqrt(1 + 2 * plasticRatio);
}
