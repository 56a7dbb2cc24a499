import { requireBetween } from '../require.ts';
import { requireLength, requireModulus, requireStrength } from '../require-physical.ts';
import { layeredSection } from './layered-section.ts';
import { leadInLength, taperFactor } from './lead-in.ts';
import { requiredLength, type RequiredLength } from './required-length.ts';
import { rootMoment, type RootedArm } from './root-moment.ts';

/** A pad bonded on one face of a plate arm, bent up or down. */
export interface PadDoublerGiven extends RootedArm {
  /** Width of plate and pad [m]. */
  width: number;
  plateThickness: number;
  padThickness: number;
  /** Young's moduli along the arm [Pa]. */
  plateModulus: number;
  padModulus: number;
  /** Bending stress that the plate bears [Pa]. */
  plateStrength: number;
  /** Shear modulus [Pa] and thickness [m] of the adhesive. */
  shearModulus: number;
  bondLine: number;
  /** From the inner screw to the inner end of the arm [m]. */
  edgeDistance: number;
  holeDiameter: number;
  /** Length over which the end of the pad is thinned to nothing [m]. */
  taper: number;
  /** Stress factor just past a square end. */
  squareEndFactor: number;
}

export interface PadDoubler {
  required: RequiredLength;
  /** Rate of load transfer [1/m]. */
  lambda: number;
  /** Largest stress in the plate at the outer screw, led in, holes not counted [Pa]. */
  plateStress: number;
  /** The same without a pad [Pa]. */
  bareStress: number;
  /** Elastic peak bond shear at the end of a pad of the required length [Pa]. */
  bondPeak: number;
}

/**
 * A pad on one face of a plate arm: required length, what it takes off the plate, and its bond's end peak.
 * $$\lambda^2 = \frac{G_a}{t_a}\left[\frac1{E_1t_1}+\frac1{E_2t_2}+\frac{e^2}{D_1+D_2}\right],\quad
 * N_\infty = \frac{me/(D_1+D_2)}{\frac1{E_1t_1}+\frac1{E_2t_2}+\frac{e^2}{D_1+D_2}},\quad \tau_{max} = f\lambda N_\infty$$
 * @param given - plate, pad, adhesive, arm and strength
 * @returns required length [m], rate of transfer [1/m], stresses in the plate and peak bond shear [Pa]
 * @validity bending across the plate; narrow beam; peel, which breaks most pads, is not included
 * @throws InputError for values that are not physical
 * @derivation Per width: the pad's force N stretches it and squeezes the plate, and both bend to one curvature
 * (m − N e)/(D1 + D2), with e between their middles and D = E t³/12. The slip between the faces grows with
 * N(1/S1 + 1/S2) − e · curvature; put q = N' = (G/t_a) slip in and it is a shear-lag equation with this λ and N∞.
 */
export function padDoubler(given: PadDoublerGiven): PadDoubler {
  const { width, plateThickness, padThickness, plateModulus, padModulus, shearModulus, bondLine, taper } = given;
  requireLength(width, { parameter: 'width', quantity: 'width of the arm' });
  requireLength(plateThickness, { parameter: 'plateThickness', quantity: 'plate thickness' });
  requireLength(padThickness, { parameter: 'padThickness', quantity: 'pad thickness' });
  requireModulus(plateModulus, { parameter: 'plateModulus', quantity: 'modulus of the plate' });
  requireModulus(padModulus, { parameter: 'padModulus', quantity: 'modulus of the pad' });
  requireStrength(given.plateStrength, { parameter: 'plateStrength', quantity: 'allowable stress of the plate' });
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'adhesive shear modulus' });
  requireLength(bondLine, { parameter: 'bondLine', quantity: 'bond-line thickness' });
  requireLength(given.holeDiameter, { parameter: 'holeDiameter', quantity: 'hole diameter' });
  requireBetween(given.squareEndFactor, 1, 10, {
    parameter: 'squareEndFactor',
    quantity: 'end-step factor',
    kind: 'ratio',
  });

  const bending = (plateModulus * plateThickness ** 3 + padModulus * padThickness ** 3) / 12;
  const apart = (plateThickness + padThickness) / 2;
  const give = 1 / (plateModulus * plateThickness) + 1 / (padModulus * padThickness) + apart ** 2 / bending;
  const lambda = Math.sqrt((shearModulus / bondLine) * give);
  const left = taperFactor({ lambda, taper });
  const bare = { secondMomentOfArea: (width * plateThickness ** 3) / 12, extremeFibre: plateThickness / 2 };
  const required = requiredLength({
    ...given,
    bare,
    allowable: given.plateStrength,
    endStep: 1 + (given.squareEndFactor - 1) * left,
    holeReach: given.holeDiameter,
    leadIn: leadInLength({ lambda, taper }),
  });

  const moment = rootMoment(given, 0);
  const layers = [
    { modulus: padModulus, width, thickness: padThickness },
    { modulus: plateModulus, width, thickness: plateThickness },
  ];
  const faces = layeredSection({ layers, moment }).stresses[1] ?? { top: 0, bottom: 0 };
  const atEnd = rootMoment(given, required.pastScrew) / width;
  return {
    required,
    lambda,
    plateStress: Math.max(Math.abs(faces.top), Math.abs(faces.bottom)),
    bareStress: (moment * bare.extremeFibre) / bare.secondMomentOfArea,
    bondPeak: (left * lambda * atEnd * apart) / bending / give,
  };
}
