import { shortestStandoff, type Arrangement } from '@frameworthy/shared/fit';
import { CATALOGUE_LENGTHS } from '@frameworthy/shared/standoff';
import type { Plot } from '~/island/declaration.ts';
import type { FitResult } from './compute.ts';
import type { FitValues } from './inputs.ts';

const TILTS = Array.from({ length: 15 }, (_, i) => (i * 5 * Math.PI) / 180);

const tilted = (arrangement: Arrangement, tilt: number): Arrangement => ({
  ...arrangement,
  items: arrangement.items.map((item) => (item.kind === 'camera' ? { ...item, tilt } : item)),
});

const x = { label: 'Standoff length', quantity: 'length' } as const;

export const plots: readonly Plot<FitValues, FitResult>[] = [
  {
    id: 'needed',
    title: 'Height needed against standoff length',
    caption:
      'A length clears where its curve lies under the dashed line. Longer standoffs sway more, so the plate dips more.',
    x,
    y: { label: 'Needed between the plates', quantity: 'length' },
    data: (_, result) => ({
      x: CATALOGUE_LENGTHS,
      series: [
        { label: 'A', role: 'main', y: result.a.shortestStandoff.lengths.map(({ needed }) => needed) },
        { label: 'B', role: 'second', y: result.b.shortestStandoff.lengths.map(({ needed }) => needed) },
        { label: 'the length itself', role: 'limit', y: CATALOGUE_LENGTHS },
      ],
      marker: result.a.shortestStandoff.bySway.sold ?? CATALOGUE_LENGTHS[0],
    }),
  },
  {
    id: 'side',
    title: 'Air left beside the parts in the hit',
    caption:
      'Where a curve falls to nothing, a swaying standoff reaches a part: that length is too long for the air at its side.',
    x,
    y: { label: 'Standoff to part', quantity: 'length' },
    data: (_, result) => ({
      x: CATALOGUE_LENGTHS,
      series: [
        { label: 'A', role: 'main', y: result.a.shortestStandoff.lengths.map(({ side }) => side?.gap ?? Number.NaN) },
        { label: 'B', role: 'second', y: result.b.shortestStandoff.lengths.map(({ side }) => side?.gap ?? Number.NaN) },
        { label: 'touch', role: 'limit', y: CATALOGUE_LENGTHS.map(() => 0) },
      ],
      marker: result.a.shortestStandoff.bySway.sold ?? CATALOGUE_LENGTHS[0],
    }),
  },
  {
    id: 'tilt',
    title: 'Height needed against camera tilt',
    caption: 'Level while the stack is the tallest, then the camera takes over. Nothing moving.',
    x: { label: 'Camera tilt', quantity: 'angle' },
    y: { label: 'Needed between the plates', quantity: 'length' },
    data: ({ aTilt }, { a, b, body }) => {
      const still = { ...body };
      delete still.hit;
      const needed = (arrangement: Arrangement) =>
        TILTS.map((tilt) => shortestStandoff(still, tilted(arrangement, tilt), still).byStack.needed);
      return {
        x: TILTS,
        series: [
          { label: 'A', role: 'main', y: needed(a.arrangement) },
          { label: 'B', role: 'second', y: needed(b.arrangement) },
        ],
        marker: aTilt,
      };
    },
  },
];
