import type { FrameThread } from '../fastener/index.ts';

/** Hexagon nuts [m]: across flats and height, recalled from the table of iso-2012-4032. */
export const NUTS: Readonly<Record<FrameThread, { flats: number; height: number }>> = {
  M2: { flats: 4e-3, height: 1.6e-3 },
  'M2.5': { flats: 5e-3, height: 2e-3 },
  M3: { flats: 5.5e-3, height: 2.4e-3 },
  M4: { flats: 7e-3, height: 3.2e-3 },
};

/**
 * Widest part of a hexagon nut, across its corners.
 * $$e = \frac{2 s}{\sqrt3}$$
 * @param thread - of the nut
 * @returns width across sharp corners [m]
 * @validity corners not rounded off: real nuts take a little less
 * @source iso-2012-4032, table
 */
export function nutAcrossCorners(thread: FrameThread): number {
  return (2 * NUTS[thread].flats) / Math.sqrt(3);
}
