import { requireBetween, requireNotNegative, requirePositive } from '../require.ts';
import { pitchDiameter, type Thread } from './thread.ts';

export interface Tightening {
  /** Tightening torque T [N·m]. */
  torque: number;
  /** Torque coefficient K: about 0.20 dry, 0.15 oiled [-]. */
  torqueCoefficient: number;
  /** Nominal diameter of the screw d [m]. */
  diameter: number;
}

export interface Preload {
  nominal: number;
  low: number;
  high: number;
}

/** Share by which hand tightening misses the preload meant, either way. */
export const TIGHTENING_SCATTER = 0.25;

/** Torque coefficient of ordinary dry steel screws; common practice. */
export const USUAL_TORQUE_COEFFICIENT = 0.2;

function requireTightening({ torqueCoefficient, diameter }: Omit<Tightening, 'torque'>): void {
  requireBetween(torqueCoefficient, 0.05, 0.6, {
    parameter: 'torqueCoefficient',
    quantity: 'torque coefficient',
    kind: 'ratio',
  });
  requirePositive(diameter, { parameter: 'diameter', quantity: 'screw diameter', kind: 'length' });
}

/**
 * Preload that a tightening torque gives, with the scatter of hand tightening.
 * $$F = \frac{T}{K d}$$
 * @param tightening - torque, coefficient, diameter
 * @returns nominal, low and high preload [N]
 * @validity K covers thread and head friction; scatter of a quarter either way
 * @throws InputError when a number is out of range
 * @source speck-2015-fastening, p. 85; chambers-1995-tm106943 for the scatter
 */
export function preloadFromTorque(tightening: Tightening): Preload {
  requireNotNegative(tightening.torque, { parameter: 'torque', quantity: 'tightening torque', kind: 'moment' });
  requireTightening(tightening);
  const nominal = tightening.torque / (tightening.torqueCoefficient * tightening.diameter);
  return { nominal, low: nominal * (1 - TIGHTENING_SCATTER), high: nominal * (1 + TIGHTENING_SCATTER) };
}

/**
 * Torque that gives a preload.
 * $$T = K d F$$
 * @param preload - clamping force [N]
 * @param screw - torque coefficient [-], nominal diameter [m]
 * @returns torque [N·m]
 * @validity as preloadFromTorque
 * @throws InputError when a number is out of range
 * @source speck-2015-fastening, p. 85
 */
export function torqueFromPreload(preload: number, screw: Omit<Tightening, 'torque'>): number {
  requireNotNegative(preload, { parameter: 'preload', quantity: 'preload', kind: 'force' });
  requireTightening(screw);
  return screw.torqueCoefficient * screw.diameter * preload;
}

/**
 * Torque coefficient from the friction in thread and under the head.
 * $$K = \frac{1}{d}\Bigl[\frac{d_2}{2}\,\frac{\tan\lambda+\mu\sec 30°}{1-\mu\tan\lambda\sec 30°} + 0.625\,\mu_h d\Bigr]$$
 * @param thread - nominal diameter and pitch [m]
 * @param friction - of the thread and of the head [-]
 * @returns torque coefficient K [-]
 * @validity washer face 1.5 d across
 * @throws InputError when a number is out of range
 * @source shigley-1989-design, eq. 8-19
 */
export function torqueCoefficient(thread: Thread, friction: { thread: number; head: number }): number {
  const mean = pitchDiameter(thread);
  requireBetween(friction.thread, 0.01, 1, { parameter: 'friction', quantity: 'thread friction', kind: 'ratio' });
  requireBetween(friction.head, 0.01, 1, { parameter: 'friction', quantity: 'head friction', kind: 'ratio' });
  const lead = thread.pitch / (Math.PI * mean);
  const flank = friction.thread / Math.cos(Math.PI / 6);
  return (
    ((mean / 2) * ((lead + flank) / (1 - lead * flank)) + 0.625 * friction.head * thread.diameter) / thread.diameter
  );
}
