import { STANDARD_GRAVITY } from '../quantity/index.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { dropFactor, fallSpeed } from './drop.ts';

export interface Supports {
  /** Mass that they bring to rest: all of it, or the effective mass of a landing off the centre [kg]. */
  mass: number;
  /** How many touch at once. */
  count: number;
  /** Of one of them, with root and ground in series [N/m]. */
  stiffness: number;
}

export interface FlatDrop {
  speed: number;
  /** Under the weight at rest [m]. */
  staticDeflection: number;
  /** Peak force over weight [-]. */
  factor: number;
  /** On all supports together [N]. */
  peakForce: number;
  /** On each [N]. */
  each: number;
  /** At the peak [m]. */
  deflection: number;
}

const HIGHEST = 1e4;

function weightAndRest({ mass, count, stiffness }: Supports): { weight: number; rest: number } {
  requireBetween(mass, 1e-6, 1e6, { parameter: 'mass', quantity: 'mass', kind: 'mass' });
  requireBetween(count, 1, 1000, { parameter: 'count', quantity: 'number of supports', kind: 'count' });
  requireBetween(stiffness, 1e-6, 1e12, {
    parameter: 'stiffness',
    quantity: 'stiffness of a support',
    kind: 'stiffness',
  });
  const weight = mass * STANDARD_GRAVITY;
  return { weight, rest: weight / (count * stiffness) };
}

/**
 * A craft that falls level on a number of equal supports: arms or feet.
 * $$\frac{F}{mg} = 1+\sqrt{1+\frac{2h}{\delta_{st}}},\quad \delta_{st} = \frac{mg}{n\,k},\quad F_1 = \frac Fn$$
 * @param supports - mass on them, how many, stiffness of one
 * @param height - of the fall [m]
 * @returns speed, peak force on all and on each, and how far they give
 * @validity all touch at once and share evenly, nothing bottoms out; measured peaks lie up to 1.5 times higher, see
 * peakForceBand
 * @throws InputError when a number is out of range
 * @source hibbeler-mechanics, § 14.4, with the supports as springs side by side
 */
export function flatDrop(supports: Supports, height: number): FlatDrop {
  const { weight, rest } = weightAndRest(supports);
  requireBetween(height, 0, HIGHEST, { parameter: 'height', quantity: 'height of the fall', kind: 'length' });
  const factor = dropFactor({ height, staticDeflection: rest });
  const peakForce = weight * factor;
  return {
    speed: fallSpeed(height),
    staticDeflection: rest,
    factor,
    peakForce,
    each: peakForce / supports.count,
    deflection: rest * factor,
  };
}

/**
 * Height of fall at which each support carries just what it may.
 * $$h = \frac{\delta_{st}}{2}\Bigl[\Bigl(\frac{n F_1}{mg}-1\Bigr)^2-1\Bigr]$$
 * @param supports - mass on them, how many, stiffness of one
 * @param allowable - force that one support stands [N]
 * @returns height, zero where the weight put on suddenly is already too much [m]
 * @validity as flatDrop
 * @throws InputError when a number is out of range
 * @derivation flatDrop solved for the height; below twice the weight there is none
 */
export function survivableHeight(supports: Supports, allowable: number): number {
  const { weight, rest } = weightAndRest(supports);
  requirePositive(allowable, { parameter: 'allowable', quantity: 'allowable force', kind: 'force' });
  const factor = (supports.count * allowable) / weight;
  return factor <= 2 ? 0 : (rest / 2) * ((factor - 1) ** 2 - 1);
}
