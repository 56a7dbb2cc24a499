import { movingMassImpact, OBSTACLES, springsInSeries, type StrikeDirection } from '@frameworthy/shared/impact';
import type { InertiaTensor, MassProperties } from '@frameworthy/shared/mass';
import type { Plot, Series } from '~/island/declaration.ts';
import { DIRECTIONS, strikesOn, WORDS, type LoadResult } from './compute.ts';
import type { LoadValues } from './inputs.ts';

const POINTS = 25;
/** Each share of inertia is three eigenproblems: fewer points, which the smooth curve can spare. */
const SHARES = 13;
const ROLES = { sideways: 'main', vertical: 'second', along: 'comparison' } as const;

/** Mass and centre kept, inertia about all axes times a share. */
const withInertia = (craft: MassProperties, share: number): MassProperties => ({
  ...craft,
  inertia: Object.fromEntries(
    Object.entries(craft.inertia).map(([key, value]) => [key, value * share]),
  ) as unknown as InertiaTensor,
});

const curves = (
  directions: readonly StrikeDirection[],
  forces: (direction: StrikeDirection) => readonly number[],
): Series[] =>
  directions.map((direction) => ({ label: WORDS[direction], role: ROLES[direction], y: forces(direction) }));

export const plots: readonly Plot<LoadValues, LoadResult>[] = [
  {
    id: 'force-over-inertia',
    title: 'Peak force against moment of inertia, the same mass',
    caption:
      'Roll and pitch in step with yaw. Mass in the middle turns away and is hit less hard; along the arm nothing turns.',
    x: { label: 'Inertia in yaw', quantity: 'momentOfInertia' },
    y: { label: 'Peak force', quantity: 'force' },
    data: (values, { craft, arm }) => {
      const shares = Array.from({ length: SHARES }, (_, i) => 0.25 + i / 8);
      const struck = shares.map((share) => strikesOn(withInertia(craft, share), values, arm));
      return {
        x: shares.map((share) => share * craft.inertia.zz),
        marker: craft.inertia.zz,
        series: curves(['sideways', 'vertical'], (direction) => struck.map((strikes) => strikes[direction].peakForce)),
      };
    },
  },
  {
    id: 'force-over-contact',
    title: 'Peak force against the obstacle',
    caption: 'Soft things stretch the hit. Against hard ones the arm itself is the spring.',
    x: { label: 'Stiffness of the contact', quantity: 'stiffness' },
    y: { label: 'Peak force', quantity: 'force' },
    data: ({ speed }, { strikes, contact }) => {
      const even = Array.from({ length: POINTS }, (_, i) => 2e3 * 75 ** (i / (POINTS - 1)));
      const x = [...new Set([...even, contact])].sort((a, b) => a - b);
      // Only one spring of the row changes: mass and arm stay what they are.
      const force = (direction: StrikeDirection) => (spring: number) => {
        const { effectiveMass, armStiffness } = strikes[direction];
        return movingMassImpact({ mass: effectiveMass, speed, stiffness: springsInSeries([armStiffness, spring]) })
          .peakForce;
      };
      return {
        x,
        marker: contact,
        series: curves(DIRECTIONS, (direction) => x.map(force(direction))),
        stations: [
          { x: OBSTACLES.grass.stiffness, label: 'grass' },
          { x: OBSTACLES.branch.stiffness, label: 'branch' },
          { x: OBSTACLES.wood.stiffness, label: 'trunk' },
        ],
      };
    },
  },
];
