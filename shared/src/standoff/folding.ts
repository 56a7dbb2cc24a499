import { requireBetween, requireNotNegative, requirePositive } from '../require.ts';
import { standoffSection } from './round-standoff.ts';

export interface FoldingStandoffs {
  /** How many standoffs fold together [-]. */
  count: number;
  length: number;
  outerDiameter: number;
  bore: number;
  /** [Pa] */
  yieldStrength: number;
  /** Ends of each that bend: 2 where both are held, 1 where the head is loose. */
  hinges: 1 | 2;
}

/**
 * Side force at which all standoffs fold at their ends and go on folding.
 * $$F_p = \frac{n\,j\,M_p}{L},\quad M_p = \sigma_y\frac{D^3-d^3}{6}$$
 * @param body - count, sizes, strength, hinges of each
 * @returns folding force [N]
 * @validity ductile metal; every standoff shares, ends stronger than the wall, no hardening
 * @throws InputError when a number is out of range
 * @derivation a side movement u turns each of j hinges by u/L, so F u = n j M_p u/L; M_p is yield strength times the
 * plastic modulus of a ring
 */
export function foldingForce({ count, length, outerDiameter, bore, yieldStrength, hinges }: FoldingStandoffs): number {
  standoffSection({ outerDiameter, bore });
  requireBetween(count, 1, 1000, { parameter: 'count', quantity: 'number of standoffs', kind: 'count' });
  requireBetween(hinges, 1, 2, { parameter: 'hinges', quantity: 'ends that bend', kind: 'count' });
  requireBetween(length, 1e-4, 1e3, { parameter: 'length', quantity: 'standoff length', kind: 'length' });
  requireBetween(yieldStrength, 1e3, 1e12, { parameter: 'yieldStrength', quantity: 'yield strength', kind: 'stress' });
  return (count * hinges * yieldStrength * (outerDiameter ** 3 - bore ** 3)) / 6 / length;
}

export interface FoldingHit {
  /** Mass behind the blow [kg]. */
  mass: number;
  /** Contact and standoffs in series, while elastic [N/m]. */
  stiffness: number;
  /** Movement at the point of interest over force, while elastic [m/N]. */
  compliance: number;
  /** [N] */
  foldingForce: number;
}

const requireHit = ({ mass, stiffness, compliance, foldingForce: force }: FoldingHit): void => {
  requirePositive(mass, { parameter: 'mass', quantity: 'mass', kind: 'mass' });
  requirePositive(stiffness, { parameter: 'stiffness', quantity: 'stiffness', kind: 'stiffness' });
  requirePositive(compliance, { parameter: 'compliance', quantity: 'movement over force' });
  requirePositive(force, { parameter: 'foldingForce', quantity: 'folding force', kind: 'force' });
};

/**
 * Movement in a hit, folding included: elastic up to the folding force, then what energy is left over that force.
 * $$u = c F\ \text{while } F=v\sqrt{km}\le F_p,\quad u = c F_p + \frac{\tfrac12 m v^2 - F_p^2/2k}{F_p}\ \text{beyond}$$
 * @param hit - mass, stiffness, compliance, folding force
 * @param speed - of the hit [m/s]
 * @returns movement at the peak [m]
 * @validity small against the length; a body that folds flat is told by a movement near its height
 * @throws InputError when a number is out of range
 * @derivation energy: elastic store F_p²/2k, the rest is work of a constant force
 */
export function foldingMovement(hit: FoldingHit, speed: number): number {
  requireHit(hit);
  requireNotNegative(speed, { parameter: 'speed', quantity: 'speed of the hit', kind: 'speed' });
  const { mass, stiffness, compliance, foldingForce: limit } = hit;
  const elastic = Math.min(speed * Math.sqrt(stiffness * mass), limit);
  const left = Math.max(0, (mass * speed ** 2) / 2 - limit ** 2 / (2 * stiffness));
  return compliance * elastic + left / limit;
}

/**
 * Speed at which the movement uses up a gap.
 * $$v = \frac{g}{c\sqrt{km}}\ \text{or}\ \sqrt{\tfrac{2}{m}\bigl[F_p(g - cF_p) + F_p^2/2k\bigr]}$$
 * @param hit - mass, stiffness, compliance, folding force
 * @param gap - free room [m]
 * @returns speed [m/s]
 * @validity as foldingMovement
 * @throws InputError when a number is out of range
 * @derivation foldingMovement solved for the speed
 */
export function touchSpeed(hit: FoldingHit, gap: number): number {
  requireHit(hit);
  requirePositive(gap, { parameter: 'gap', quantity: 'gap to the electronics', kind: 'length' });
  const { mass, stiffness, compliance, foldingForce: limit } = hit;
  const elastic = compliance * limit;
  return gap <= elastic
    ? gap / compliance / Math.sqrt(stiffness * mass)
    : Math.sqrt((2 * (limit * (gap - elastic) + limit ** 2 / (2 * stiffness))) / mass);
}
