import { InputError, type Warning } from '../error.ts';
import { requireBetween, requireFinite, requirePositive } from '../require.ts';
import type { Plane } from '../section/index.ts';
import { requireSegments, rigidity, type ArmSegment } from './segment.ts';

export interface ArmLoad {
  /** From the outer root screw (x = 0) to the motor axis. */
  segments: readonly ArmSegment[];
  plane: Plane;
  /** Across the arm at the motor axis [N]. */
  tipForce: number;
  /** At the motor axis, bending the arm the same way as the force [N·m]. */
  tipMoment?: number;
  /** Rotational spring at the root; fixed where not given [N·m/rad]. */
  rootStiffness?: number;
  /** Even steps within each segment for the curves [-]. */
  steps?: number;
}

export interface ArmStation {
  /** From the outer screw [m]. */
  x: number;
  /** [N] */
  shear: number;
  /** [N·m] */
  moment: number;
  /** Rotation of the section [rad]. */
  slope: number;
  /** [m] */
  deflection: number;
  /** Outer-fibre bending stress of each layer, in the order of the segment's layers [Pa]. */
  stress: readonly number[];
}

export interface ArmBending {
  /** Two stations stand at each step of the section: before and after it. */
  stations: readonly ArmStation[];
  tipDeflection: number;
  /** How far the motor axis tilts [rad]. */
  tipSlope: number;
  warnings: readonly Warning[];
}

const STEEPEST_SLOPE = 0.15;

/**
 * Shear, moment, slope, deflection and outer-fibre stress along a stepped arm: Timoshenko's beam, integrated exactly
 * segment by segment.
 * $$M(x) = F(L-x)+M_t,\quad \theta' = \frac{M}{EI},\quad w' = \theta + \frac{F}{\kappa A G},\quad \sigma_i = E_i\frac{M}{EI}c_i$$
 * @param load - segments, plane, tip force and moment, root spring
 * @returns stations along the arm, values at the tip
 * @validity slopes small, material linear, sections stay round; a warning stands where the slope is large
 * @throws InputError when a number is out of range
 * @source gere-2004-mechanics, chapters 4, 9; cowper-1966-shear for κ
 */
export function armBending(load: ArmLoad): ArmBending {
  const { segments, plane, tipForce, tipMoment = 0, rootStiffness, steps = 12 } = load;
  requireSegments(segments);
  requirePlane(plane);
  requireFinite(tipForce, { parameter: 'tipForce', quantity: 'force at the motor', kind: 'force' });
  requireFinite(tipMoment, { parameter: 'tipMoment', quantity: 'moment at the motor', kind: 'moment' });
  requireBetween(steps, 1, 1000, { parameter: 'steps', quantity: 'steps of a segment', kind: 'count' });
  if (rootStiffness !== undefined) {
    requirePositive(rootStiffness, {
      parameter: 'rootStiffness',
      quantity: 'rotational stiffness of the root',
      kind: 'rotationalStiffness',
    });
  }
  const count = Math.floor(steps);
  const length = segments.reduce((sum, segment) => sum + segment.length, 0);
  const momentAt = (x: number): number => tipForce * (length - x) + tipMoment;

  const stations: ArmStation[] = [];
  let start = { x: 0, slope: rootStiffness === undefined ? 0 : momentAt(0) / rootStiffness, deflection: 0 };
  for (const segment of segments) {
    const { flexural, shear } = rigidity(segment, plane);
    const moment = momentAt(start.x);
    for (let i = 0; i <= count; i++) {
      const u = (segment.length * i) / count;
      const here = momentAt(start.x + u);
      stations.push({
        x: start.x + u,
        shear: tipForce,
        moment: here,
        slope: start.slope + (moment * u - (tipForce * u ** 2) / 2) / flexural,
        deflection:
          start.deflection +
          start.slope * u +
          ((moment * u ** 2) / 2 - (tipForce * u ** 3) / 6) / flexural +
          (tipForce * u) / shear,
        stress: segment.layers.map(
          (layer) => (layer.youngsModulus * here * layer.section[plane].extremeFibre) / flexural,
        ),
      });
    }
    start = stations.at(-1)!;
  }
  const tip = start;
  const warnings: Warning[] =
    Math.abs(tip.slope) > STEEPEST_SLOPE
      ? [{ code: 'large-slope', message: 'The arm bends so far that small-slope theory no longer holds.' }]
      : [];
  return { stations, tipDeflection: tip.deflection, tipSlope: tip.slope, warnings };
}

/**
 * Refuses anything but the two planes.
 * @throws InputError when it is neither
 */
export function requirePlane(plane: Plane): void {
  if (plane !== 'vertical' && plane !== 'horizontal') {
    throw new InputError({
      parameter: 'plane',
      quantity: 'plane of bending',
      value: plane,
      rule: 'must be vertical or horizontal',
    });
  }
}
