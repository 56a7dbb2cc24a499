import { eliminate } from '../solve-linear.ts';
import { edgeSlope, ODD, sign, type PlateLoad, type PlateSeries } from './plate-series.ts';

export interface ClampedEdges extends PlateSeries {
  /** In the middle of the long edges, negative: the other side is stretched. */
  edge: number;
}

/**
 * What clamping adds to a plate on four supports: moments along the edges, one cosine series a pair, that take the
 * slopes there away. Same units as `PlateSeries`.
 * $$\sum_j C_{ij}e_j = s_i$$
 */
export function clampedEdges(load: PlateLoad, ratio: number, nu: number): ClampedEdges {
  const count = ODD.length;
  /** Slope at an edge from its own moments, and what those of the other pair add to it. */
  const own = (m: number, short: number, long: number): number => {
    const alpha = (m * Math.PI * long) / (2 * short);
    return (short / (2 * Math.PI * m)) * (Math.tanh(alpha) + alpha / Math.cosh(alpha) ** 2);
  };
  const other = (m: number, n: number, short: number, long: number): number => {
    const [k, beta] = [(m * Math.PI) / short, (n * Math.PI) / long];
    return ((long / (2 * Math.PI * n)) * 8 * beta ** 2 * k) / (short * (k ** 2 + beta ** 2) ** 2);
  };
  const rows = [
    ...ODD.map((m, i) => [
      ...ODD.map((_, j) => (i === j ? own(m, 1, ratio) : 0)),
      ...ODD.map((n) => other(m, n, 1, ratio)),
    ]),
    ...ODD.map((m, i) => [
      ...ODD.map((n) => other(m, n, ratio, 1)),
      ...ODD.map((_, j) => (i === j ? own(m, ratio, 1) : 0)),
    ]),
  ];
  const slopes = [
    ...ODD.map((m) => edgeSlope(load, m, 1, ratio)),
    ...ODD.map((m) => scaled(load, ratio) * edgeSlope(load, m, 1, 1 / ratio)),
  ];
  // The diagonal outweighs the rest, so that there is a solution for any ratio.
  const moments = eliminate(rows, slopes)!;
  const middle = (amplitudes: readonly number[], short: number, long: number) => {
    let [deflection, along, across] = [0, 0, 0];
    ODD.forEach((m, i) => {
      const alpha = (m * Math.PI * long) / (2 * short);
      const [tanh, cosh] = [Math.tanh(alpha), Math.cosh(alpha)];
      const moment = sign(m) * amplitudes[i]!;
      deflection += ((short ** 2 / (2 * Math.PI ** 2)) * moment * alpha * tanh) / (m ** 2 * cosh);
      along += (moment / (2 * cosh)) * (alpha * tanh * (1 - nu) + 2 * nu);
      across += (moment / (2 * cosh)) * (2 - (1 - nu) * alpha * tanh);
    });
    return { deflection, along, across };
  };
  // Moments on the short edges run their wave across the long ones, and the other way round.
  const onShort = middle(moments.slice(0, count), 1, ratio);
  const onLong = middle(moments.slice(count), ratio, 1);
  return {
    deflection: onShort.deflection + onLong.deflection,
    across: onShort.along + onLong.across,
    along: onShort.across + onLong.along,
    edge: moments.slice(count).reduce((sum, amplitude, i) => sum + sign(ODD[i]!) * amplitude, 0),
  };
}

/** Slope of a plate whose wave runs along b: the same formula in units of b, turned into units of a. */
const scaled = (load: PlateLoad, ratio: number): number => (load === 'uniform' ? ratio ** 3 : ratio);
