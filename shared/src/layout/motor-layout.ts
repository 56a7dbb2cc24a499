import { InputError, type Warning } from '../error.ts';
import { requireBetween } from '../require.ts';
import { discOverlap, overlapPowerFactor } from './overlap.ts';
import { spacingWarnings } from './spacing-warnings.ts';

/** `true-x`: a square. `stretched`: longer fore and aft. `wide`: longer from side to side. */
export type LayoutShape = 'true-x' | 'stretched' | 'wide';

/** Seen from above, origin in the middle of the four motors, x to the right, y forward. */
export interface PlanPoint {
  /** [m] */
  x: number;
  /** [m] */
  y: number;
}

export interface MotorLayoutInput {
  /** [m] */
  propellerDiameter: number;
  /** Between the tip circles of the nearest neighbours; negative where they overlap [m]. */
  tipGap: number;
  shape: LayoutShape;
  /** Longer over shorter spacing, 1 or more; of no effect on a true X [-]. */
  stretch: number;
}

export interface MotorLayout {
  /** Front right, front left, rear left, rear right. */
  motors: readonly PlanPoint[];
  /** Between the motors of one end [m]. */
  lateralSpacing: number;
  /** Between the motors of one side [m]. */
  longitudinalSpacing: number;
  /** Between opposite motors [m]. */
  wheelbase: number;
  /** Of the front right arm, from straight ahead [rad]. */
  armAngle: number;
  lateralGap: number;
  longitudinalGap: number;
  /** Smaller gap over propeller diameter [-]. */
  gapPerDiameter: number;
  /** Share of each disc that its neighbours cover [-]. */
  overlap: number;
  /** Induced power over that of propellers apart [-]. */
  overlapPowerFactor: number;
  warnings: readonly Warning[];
}

/** Neighbours may turn at different heights; opposite propellers share a height, so their circles must stay apart. */
function requireOppositeApart(tipGap: number, diameter: number, stretch: number): void {
  const subject = { parameter: 'tipGap', quantity: 'tip gap', kind: 'length' } as const;
  requireBetween(tipGap, -diameter, 10, subject);
  const limit = diameter / Math.hypot(1, stretch) - diameter;
  if (tipGap < limit) {
    throw new InputError({
      ...subject,
      value: tipGap,
      rule: 'lets opposite propellers meet: it must be at least',
      limit,
    });
  }
}

/**
 * Places of four motors from propeller size, tip gap and shape.
 * $$s = D + g,\quad b_{short} = s,\quad b_{long} = q\,s,\quad \text{wheelbase} = \sqrt{b_x^2+b_y^2}$$
 * @param layout - propeller, gap, shape, stretch
 * @returns coordinates, spacings, gaps, overlap
 * @validity four motors, mirrored left to right and front to rear
 * @throws InputError when a number is out of range or opposite propellers would meet
 * @derivation plane geometry of a rectangle
 */
export function motorLayout({ propellerDiameter, tipGap, shape, stretch }: MotorLayoutInput): MotorLayout {
  requireBetween(propellerDiameter, 0.01, 10, {
    parameter: 'propellerDiameter',
    quantity: 'propeller diameter',
    kind: 'length',
  });
  requireBetween(stretch, 1, 5, { parameter: 'stretch', quantity: 'stretch', kind: 'ratio' });
  requireOppositeApart(tipGap, propellerDiameter, shape === 'true-x' ? 1 : stretch);
  const near = propellerDiameter + tipGap;
  const far = shape === 'true-x' ? near : near * stretch;
  const lateralSpacing = shape === 'wide' ? far : near;
  const longitudinalSpacing = shape === 'stretched' ? far : near;
  const [x, y] = [lateralSpacing / 2, longitudinalSpacing / 2];
  const covered = (spacing: number): number => discOverlap({ spacing, diameter: propellerDiameter });
  const overlap = covered(lateralSpacing) + covered(longitudinalSpacing);
  return {
    motors: [
      { x, y },
      { x: -x, y },
      { x: -x, y: -y },
      { x, y: -y },
    ],
    lateralSpacing,
    longitudinalSpacing,
    wheelbase: Math.hypot(lateralSpacing, longitudinalSpacing),
    armAngle: Math.atan2(x, y),
    lateralGap: lateralSpacing - propellerDiameter,
    longitudinalGap: longitudinalSpacing - propellerDiameter,
    gapPerDiameter: tipGap / propellerDiameter,
    overlap,
    overlapPowerFactor: overlapPowerFactor(Math.min(overlap, 1)),
    warnings: spacingWarnings(tipGap, propellerDiameter),
  };
}
