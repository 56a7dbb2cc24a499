import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';
import { requireLength, requireStrength } from '../require-physical.ts';
import type { DoubledTubeGiven } from './doubled-tube.ts';
import { requireArm, type RootedArm } from './root-moment.ts';

/** A sleeve bonded in the root of a tube arm, and what the arm has to bear. */
export interface TubeDoublerGiven extends DoubledTubeGiven, RootedArm {
  /** From the inner screw to the inner end of tube and sleeve [m]. */
  edgeDistance: number;
  /** Length of the sleeve as chosen [m]. */
  length: number;
  /** Length over which the outer end of the sleeve is thinned to nothing [m]. */
  taper: number;
  /** Bending stress that the tube bears where it is whole [Pa]. */
  tubeStrength: number;
  /** The same of the sleeve [Pa]. */
  sleeveStrength: number;
  /** Share of that strength left on the net section beside a screw hole. */
  holeShare: number;
  /** Stress factor just past a square sleeve end. */
  squareEndFactor: number;
  /** Density of the sleeve [kg/m³]. */
  sleeveDensity: number;
}

/**
 * Refuses a doubler that cannot be.
 * @throws InputError when a value is not physical, the sleeve would pass the motor axis or its taper is longer than it.
 */
export function requireTubeDoubler(given: TubeDoublerGiven): void {
  requireArm(given);
  const { edgeDistance, screwSpacing, armLength, length, taper } = given;
  requireLength(edgeDistance, { parameter: 'edgeDistance', quantity: 'edge distance' });
  requireLength(length, { parameter: 'length', quantity: 'sleeve length' });
  requireStrength(given.tubeStrength, { parameter: 'tubeStrength', quantity: 'allowable stress of the tube' });
  requireStrength(given.sleeveStrength, { parameter: 'sleeveStrength', quantity: 'allowable stress of the sleeve' });
  requireBetween(given.holeShare, 0.01, 1, {
    parameter: 'holeShare',
    quantity: 'strength kept beside a hole',
    kind: 'percent',
  });
  requireBetween(given.squareEndFactor, 1, 10, {
    parameter: 'squareEndFactor',
    quantity: 'end-step factor',
    kind: 'ratio',
  });
  requireBetween(given.sleeveDensity, 1, 1e5, {
    parameter: 'sleeveDensity',
    quantity: 'sleeve density',
    kind: 'density',
  });
  requireBetween(taper, 0, 100, { parameter: 'taper', quantity: 'taper length', kind: 'length' });
  const whole = edgeDistance + screwSpacing + armLength;
  if (length > whole) {
    throw new InputError({
      parameter: 'length',
      quantity: 'sleeve length',
      value: length,
      rule: 'must not pass the motor axis',
      limit: whole,
      kind: 'length',
    });
  }
  if (taper > length) {
    throw new InputError({
      parameter: 'taper',
      quantity: 'taper length',
      value: taper,
      rule: 'must not be longer than the sleeve',
      limit: length,
      kind: 'length',
    });
  }
}
