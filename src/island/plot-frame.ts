import type { PlotData } from './declaration.ts';
import { nice, ticks } from './ticks.ts';

/** Paper units of a plot, about one CSS pixel each on a phone. */
export interface Frame {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export const PAPER: Frame = { width: 440, height: 250, left: 46, right: 12, top: 14, bottom: 36 };

export interface Axis {
  ticks: number[];
  /** SI value to paper. */
  place: (value: number) => number;
  from: number;
  to: number;
}

const finite = (values: readonly number[]) => values.filter(Number.isFinite);

/** The span of values in the reader's unit; a flat one is given some height. */
function span(values: readonly number[], factor: number): [number, number] {
  const shown = finite(values).map((value) => value / factor);
  const from = Math.min(...shown, Number.POSITIVE_INFINITY);
  const to = Math.max(...shown, Number.NEGATIVE_INFINITY);
  if (shown.length === 0) return [0, 1];
  return from === to ? [Math.min(from, 0), Math.max(to, from === 0 ? 1 : 0)] : [from, to];
}

/** An axis between two numbers in the reader's unit, and two places on the paper. */
export function axis(
  [from, to]: [number, number],
  [start, end]: [number, number],
  count: number,
  factor: number,
): Axis {
  const place = (value: number) =>
    Math.round((start + ((value / factor - from) / (to - from)) * (end - start)) * 10) / 10;
  return { ticks: ticks(from, to, count), place, from: from * factor, to: to * factor };
}

/** The axes of a plot in the reader's units. The upright one always holds zero, so that heights compare as they look. */
export function axes(data: PlotData, factors: { x: number; y: number }): { x: Axis; y: Axis } {
  const across = span(data.x, factors.x);
  const [low, high] = span(
    data.series.flatMap((series) => series.y),
    factors.y,
  );
  const up = nice(Math.min(0, low), Math.max(0, high), 5);
  return {
    x: axis(across, [PAPER.left, PAPER.width - PAPER.right], 6, factors.x),
    y: axis(up, [PAPER.height - PAPER.bottom, PAPER.top], 5, factors.y),
  };
}

/** Index of the point of the sweep that is nearest to a place on the x axis. */
export function nearest(x: readonly number[], value: number): number {
  return x.reduce(
    (best, candidate, i) => (Math.abs(candidate - value) < Math.abs((x[best] as number) - value) ? i : best),
    0,
  );
}

/** End labels from the top down, moved apart until each has room. */
export function spread(places: readonly { key: number; y: number }[], room: number): Map<number, number> {
  const sorted = [...places].sort((a, b) => a.y - b.y);
  const moved = new Map<number, number>();
  let last = Number.NEGATIVE_INFINITY;
  for (const { key, y } of sorted) {
    last = Math.max(y, last + room);
    moved.set(key, last);
  }
  return moved;
}
