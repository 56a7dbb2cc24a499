import type { Place } from '@frameworthy/shared/standoff';
import type { Plot } from '~/island/declaration.ts';
import { solve, type LayoutResult } from './compute.ts';
import type { LayoutValues } from './inputs.ts';
import { evenPlaces, extraPair } from './places.ts';

type Solved = ReturnType<typeof solve>;

const COUNTS = [3, 4, 5, 6, 7, 8, 9, 10];
const POINTS = 15;

/** Plots that look at the same bodies share them. */
const known = new WeakMap<LayoutResult, readonly Solved[]>();
function byCount(values: LayoutValues, result: LayoutResult): readonly Solved[] {
  const found = known.get(result) ?? COUNTS.map((count) => solve(values, evenPlaces(count, result.places)));
  known.set(result, found);
  return found;
}

const line = (from: number, to: number) =>
  Array.from({ length: POINTS }, (_, i) => from + ((to - from) * i) / (POINTS - 1));
const widest = (places: readonly Place[]) => Math.max(...places.map(({ y }) => Math.abs(y)));
const count = { label: 'Standoffs', quantity: 'count' } as const;
const speed = { label: 'Speed', quantity: 'speed' } as const;

export const plots: readonly Plot<LayoutValues, LayoutResult>[] = [
  {
    id: 'count-movement',
    title: 'Movement at the electronics against count',
    caption:
      'Pairs spread evenly from your foremost to your rearmost standoff, an odd one on the centre line. Each one more buys less.',
    x: count,
    y: { label: 'Movement', quantity: 'length' },
    data: (values, result) => ({
      x: COUNTS,
      series: [
        { label: 'spread evenly', role: 'main', y: byCount(values, result).map((r) => r.movement) },
        { label: 'your places', role: 'comparison', y: COUNTS.map(() => result.movement) },
        { label: 'gap', role: 'limit', y: COUNTS.map(() => values.gap) },
      ],
      marker: result.places.length,
    }),
  },
  {
    id: 'count-speed',
    title: 'First thing to give, against count',
    caption: 'The same layouts. Where the line flattens, something other than the standoffs has become the weakest.',
    x: count,
    y: speed,
    data: (values, result) => ({
      x: COUNTS,
      series: [
        { label: 'spread evenly', role: 'main', y: byCount(values, result).map((r) => r.first.speed) },
        { label: 'your places', role: 'comparison', y: COUNTS.map(() => result.first.speed) },
      ],
      marker: result.places.length,
    }),
  },
  {
    id: 'extra-along',
    title: 'One more pair: where along the body?',
    caption:
      'A pair added to your layout, as wide as its widest. Far from the middle of the others it stops the turning best.',
    x: { label: 'Extra pair, forward', quantity: 'length' },
    y: speed,
    data: (values, result) => {
      const reach = values.plateLength / 2 - values.outerDiameter / 2;
      const x = line(-reach, reach);
      const aside = widest(result.places) || values.plateWidth / 4;
      const at = x.map((forward) => solve(values, [...result.places, ...extraPair(forward, aside)]).first.speed);
      return {
        x,
        series: [
          { label: 'with it', role: 'main', y: at },
          { label: 'without', role: 'comparison', y: x.map(() => result.first.speed) },
        ],
        stations: [{ x: result.centre.x, label: 'middle of yours' }],
      };
    },
  },
];
