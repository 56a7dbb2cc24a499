import { massPerLength, roundTubeSection } from '@frameworthy/shared/section';
import { sweep, type Plot, type PlotData } from '~/island/declaration.ts';
import { strengthsOf, type RootResult, type RootValues } from './compute.ts';

/** Grams that the second plot spends. */
const SPENT = 2e-3;
const POINTS = 41;

/** The same mass spent on longer spacing and on a thicker wall: how much of the weakest hole is then used. */
function spending(values: RootValues, compute: (values: RootValues) => RootResult): PlotData {
  const { density } = strengthsOf(values);
  const area = roundTubeSection({ outerDiameter: values.outerDiameter, wall: values.wall }).area;
  const length = values.armLength + values.screwSpacing + values.endDistance;
  const outer = values.outerDiameter / 2;
  const use = (change: Partial<RootValues>): number => {
    try {
      return compute({ ...values, ...change }).root.weakest.use;
    } catch {
      // The wall no longer fits, or leaves no room for the sleeve: the curve ends there.
      return Number.NaN;
    }
  };
  const x = Array.from({ length: POINTS }, (_, i) => (SPENT * i) / (POINTS - 1));
  return {
    x,
    marker: 0,
    series: [
      {
        label: 'screws farther apart',
        role: 'main',
        y: x.map((mass) => use({ screwSpacing: values.screwSpacing + mass / massPerLength(area, density) })),
      },
      {
        label: 'thicker wall',
        role: 'comparison',
        y: x.map((mass) =>
          use({
            wall: outer - Math.sqrt(Math.max(0, (outer - values.wall) ** 2 - mass / (density * length * Math.PI))),
          }),
        ),
      },
    ],
  };
}

export const plots: readonly Plot<RootValues, RootResult>[] = [
  {
    id: 'load-over-spacing',
    title: 'Load on the holes against screw spacing',
    caption: 'Twice the spacing nearly halves both loads; beyond four centimetres there is little left to gain.',
    x: { label: 'Screw spacing', quantity: 'length' },
    y: { label: 'Load on the hole', quantity: 'force' },
    data: (values, _result, compute) =>
      sweep(values, compute, { input: 'screwSpacing', from: 0.006, to: 0.05 }, [
        { label: 'outer hole', of: ({ root }) => root.horizontal.outer, role: 'main' },
        { label: 'inner hole', of: ({ root }) => root.horizontal.inner, role: 'second' },
      ]),
  },
  {
    id: 'grams-well-spent',
    title: 'The same grams spent two ways',
    caption: 'A gram of tube between the screws relieves the weakest hole more than a gram spread over the whole wall.',
    x: { label: 'Added to one arm', quantity: 'mass' },
    y: { label: 'Weakest hole, share of strength used', quantity: 'percent' },
    data: (values, _result, compute) => spending(values, compute),
  },
];
