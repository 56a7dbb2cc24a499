import { armStress, sleeveEndBondShear, doubledTube, tubeDoubler } from '@frameworthy/shared/doubler';
import { sweep, type Plot } from '~/island/declaration.ts';
import type { DoublerValues } from './inputs.ts';
import type { DoublerResult } from './result.ts';

const POINTS = 121;
/** Above this a reserve says nothing more, and would flatten the rest of the curve. */
const LARGEST_RESERVE = 10;

export const plots: readonly Plot<DoublerValues, DoublerResult>[] = [
  {
    id: 'stress',
    title: 'Stress along the arm',
    caption:
      'Marked where your sleeve ends. The sleeve takes load off the tube behind its end; past it the tube is on its own. The steps are the screw holes, where less section is left and less stress allowed.',
    x: { label: 'From the outer screw', quantity: 'length' },
    y: { label: 'Outer-fibre stress', quantity: 'stress' },
    data: (values, { section, end }) => {
      const { screwSpacing, armLength, holeDiameter } = values;
      const even = Array.from(
        { length: POINTS },
        (_, i) => -screwSpacing + ((armLength + screwSpacing) * i) / (POINTS - 1),
      );
      const holes = [-screwSpacing, 0];
      const inHole = (x: number): boolean => holes.some((hole) => Math.abs(x - hole) < holeDiameter / 2);
      const edges = holes.flatMap((hole) =>
        [-1.001, -0.999, 0, 0.999, 1.001].map((part) => hole + (part * holeDiameter) / 2),
      );
      const x = [...even, ...edges, end].filter((at) => at >= -screwSpacing && at <= armLength).sort((a, b) => a - b);
      const stresses = x.map((position) =>
        armStress(values, section, { position, sharing: inHole(position) ? section.atHole : section.whole }),
      );
      return {
        x,
        series: [
          { label: 'Tube with sleeve', role: 'main', y: stresses.map(({ tube }) => tube) },
          { label: 'Sleeve', role: 'second', y: stresses.map(({ sleeve }) => sleeve) },
          { label: 'Tube without', role: 'comparison', y: stresses.map(({ bare }) => bare) },
          {
            label: 'Tube allowable',
            role: 'limit',
            y: x.map((at) => (inHole(at) ? values.holeShare : 1) * values.tubeStrength),
          },
        ],
        stations: [{ x: 0, label: 'outer screw' }],
        ...(end > -screwSpacing ? { marker: end } : {}),
      };
    },
  },
  {
    id: 'length',
    title: 'Reserve against sleeve length',
    caption: 'Steep until the outer hole is covered and led in; then flat: more length adds grams and nothing else.',
    x: { label: 'Sleeve length', quantity: 'length' },
    y: { label: 'Reserve', quantity: 'ratio' },
    data: (values, { required }) => {
      const whole = values.edgeDistance + values.screwSpacing + values.armLength;
      const from = Math.max(values.taper, values.edgeDistance);
      const data = sweep(
        values,
        tubeDoubler,
        { input: 'length', from, to: Math.max(whole * 0.999, from + 1e-6), count: 41 },
        [
          {
            label: 'With sleeve',
            role: 'main',
            of: ({ reserve }) => (reserve > LARGEST_RESERVE ? Number.NaN : reserve),
          },
          { label: 'Breaks below', role: 'limit', of: () => 1 },
        ],
      );
      return { ...data, stations: [{ x: required.length, label: 'required' }] };
    },
  },
  {
    id: 'wall',
    title: 'Peak bond shear against sleeve wall',
    caption:
      'A thicker sleeve takes more load, and its bond must hand over more at its end. Square end, and tapered as chosen.',
    x: { label: 'Sleeve wall', quantity: 'length' },
    y: { label: 'Peak bond shear', quantity: 'stress' },
    data: (values, { bondYields, bondBreaks }) =>
      sweep(
        values,
        (at) => at,
        { input: 'sleeveWall', from: 0.2e-3, to: Math.min(3e-3, values.sleeveOutside * 0.49) },
        [
          { label: 'Tapered', role: 'main', of: (at) => sleeveEndBondShear(at, doubledTube(at)) },
          {
            label: 'Square end',
            role: 'comparison',
            of: (at) => sleeveEndBondShear({ ...at, taper: 0 }, doubledTube(at)),
          },
          { label: 'Adhesive yields', role: 'limit', of: () => bondYields },
          { label: 'Adhesive breaks', role: 'limit', of: () => bondBreaks },
        ],
      ),
  },
];
