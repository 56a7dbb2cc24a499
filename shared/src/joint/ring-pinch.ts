import { requireNotNegative, requirePositive } from '../require.ts';
import { requireTube, type RoundTube } from '../section/index.ts';

/** Changes of diameter of a pinched ring, times W R³/EI: along the load and across it. */
export const RING_PINCH = { along: Math.PI / 4 - 2 / Math.PI, across: 2 / Math.PI - 1 / 2 } as const;

export interface RingPinch {
  /** Largest wall moment per width, under the load [N]. */
  moment: number;
  /** Bending stress of the wall by the thin-ring formula [Pa]. */
  thinStress: number;
  /** The same at the inner surface with the curved-bar correction [Pa]. */
  stress: number;
}

/**
 * A tube wall pinched by two opposite line loads, as between two plates.
 * $$M = \frac{W R}{\pi},\quad \sigma = \frac{6M}{t^2}\,k,\quad k = \frac{t\,(r_n-r_i)}{6\,(R-r_n)\,r_i},\quad r_n = \frac{t}{\ln(r_o/r_i)}$$
 * @param tube - outside diameter and wall [m]; a bonded sleeve counts as wall
 * @param lineLoad - force per length of tube W [N/m]
 * @returns wall moment and stress; k is the curved-bar correction, near 1 for a thin wall
 * @validity load even along the length, no help from the tube beside it (safe side), linear wall
 * @throws InputError when a number is out of range
 * @source young-2002-roark, Table 9.2 case 1 for M; boresi-2003-mechanics, chapter 9, curved beams, for k
 */
export function ringPinch(tube: RoundTube, lineLoad: number): RingPinch {
  requireTube(tube);
  requireNotNegative(lineLoad, { parameter: 'lineLoad', quantity: 'line load', kind: 'forcePerLength' });
  const { wall } = tube;
  const outer = tube.outerDiameter / 2;
  const inner = outer - wall;
  const mean = outer - wall / 2;
  const moment = (lineLoad * mean) / Math.PI;
  const thinStress = (6 * moment) / wall ** 2;
  return { moment, thinStress, stress: thinStress * curvedBarFactor(inner, wall) };
}

/** Inner-surface stress of a curved bar over that of a straight one. */
function curvedBarFactor(inner: number, wall: number): number {
  const ratio = wall / (inner + wall / 2);
  // R - r_n loses its digits in a thin ring; its series gives R - r_n = t²/12R.
  if (ratio < 0.02) return 1 + ratio / 3;
  const neutral = wall / Math.log1p(wall / inner);
  return (wall * (neutral - inner)) / (6 * (inner + wall / 2 - neutral) * inner);
}

/**
 * How far a pinched ring closes along the load.
 * $$\delta = \Bigl(\frac{\pi}{4}-\frac{2}{\pi}\Bigr)\frac{W R^3}{E I},\quad I = t^3/12$$
 * @param tube - outside diameter and wall [m]
 * @param lineLoad - force per length of tube [N/m]
 * @param hoopModulus - Young's modulus round the tube [Pa]
 * @returns loss of diameter [m]
 * @validity thin ring
 * @throws InputError when a number is out of range
 * @source young-2002-roark, Table 9.2 case 1
 */
export function ringClosing(tube: RoundTube, lineLoad: number, hoopModulus: number): number {
  requireTube(tube);
  requireNotNegative(lineLoad, { parameter: 'lineLoad', quantity: 'line load', kind: 'forcePerLength' });
  requirePositive(hoopModulus, { parameter: 'hoopModulus', quantity: 'modulus round the tube', kind: 'modulus' });
  const mean = (tube.outerDiameter - tube.wall) / 2;
  return (RING_PINCH.along * lineLoad * mean ** 3 * 12) / (hoopModulus * tube.wall ** 3);
}
