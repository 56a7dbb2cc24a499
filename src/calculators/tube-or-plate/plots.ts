import { stripSegments } from '@frameworthy/shared/arm';
import { armBending, type ArmSegment } from '@frameworthy/shared/beam';
import type { Plane } from '@frameworthy/shared/section';
import type { Plot, PlotData } from '~/island/declaration.ts';
import type { ArmResult } from './compute.ts';
import type { ArmValues } from './inputs.ts';
import { stripMaterial } from './materials.ts';
import { stiffnessOf, stripOfWidth } from './parts.ts';

const POINTS = 25;
const even = (from: number, to: number): number[] =>
  Array.from({ length: POINTS }, (_, i) => from + ((to - from) * i) / (POINTS - 1));

/** Deflection under full thrust at even places along the arm. */
function shape(segments: readonly ArmSegment[], thrust: number, x: readonly number[]): number[] {
  const steps = segments.length === 1 ? POINTS - 1 : 2;
  const { stations } = armBending({ segments, plane: 'vertical', tipForce: thrust, steps });
  return x.map((place) => {
    const next = Math.max(
      stations.findIndex((station) => station.x >= place * (1 - 1e-9)),
      1,
    );
    const [a, b] = [stations[next - 1]!, stations[next]!];
    const share = b.x > a.x ? (place - a.x) / (b.x - a.x) : 1;
    return a.deflection + share * (b.deflection - a.deflection);
  });
}

/** Stiffness of the strip over its width, everything else as it is. */
function overWidth(values: ArmValues, { tube }: ArmResult): PlotData {
  const { rootWidth, tipWidth, thickness, edges } = values;
  const taper = tipWidth / rootWidth;
  // A hair more than the thickness, which round edges need, however the product is rounded.
  const least = edges === 'round' ? (thickness / Math.min(1, taper)) * (1 + 1e-9) : rootWidth / 3;
  const x = [...new Set([...even(least, Math.max(2.5 * rootWidth, 2 * least)), rootWidth])].sort((a, b) => a - b);
  const stiffness = (plane: Plane) =>
    x.map((width) => stiffnessOf(stripSegments(stripOfWidth(values, width), stripMaterial(values)), plane));
  return {
    x,
    marker: rootWidth,
    series: [
      { label: 'strip, up and down', role: 'main', y: stiffness('vertical') },
      { label: 'strip, sideways', role: 'second', y: stiffness('horizontal') },
      { label: 'tube, both ways', role: 'limit', y: x.map(() => tube.stiffness.vertical) },
    ],
  };
}

export const plots: readonly Plot<ArmValues, ArmResult>[] = [
  {
    id: 'shape',
    title: 'Both arms under full thrust',
    caption: 'How far each place along the arm rises, the root held.',
    x: { label: 'from the outer screw', quantity: 'length' },
    y: { label: 'rise', quantity: 'length' },
    data: ({ armLength, thrust }, { tube, strip }) => {
      const x = even(0, armLength);
      return {
        x,
        marker: armLength,
        series: [
          { label: 'plate strip', role: 'main', y: shape(strip.segments, thrust, x) },
          { label: 'round tube', role: 'second', y: shape(tube.segments, thrust, x) },
        ],
      };
    },
  },
  {
    id: 'stiffness-over-width',
    title: 'Stiffness of the strip over its width',
    caption:
      'Up and down it grows in step with the width, sideways with its cube. Where a curve meets the tube’s line, both are equal.',
    x: { label: 'width at the root', quantity: 'length' },
    y: { label: 'stiffness', quantity: 'stiffness' },
    data: overWidth,
  },
];
