import { sweep, type Plot } from '~/island/declaration.ts';
import type { BondValues } from './inputs.ts';
import { bondOf, type BondResult } from './result.ts';

const POINTS = 101;
const THINNEST = 0.03e-3;
const THICKEST = 0.5e-3;

export const plots: readonly Plot<BondValues, BondResult>[] = [
  {
    id: 'along',
    title: 'Bond shear along the overlap',
    caption: 'The ends work, the middle rests. From the end of the sleeve inside the tube to the end of the tube.',
    x: { label: 'From the end of the sleeve', quantity: 'length' },
    y: { label: 'Bond shear', quantity: 'stress' },
    data: ({ overlap }, { at, mean, yields }) => {
      const x = Array.from({ length: POINTS }, (_, i) => (overlap * i) / (POINTS - 1));
      return {
        x,
        series: [
          { label: 'Shear', role: 'main', y: x.map(at) },
          { label: 'Mean', role: 'comparison', y: x.map(() => mean) },
          { label: 'Adhesive yields', role: 'limit', y: x.map(() => yields) },
        ],
      };
    },
  },
  {
    id: 'overlap',
    title: 'Peak and mean against overlap',
    caption: 'The mean keeps falling with length and looks ever safer; the peak stops.',
    x: { label: 'Overlap', quantity: 'length' },
    y: { label: 'Bond shear', quantity: 'stress' },
    data: (values, { useful, yields }) => ({
      ...sweep(
        values,
        bondOf,
        {
          input: 'overlap',
          from: Math.max(0.3 * useful, 1e-3),
          to: Math.max(1.3 * values.overlap, 2 * useful),
          count: 81,
        },
        [
          { label: 'Peak', role: 'main', of: ({ peak }) => peak },
          { label: 'Mean', role: 'comparison', of: ({ mean }) => mean },
          { label: 'Adhesive yields', role: 'limit', of: () => yields },
        ],
      ),
      stations: [{ x: useful, label: 'no further gain' }],
    }),
  },
  {
    id: 'bond-line',
    title: 'Peak against bond line',
    caption:
      'A thicker bond line is softer and lowers the elastic peak; real strength still falls past the usual gap, through voids and misfit.',
    x: { label: 'Bond line', quantity: 'length' },
    y: { label: 'Peak bond shear', quantity: 'stress' },
    data: (values, { geometry, yields }) => {
      const x = Array.from({ length: 48 }, (_, i) => THINNEST + ((THICKEST - THINNEST) * i) / 47);
      const peak = (gap: number): number => {
        const sleeveOutside = values.tubeInside - 2 * gap;
        return values.sleeveWall < sleeveOutside / 2 ? bondOf({ ...values, sleeveOutside }).peak : Number.NaN;
      };
      return {
        x,
        series: [
          { label: 'Peak', role: 'main', y: x.map(peak) },
          { label: 'Adhesive yields', role: 'limit', y: x.map(() => yields) },
        ],
        ...(geometry.bondLine <= THICKEST && geometry.bondLine >= THINNEST ? { marker: geometry.bondLine } : {}),
      };
    },
  },
];
