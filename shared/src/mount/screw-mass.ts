import { pitchDiameter, type Thread } from '../joint/index.ts';
import { requireBetween } from '../require.ts';
import { requireLength } from '../require-physical.ts';

export interface ScrewMass {
  thread: Thread;
  /** Under the head [m]. */
  length: number;
  head: 'cap' | 'button';
  /** Of the head [m]. */
  headDiameter: number;
  /** [kg/m³] */
  density: number;
}

/** Of steel screws [kg/m³]. common-practice. */
export const STEEL_SCREW_DENSITY = 7850;

/** Height of a head, and size and depth of its hexagon socket, over the screw's diameter; fill: volume over cylinder. */
const HEADS = {
  cap: { height: 1, socket: 0.83, depth: 0.5, fill: 1 },
  button: { height: 0.55, socket: 0.67, depth: 0.35, fill: 0.75 },
} as const;

/**
 * Mass of a screw with a hexagon socket, from its sizes.
 * $$m = \rho\Bigl[\tfrac{\pi}{4}d_2^2L+f\tfrac{\pi}{4}d_k^2k-\tfrac{\sqrt3}{2}s^2t\Bigr]$$
 * @param screw - thread, length under the head, head and its diameter [m], density [kg/m³]
 * @returns mass [kg]
 * @validity within about a tenth for M2 to M4; weigh ten screws to know
 * @throws InputError when a size is out of range
 * @source iso-2004-4762, proportions of head and socket, recalled
 */
export function screwMass({ thread, length, head, headDiameter, density }: ScrewMass): number {
  requireLength(length, { parameter: 'screwLength', quantity: 'screw length' });
  requireLength(headDiameter, { parameter: 'headDiameter', quantity: 'head diameter' });
  requireBetween(density, 100, 3e4, { parameter: 'density', quantity: 'density of the screw', kind: 'density' });
  const { height, socket, depth, fill } = HEADS[head];
  const d = thread.diameter;
  const shank = (Math.PI / 4) * pitchDiameter(thread) ** 2 * length;
  const cylinder = (Math.PI / 4) * headDiameter ** 2 * height * d;
  const hexagon = (Math.sqrt(3) / 2) * (socket * d) ** 2 * depth * d;
  return density * (shank + Math.max(0, fill * cylinder - hexagon));
}
