import { requireBelow, requirePositive } from '../require.ts';

export interface Thread {
  /** Nominal diameter d [m]. */
  diameter: number;
  /** Coarse pitch p [m]. */
  pitch: number;
}

/** ISO metric coarse threads that frames are screwed together with. */
export const COARSE_THREADS = {
  M2: { diameter: 2e-3, pitch: 0.4e-3 },
  'M2.5': { diameter: 2.5e-3, pitch: 0.45e-3 },
  M3: { diameter: 3e-3, pitch: 0.5e-3 },
  M4: { diameter: 4e-3, pitch: 0.7e-3 },
  M5: { diameter: 5e-3, pitch: 0.8e-3 },
} as const satisfies Record<string, Thread>;

export type ThreadName = keyof typeof COARSE_THREADS;

function requireThread({ diameter, pitch }: Thread): void {
  requirePositive(diameter, { parameter: 'diameter', quantity: 'screw diameter', kind: 'length' });
  const subject = { parameter: 'pitch', quantity: 'pitch', kind: 'length' } as const;
  requirePositive(pitch, subject);
  requireBelow(pitch, diameter / 2, 'must be smaller than half the screw diameter', subject);
}

/**
 * Area of a thread against tension.
 * $$A_s = \frac{\pi}{4}(d - 0.9382\,p)^2$$
 * @param thread - nominal diameter and pitch [m]
 * @returns stress area [m²]
 * @validity ISO metric profile
 * @throws InputError when the thread cannot be
 * @source iso-2013-898, stress area
 */
export function stressArea(thread: Thread): number {
  requireThread(thread);
  return (Math.PI / 4) * (thread.diameter - 0.9382 * thread.pitch) ** 2;
}

/**
 * Pitch diameter of an ISO metric thread.
 * $$d_2 = d - 0.649519\,p$$
 * @param thread - nominal diameter and pitch [m]
 * @returns pitch diameter [m]
 * @validity ISO metric profile, basic size
 * @throws InputError when the thread cannot be
 * @source euler-2001-bolts, bolt dimension table
 */
export function pitchDiameter(thread: Thread): number {
  requireThread(thread);
  return thread.diameter - 0.649519 * thread.pitch;
}
