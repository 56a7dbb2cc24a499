import { MEASURED_OVER_LINEAR } from '@frameworthy/shared/impact';
import { sweep, type Plot } from '~/island/declaration.ts';
import type { DropResult } from './compute.ts';
import type { DropValues } from './inputs.ts';

const series = [
  { label: 'linear', of: ({ each }: DropResult) => each, role: 'main' },
  { label: 'upper end', of: ({ each }: DropResult) => MEASURED_OVER_LINEAR * each, role: 'second' },
  { label: 'arm breaks', of: ({ allowable }: DropResult) => allowable, role: 'limit' },
] as const;

export const plots: readonly Plot<DropValues, DropResult>[] = [
  {
    id: 'load-over-height',
    title: 'Load on each arm or foot against height',
    caption: 'The load grows with the root of the height: four times the height is twice the load.',
    x: { label: 'Height of the fall', quantity: 'altitude' },
    y: { label: 'Load on each', quantity: 'force' },
    data: (values, _result, compute) =>
      sweep(
        values,
        compute,
        { input: 'dropHeight', from: 0.05, to: Math.max(6, 2 * values.dropHeight), count: 31 },
        series,
      ),
  },
  {
    id: 'load-over-ground',
    title: 'Load on each against the ground',
    caption: 'Grass does more for an arm than another half millimetre of wall.',
    x: { label: 'Stiffness of the ground', quantity: 'stiffness' },
    y: { label: 'Load on each', quantity: 'force' },
    data: (values, { contact }, compute) =>
      sweep(
        { ...values, obstacle: 'entered', contactStiffness: contact },
        compute,
        { input: 'contactStiffness', from: 2e3, to: Math.max(150e3, contact), count: 31 },
        series,
      ),
  },
];
