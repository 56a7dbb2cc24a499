import type { Table } from '~/island/declaration.ts';
import type { ArmResult } from './compute.ts';
import type { ArmValues } from './inputs.ts';
import type { Part } from './parts.ts';

const row = (name: string, { mass, stiffness, thrust, root }: Part) => ({
  cells: [
    name,
    mass,
    stiffness.vertical,
    stiffness.horizontal,
    stiffness.torsion,
    thrust.deflection,
    root.vertical,
    root.horizontal,
  ],
});

export const sideBySide: Table<ArmValues, ArmResult> = {
  id: 'side-by-side',
  title: 'Side by side',
  caption: 'Stiffness and largest force stand at the motor; rise is that under full thrust.',
  columns: [
    { label: 'arm' },
    { label: 'mass', quantity: 'mass' },
    { label: 'stiffness up and down', quantity: 'stiffness' },
    { label: 'sideways', quantity: 'stiffness' },
    { label: 'twist', quantity: 'rotationalStiffness' },
    { label: 'rise', quantity: 'length' },
    { label: 'force up or down', quantity: 'force' },
    { label: 'force sideways', quantity: 'force' },
  ],
  rows: (_, { tube, strip }) => [row('round tube', tube), row('plate strip', strip)],
};
