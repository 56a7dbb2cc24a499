import { InputError } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';
import type { ThreadLimits } from './thread-limits.ts';

export interface ThreadShearArea {
  /** Of the tapped hole's thread for each length of engagement [m²/m]. */
  tapped: number;
  /** Of the screw's thread for each length of engagement [m²/m]. */
  screw: number;
}

/** tan 30° as the standard writes it. */
const FLANK = 0.57735;

/**
 * Metal in shear for each length of thread engaged.
 * $$a_n = \frac{\pi d_{min}}{P}\Bigl[\frac{P}{2}+0.57735(d_{min}-D_{2,max})\Bigr],\quad
 * a_s = \frac{\pi D_{1,max}}{P}\Bigl[\frac{P}{2}+0.57735(d_{2,min}-D_{1,max})\Bigr]$$
 * @param limits - of screw thread and tapped hole
 * @returns shear areas per length [m²/m]
 * @validity worst parts that the tolerances allow, threads full over the length
 * @throws InputError when the limits leave no thread
 * @source fed-h28-2, thread shear areas
 */
export function threadShearArea({
  thread,
  majorLeast,
  pitchLeast,
  tappedPitchLargest,
  tappedMinorLargest,
}: ThreadLimits): ThreadShearArea {
  requireBetween(thread.pitch, 1e-5, 0.1, { parameter: 'pitch', quantity: 'pitch', kind: 'length' });
  const diameters = { majorLeast, pitchLeast, tappedPitchLargest, tappedMinorLargest };
  for (const [parameter, value] of Object.entries(diameters)) {
    requireBetween(value, 1e-4, 1, { parameter, quantity: 'limit of the thread', kind: 'length' });
  }
  const half = thread.pitch / 2;
  const area = (diameter: number, overlap: number): number =>
    ((Math.PI * diameter) / thread.pitch) * (half + FLANK * overlap);
  const tapped = area(majorLeast, majorLeast - tappedPitchLargest);
  const screw = area(tappedMinorLargest, pitchLeast - tappedMinorLargest);
  if (tapped <= 0 || screw <= 0) {
    throw new InputError({
      parameter: 'majorLeast',
      quantity: 'least major diameter',
      value: majorLeast,
      rule: 'must be large enough for screw and hole to touch',
      kind: 'length',
    });
  }
  return { tapped, screw };
}

/** Turns lost at the ends of an engaged thread: the screw's point and the countersink of the hole [pitches]. */
export const LOST_TURNS = 2;

export interface TappedHole {
  limits: ThreadLimits;
  /** Screw length inside the tapped part [m]. */
  engagement: number;
  /** Of the tapped metal [Pa]. */
  shearStrength: number;
  /** Of the screw's metal; its thread is not checked where this is not given [Pa]. */
  screwShearStrength?: number;
}

/**
 * Pull at which the thread strips.
 * $$F = \min(a_n\tau_n,\ a_s\tau_s)\,(L - 2P)$$
 * @param hole - thread, engagement, shear strengths
 * @returns force [N]; 0 where the engagement is used up by incomplete turns
 * @validity slow pull; a thread torn once before is weaker. Two turns at the ends do not count
 * @throws InputError when a number is out of range
 * @source fed-h28-2, thread shear areas; common-practice for the lost turns
 */
export function strippingForce({ limits, engagement, shearStrength, screwShearStrength }: TappedHole): number {
  const area = threadShearArea(limits);
  requireBetween(engagement, 1e-4, 1, { parameter: 'engagement', quantity: 'thread engagement', kind: 'length' });
  requirePositive(shearStrength, {
    parameter: 'shearStrength',
    quantity: 'shear strength of the tapped metal',
    kind: 'stress',
  });
  let perLength = area.tapped * shearStrength;
  if (screwShearStrength !== undefined) {
    requirePositive(screwShearStrength, {
      parameter: 'screwShearStrength',
      quantity: 'shear strength of the screw',
      kind: 'stress',
    });
    perLength = Math.min(perLength, area.screw * screwShearStrength);
  }
  return perLength * Math.max(0, engagement - LOST_TURNS * limits.thread.pitch);
}

/**
 * Engagement that holds a pull.
 * $$L = \frac{F}{\min(a_n\tau_n,\ a_s\tau_s)} + 2P$$
 * @param hole - thread and shear strengths
 * @param force - pull to hold [N]
 * @returns engagement [m]
 * @validity as strippingForce
 * @throws InputError when a number is out of range
 * @source fed-h28-2, thread shear areas; common-practice for the lost turns
 */
export function engagementFor(hole: Omit<TappedHole, 'engagement'>, force: number): number {
  requireBetween(force, 0, 1e9, { parameter: 'force', quantity: 'force to hold', kind: 'force' });
  const lost = LOST_TURNS * hole.limits.thread.pitch;
  const perUnit = strippingForce({ ...hole, engagement: lost + 0.01 }) / 0.01;
  return force / perUnit + lost;
}
