import { InputError } from '@frameworthy/shared';
import { ticks } from 'd3-array';
import { contours } from 'd3-contour';
import type { ContourMap } from './declaration.ts';
import type { ValueSet } from './values.ts';

/** Samples each way: lines come out smooth, and a light function is worked out in a few milliseconds. */
const COUNT = 25;
/** Parts each way of a square that the edge of the impossible runs through. */
const PARTS = 4;

/** A place on the map, from 0 to 1 across and up. */
export type Place = readonly [across: number, up: number];

export interface Sample {
  values: ValueSet;
  point: unknown;
}

export interface Field {
  /** Row by row from below; undefined where the values together are impossible. */
  samples: readonly (Sample | undefined)[];
  /** Squares over the impossible: lower left corner and side. */
  grey: readonly { place: Place; side: number }[];
}

const between = ({ from, to }: { from: number; to: number }, share: number) => from + share * (to - from);

/** Works a map out at every sample. */
export function fieldOf(map: ContourMap<ValueSet, unknown>, values: ValueSet): Field {
  const valuesAt = ([across, up]: Place): ValueSet => ({
    ...values,
    [map.x.input]: between(map.x, across),
    [map.y.input]: between(map.y, up),
  });
  const tried = (place: Place): Sample | undefined => {
    const here = valuesAt(place);
    try {
      return { values: here, point: map.at(here) };
    } catch (error) {
      if (error instanceof InputError) return undefined;
      throw error;
    }
  };
  const last = COUNT - 1;
  const samples = Array.from({ length: COUNT ** 2 }, (_, k) =>
    tried([(k % COUNT) / last, Math.floor(k / COUNT) / last]),
  );
  const grey = Array.from({ length: last ** 2 }, (_, k) => [k % last, Math.floor(k / last)] as const).flatMap(
    ([i, j]) => {
      const possible = corners(i, j).filter((k) => samples[k] !== undefined).length;
      if (possible === 4) return [];
      if (possible === 0) return [{ place: [i / last, j / last] as Place, side: 1 / last }];
      const part = (k: number): Place => [(i + (k % PARTS) / PARTS) / last, (j + Math.floor(k / PARTS) / PARTS) / last];
      const half = 1 / (2 * PARTS * last);
      return Array.from({ length: PARTS ** 2 }, (_, k) => part(k))
        .filter(([x, y]) => tried([x + half, y + half]) === undefined)
        .map((place) => ({ place, side: 2 * half }));
    },
  );
  return { samples, grey };
}

/** The samples round a square. */
const corners = (i: number, j: number) => [0, 1, COUNT, COUNT + 1].map((step) => j * COUNT + i + step);

/** Heights of a field, one a sample; not a number where there is nothing. */
export const heights = (field: Field, of: (point: unknown, values: ValueSet) => number): number[] =>
  field.samples.map((sample) => (sample ? of(sample.point, sample.values) : Number.NaN));

/**
 * The open lines on which `values` reach `level`. The library closes each line along the border of the map and round what
 * is no number; those parts are cut away.
 */
export function linesAt(values: readonly number[], level: number): Place[][] {
  const { coordinates } = contours()
    .size([COUNT, COUNT])
    .contour(values as number[], level);
  // The library counts from the border of a square round the first sample.
  const rings = coordinates.flat().map((ring) => ring.map(([x = 0, y = 0]) => [x - 0.5, y - 0.5] as const));
  const last = COUNT - 1;
  const on = (at: number) => at >= 0 && at <= last;
  const drawn = ([ax, ay]: Place, [bx, by]: Place) => {
    if (![ax, ay, bx, by].every(on)) return false;
    const [i, j] = [(ax + bx) / 2, (ay + by) / 2].map((middle) => Math.min(Math.floor(middle), last - 1)) as [
      number,
      number,
    ];
    return corners(i, j).every((k) => Number.isFinite(values[k]));
  };
  return rings.flatMap((ring) => cut(ring, drawn)).map((line) => line.map(([x, y]): Place => [x / last, y / last]));
}

/** A closed ring without the pieces that are not drawn. */
function cut(ring: readonly Place[], drawn: (a: Place, b: Place) => boolean): Place[][] {
  const pieces = ring.length - 1;
  const gap = Array.from({ length: pieces }, (_, i) => i).find((i) => !drawn(ring[i]!, ring[i + 1]!));
  if (gap === undefined) return [[...ring]];
  const lines: Place[][] = [];
  let line: Place[] = [];
  for (let step = 1; step <= pieces; step++) {
    const [a, b] = [ring[(gap + step) % pieces]!, ring[(gap + step + 1) % pieces]!];
    if (!drawn(a, b)) line = [];
    else if (line.length > 0) line.push(b);
    else lines.push((line = [a, b]));
  }
  return lines;
}

/** Where values spread over more than this, even steps would crowd all lines into a corner. */
const WIDE = 8;

/** About `count` round numbers within the values, in the reader's unit: even steps, or 1, 2, 5, 10 where they spread far. */
export function roundLevels(values: readonly number[], count: number, factor: number): number[] {
  const shown = values.filter(Number.isFinite).map((value) => value / factor);
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  if (shown.length === 0 || low === high) return [];
  const inside = (level: number) => level > low && level < high;
  if (low <= 0 || high < WIDE * low)
    return ticks(low, high, count)
      .filter(inside)
      .map((level) => level * factor);
  const decades = Array.from({ length: 40 }, (_, i) => Math.floor(Math.log10(low)) + i);
  const series = decades.flatMap((decade) => [1, 2, 5].map((step) => Number(`${step}e${decade}`))).filter(inside);
  const stride = Math.ceil(series.length / count);
  return series.filter((_, i) => i % stride === Math.floor((stride - 1) / 2)).map((level) => level * factor);
}
