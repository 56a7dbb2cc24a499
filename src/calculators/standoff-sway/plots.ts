import type { Plot, PlotData, Series } from '~/island/declaration.ts';
import type { SwayResult } from './compute.ts';
import type { SwayValues } from './inputs.ts';

const LENGTHS = Array.from({ length: 29 }, (_, i) => 0.012 + i * 0.001);

type Compute = (values: SwayValues) => SwayResult;

/** Three plots look at the same bodies: worked out once for each set of values. */
const known = new WeakMap<SwayValues, readonly (SwayResult | undefined)[]>();

function bodies(values: SwayValues, compute: Compute): readonly (SwayResult | undefined)[] {
  const found =
    known.get(values) ??
    LENGTHS.map((length) => {
      try {
        return compute({ ...values, length });
      } catch {
        // A body that cannot be leaves a gap in the curve.
        return undefined;
      }
    });
  known.set(values, found);
  return found;
}

function overLength(
  values: SwayValues,
  compute: Compute,
  series: readonly { label: string; role: Series['role']; of: (result: SwayResult) => number }[],
): PlotData {
  const results = bodies(values, compute);
  return {
    x: LENGTHS,
    series: series.map(({ label, role, of }) => ({
      label,
      role,
      y: results.map((result) => (result ? of(result) : Number.NaN)),
    })),
    marker: values.length,
  };
}

const length = { label: 'Standoff length', quantity: 'length' } as const;
/** The pattern for each count; where the extra pair of six goes is the reader's choice of layout. */
const counts = ({ pattern }: SwayValues): readonly { count: number; pattern: SwayValues['pattern'] }[] => [
  { count: 4, pattern: 'four' },
  { count: 6, pattern: pattern.startsWith('six') ? pattern : 'six-middle' },
  { count: 8, pattern: 'eight' },
];

export const plots: readonly Plot<SwayValues, SwayResult>[] = [
  {
    id: 'sway',
    title: 'Movement at the electronics against length',
    caption:
      'Under the same push, and springing back, it grows nearly as the cube of the length. The kink is where the standoffs begin to fold.',
    x: length,
    y: { label: 'Movement', quantity: 'length' },
    data: (values, { peakForce }, compute) =>
      overLength(values, compute, [
        { label: 'in this hit', role: 'main', of: (r) => r.movement },
        { label: 'gap', role: 'limit', of: () => values.gap },
        { label: 'same push', role: 'comparison', of: (r) => (r.elastic * peakForce) / r.peakForce },
      ]),
  },
  {
    id: 'moment',
    title: 'Foot moment against length',
    caption:
      'Nearly a straight line under the same push: the lever is the length. A taller body is a little softer and is hit a little less hard.',
    x: length,
    y: { label: 'Foot moment', quantity: 'moment' },
    data: (values, { peakForce }, compute) =>
      overLength(values, compute, [
        { label: 'in this hit', role: 'main', of: (r) => r.footMoment },
        { label: 'same push', role: 'comparison', of: (r) => (r.footMoment * peakForce) / r.peakForce },
      ]),
  },
  {
    id: 'speed',
    title: 'Speed at which the first thing gives, against length',
    caption: 'Where the line falls below the dashed one, something stays bent after this hit.',
    x: length,
    y: { label: 'Speed', quantity: 'speed' },
    data: (values, _, compute) =>
      overLength(values, compute, [
        { label: 'first to give', role: 'main', of: (r) => r.first.speed },
        { label: 'electronics reached', role: 'second', of: (r) => r.touches },
        { label: 'this hit', role: 'limit', of: () => values.speed },
      ]),
  },
  {
    id: 'count',
    title: 'What more standoffs buy',
    caption:
      'Each pair lowers the share of the others. The extra pair of six stands where your layout puts it, or in the middle.',
    x: { label: 'Standoffs', quantity: 'count' },
    y: { label: 'Speed', quantity: 'speed' },
    data: (values, { columns }, compute) => {
      const layouts = counts(values);
      const results = layouts.map(({ pattern }) => compute({ ...values, pattern }));
      return {
        x: layouts.map(({ count }) => count),
        series: [
          { label: 'first to give', role: 'main', y: results.map((r) => r.first.speed) },
          { label: 'electronics reached', role: 'second', y: results.map((r) => r.touches) },
          { label: 'this hit', role: 'limit', y: layouts.map(() => values.speed) },
        ],
        marker: columns.length,
      };
    },
  },
];
