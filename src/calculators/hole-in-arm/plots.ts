import { sweep, type Plot, type PlotData } from '~/island/declaration.ts';
import type { HoleResult } from './compute.ts';
import type { HoleValues } from './inputs.ts';

/** Widest hole drawn: past most of the section there is nothing to see. */
const WIDEST_SHARE = 0.45;

/** The same hole turned by a right angle, where that is possible. */
function turned(values: HoleValues, compute: (values: HoleValues) => HoleResult): number {
  const holeAxis = values.holeAxis === 'vertical' ? 'horizontal' : 'vertical';
  try {
    return compute({ ...values, holeAxis, offset: 0 }).drilled.notchedShare;
  } catch {
    return Number.NaN;
  }
}

function overDiameter(values: HoleValues, compute: (values: HoleValues) => HoleResult): PlotData {
  const across = values.part === 'tube' ? values.outerDiameter : values.holeAxis === 'vertical' ? values.width : values.height; // prettier-ignore
  const to = Math.max(WIDEST_SHARE * across, 1.2 * values.holeDiameter);
  return sweep(values, compute, { input: 'holeDiameter', from: 0.0002, to }, [
    { label: 'notched laminate', of: ({ drilled }) => drilled.notchedShare, role: 'main' },
    { label: 'elastic peak', of: ({ drilled }) => drilled.elasticShare, role: 'second' },
    { label: 'hole turned', of: (_, at) => turned(at, compute), role: 'comparison' },
    { label: 'net section', of: ({ drilled }) => drilled.netShare, role: 'limit' },
  ]);
}

export const plots: readonly Plot<HoleValues, HoleResult>[] = [
  {
    id: 'kept-over-hole',
    title: 'Strength kept against the size of the hole',
    caption:
      'The elastic peak hardly knows how large a hole is. Carbon does. Dotted: the hole turned by a right angle.',
    x: { label: 'Hole', quantity: 'length' },
    y: { label: 'Strength kept at the hole', quantity: 'percent' },
    data: (values, _result, compute) => overDiameter(values, compute),
  },
  {
    id: 'force-over-station',
    title: 'Largest force against the place along the arm',
    caption: 'Where the drilled section crosses the root’s line, the hole no longer decides.',
    x: { label: 'Outer screw to hole', quantity: 'length' },
    y: { label: 'Force at the motor', quantity: 'force' },
    data: (values, _result, compute) =>
      sweep(
        values,
        compute,
        { input: 'station', from: values.holeDiameter, to: Math.max(0.7 * values.armLength, values.station) },
        [
          { label: 'with the hole', of: ({ forces }) => forces.holeForce, role: 'main' },
          { label: 'elastic peak', of: ({ forces }) => forces.elasticForce, role: 'second' },
          { label: 'undrilled there', of: ({ forces }) => forces.wholeForce, role: 'comparison' },
          { label: 'root, undrilled', of: ({ forces }) => forces.rootForce, role: 'limit' },
        ],
      ),
  },
];
