import { CATALOGUE_LENGTHS } from '@frameworthy/shared/standoff';
import type { Table } from '~/island/declaration.ts';
import { LIMIT_WORDS } from '../limit-words.ts';
import { solve, TOUCHES, type LayoutResult } from './compute.ts';
import type { LayoutValues } from './inputs.ts';

export const tables: readonly Table<LayoutValues, LayoutResult>[] = [
  {
    id: 'standoffs',
    title: 'What each standoff carries',
    caption:
      'Numbered as in the figure. Pull is positive. The face opens where the nominal preload is less than it takes.',
    columns: [
      { label: 'Standoff', quantity: 'count' },
      { label: 'Forward', quantity: 'length' },
      { label: 'To the left', quantity: 'length' },
      { label: 'Side force', quantity: 'force' },
      { label: 'Pull', quantity: 'force' },
      { label: 'Foot moment', quantity: 'moment' },
      { label: 'Head moment', quantity: 'moment' },
      { label: 'Wall stress', quantity: 'stress' },
      { label: 'Yields at', quantity: 'speed', digits: 2 },
      { label: 'Faces' },
    ],
    rows: (_, r) =>
      r.forces.map((force, i) => ({
        cells: [
          i + 1,
          r.places[i]!.x,
          r.places[i]!.y,
          force.shear,
          force.axial,
          force.footMoment,
          force.headMoment,
          r.wall[i]!,
          (r.speed * r.yieldStrength) / r.wall[i]!,
          r.closings[i]! > r.preload.nominal ? 'one opens' : 'closed',
        ],
      })),
  },
  {
    id: 'limits',
    title: 'What gives, in order',
    caption: 'In hits like this one, each limit as if the others held.',
    columns: [
      { label: 'What gives' },
      { label: 'At standoff' },
      { label: 'Hit at', quantity: 'speed', digits: 2 },
      { label: 'Force', quantity: 'force' },
    ],
    rows: (_, r) =>
      [
        ...r.limits.flatMap(({ name, speed, column }) =>
          speed === undefined ? [] : [{ what: LIMIT_WORDS[name], where: String(column + 1), speed }],
        ),
        { what: TOUCHES, where: 'none', speed: r.touches },
      ]
        .sort((a, b) => a.speed - b.speed)
        .map(({ what, where, speed }) => ({ cells: [what, where, speed, speed * r.forcePerSpeed] })),
  },
  {
    id: 'lengths',
    title: 'The lengths sold, in this layout and under this load',
    caption: 'All else as entered. A longer body is softer and is hit a little less hard; it still bends more.',
    columns: [
      { label: 'Length', quantity: 'length' },
      { label: 'Force', quantity: 'force' },
      { label: 'Movement', quantity: 'length', digits: 2 },
      { label: 'Foot moment', quantity: 'moment' },
      { label: 'Wall stress', quantity: 'stress' },
      { label: 'Preload needed', quantity: 'force' },
      { label: 'First limit at', quantity: 'speed', digits: 2 },
      { label: 'What gives first' },
      { label: 'Mass', quantity: 'mass' },
    ],
    rows: (values, { places }) =>
      [...new Set([...CATALOGUE_LENGTHS, values.length])]
        .sort((a, b) => a - b)
        .map((length) => {
          const r = solve({ ...values, length }, places);
          return {
            own: length === values.length,
            cells: [
              length,
              r.peakForce,
              r.movement,
              Math.max(...r.forces.map((c) => c.footMoment)),
              r.wall[r.worst]!,
              r.closing,
              r.first.speed,
              r.first.what,
              r.mass,
            ],
          };
        }),
  },
];
