import { OBSTACLES } from '@frameworthy/shared/impact';
import type { InertiaTensor, MassProperties } from '@frameworthy/shared/mass';
import type { Plot, Series } from '~/island/declaration.ts';
import { DIRECTIONS, strikesOn, WORDS, type LoadResult } from './compute.ts';
import type { LoadValues } from './inputs.ts';

const POINTS = 25;
const ROLES = { sideways: 'main', vertical: 'second', along: 'comparison' } as const;

/** Mass and centre kept, inertia about all axes times a share. */
const withInertia = (craft: MassProperties, share: number): MassProperties => ({
  ...craft,
  inertia: Object.fromEntries(
    Object.entries(craft.inertia).map(([key, value]) => [key, value * share]),
  ) as unknown as InertiaTensor,
});

const curves = (at: readonly ReturnType<typeof strikesOn>[]): Series[] =>
  DIRECTIONS.map((direction) => ({
    label: WORDS[direction],
    role: ROLES[direction],
    y: at.map((strikes) => strikes[direction].peakForce),
  }));

export const plots: readonly Plot<LoadValues, LoadResult>[] = [
  {
    id: 'force-over-inertia',
    title: 'Peak force against moment of inertia, the same mass',
    caption:
      'Roll and pitch change in step with yaw. A craft with its mass in the middle gives way by turning and is hit less hard; along the arm there is nothing to turn.',
    x: { label: 'Inertia in yaw', quantity: 'momentOfInertia' },
    y: { label: 'Peak force', quantity: 'force' },
    data: (values, { craft, arm }) => {
      const shares = Array.from({ length: POINTS }, (_, i) => 0.25 + i / 12);
      return {
        x: shares.map((share) => share * craft.inertia.zz),
        marker: craft.inertia.zz,
        series: curves(shares.map((share) => strikesOn(withInertia(craft, share), values, arm))),
      };
    },
  },
  {
    id: 'force-over-contact',
    title: 'Peak force against the obstacle',
    caption:
      'Soft things stretch the hit. Against hard ones the arm itself is the spring, and the bending curves level off.',
    x: { label: 'Stiffness of the contact', quantity: 'stiffness' },
    y: { label: 'Peak force', quantity: 'force' },
    data: (values, { craft, arm, contact }) => {
      const even = Array.from({ length: POINTS }, (_, i) => 2e3 * 75 ** (i / (POINTS - 1)));
      const x = contact > 2e3 && contact < 150e3 ? [...new Set([...even, contact])].sort((a, b) => a - b) : even;
      const at = (contactStiffness: number) =>
        strikesOn(craft, { ...values, obstacle: 'entered', contactStiffness }, arm);
      return {
        x,
        ...(contact <= 150e3 ? { marker: contact } : {}),
        series: curves(x.map(at)),
        stations: [
          { x: OBSTACLES.grass.stiffness, label: 'grass' },
          { x: OBSTACLES.branch.stiffness, label: 'branch' },
          { x: OBSTACLES.wood.stiffness, label: 'trunk' },
        ],
      };
    },
  },
];
