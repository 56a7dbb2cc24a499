import { requireBetween } from '../require.ts';
import type { Thread, ThreadName } from '../joint/index.ts';

/** Limits of a thread and its tapped hole that decide how much metal stands in shear [m]. */
export interface ThreadLimits {
  thread: Thread;
  /** Largest thread the screw is sure to have outside: least major diameter. */
  majorLeast: number;
  /** Least pitch diameter of the screw. */
  pitchLeast: number;
  /** Largest pitch diameter of the tapped hole. */
  tappedPitchLargest: number;
  /** Largest minor diameter of the tapped hole: the drilled hole at its widest. */
  tappedMinorLargest: number;
}

const limits = (diameter: number, pitch: number, values: readonly [number, number, number, number]): ThreadLimits => ({
  thread: { diameter: diameter * 1e-3, pitch: pitch * 1e-3 },
  majorLeast: values[0] * 1e-3,
  pitchLeast: values[1] * 1e-3,
  tappedPitchLargest: values[2] * 1e-3,
  tappedMinorLargest: values[3] * 1e-3,
});

/** Fit 6H/6g, recalled from the tables of iso-1998-965. */
export const THREAD_LIMITS = {
  M2: limits(2, 0.4, [1.886, 1.654, 1.83, 1.679]),
  'M2.5': limits(2.5, 0.45, [2.38, 2.117, 2.303, 2.138]),
  M3: limits(3, 0.5, [2.874, 2.58, 2.775, 2.599]),
  M4: limits(4, 0.7, [3.838, 3.433, 3.663, 3.422]),
} as const satisfies Partial<Record<ThreadName, ThreadLimits>>;

export type FrameThread = keyof typeof THREAD_LIMITS;

/**
 * Basic pitch and minor diameter of an ISO metric tapped hole.
 * $$D_2 = D - 0.649519\,P,\quad D_1 = D - 1.082532\,P$$
 * @param thread - nominal diameter and pitch [m]
 * @returns pitch and minor diameter [m]
 * @validity ISO metric profile, basic sizes
 * @throws InputError when a length is out of range
 * @source fed-h28-21, worked examples
 */
export function tappedHole({ diameter, pitch }: Thread): { pitchDiameter: number; minorDiameter: number } {
  requireBetween(diameter, 1e-4, 1, { parameter: 'diameter', quantity: 'thread diameter', kind: 'length' });
  requireBetween(pitch, 1e-5, diameter / 2, { parameter: 'pitch', quantity: 'pitch', kind: 'length' });
  return { pitchDiameter: diameter - 0.649519 * pitch, minorDiameter: diameter - 1.082532 * pitch };
}

/**
 * Tolerance of the pitch diameter of a screw thread, grade 4 or 6.
 * $$T_{d2} = k\cdot 90\,P^{0.4}\,d^{0.1}\ \mu\text{m},\quad k = 1 \text{ (grade 6)},\ 0.63 \text{ (grade 4)}$$
 * @param thread - pitch P and mean diameter of the size range d [m]
 * @param grade - tolerance grade [-]
 * @returns tolerance [m]
 * @validity ISO metric profile; P and d enter the formula in millimetres
 * @throws InputError when a length is out of range
 * @source fed-h28-21, pitch diameter tolerance
 */
export function pitchTolerance({ diameter, pitch }: Thread, grade: 4 | 6): number {
  tappedHole({ diameter, pitch });
  const factor = grade === 4 ? 0.63 : 1;
  return factor * 90e-6 * (pitch * 1e3) ** 0.4 * (diameter * 1e3) ** 0.1;
}

/**
 * Limits of a screw's outside diameter at the usual fit 6g.
 * $$d_{max} = d - (15+11P)\ \mu\text{m},\quad d_{min} = d_{max} - \Bigl(180P^{2/3}-\frac{3.15}{\sqrt P}\Bigr)\ \mu\text{m}$$
 * @param thread - nominal diameter d and pitch P [m]
 * @returns largest and least outside diameter [m]
 * @validity ISO metric profile; P enters the formula in millimetres. Tables round tolerances to preferred numbers
 * @throws InputError when a length is out of range
 * @source iso-1998-965, formulas recalled
 */
export function majorLimits(thread: Thread): { largest: number; least: number } {
  tappedHole(thread);
  const pitch = thread.pitch * 1e3;
  const largest = thread.diameter - (15 + 11 * pitch) * 1e-6;
  return { largest, least: largest - (180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch)) * 1e-6 };
}
