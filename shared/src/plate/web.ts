import { InputError } from '../error.ts';
import { requireBetween, requireFinite } from '../require.ts';
import { requireLength, requireModulus } from '../require-physical.ts';
import { rectangleShearCoefficient } from '../section/index.ts';
import { DEFAULT_POISSON_RATIO, requireThickness } from './rigidity.ts';

export interface CutPlate {
  /** Of the plate where the cutout is [m]. */
  plateWidth: number;
  thickness: number;
  /** Of the cutout, across and along the plate [m]. */
  cutoutWidth: number;
  cutoutLength: number;
  /** Middle of the cutout from the middle of the plate, to the left positive [m]. */
  cutoutOffset: number;
  /** In the plane of the plate [Pa]. */
  youngsModulus: number;
  shearModulus: number;
}

/** At the middle of the cutout. */
export interface CutPlateLoad {
  /** Along the plate, pull positive, on the plate's middle line [N]. */
  axial: number;
  /** Across the plate in its own plane [N]. */
  shear: number;
  /** In the plane of the plate [N·m]. */
  moment: number;
  /** Out of the plane of the plate [N·m]. */
  outOfPlane: number;
}

export interface Web {
  width: number;
  /** Along the web [N]. */
  axial: number;
  /** Across it, in the plane [N]. */
  shear: number;
  /** Largest moment in its own plane, at one of its ends [N·m]. */
  moment: number;
  /** From pull or push, from its own bending in the plane, and out of it [Pa]. */
  axialStress: number;
  bendingStress: number;
  outOfPlaneStress: number;
  /** All three at the worst corner [Pa]. */
  stress: number;
}

/**
 * Stress of the two webs that a cutout leaves in a plate: each is pulled or pushed by the couple of the moment, and
 * bends into an S under its share of the shear.
 * $$\sigma_i = \frac{|N_i|}{b_i t} + \frac{6M_i}{t b_i^2} + \frac{6M_o}{t^2\sum b},\quad M_i = E I_i\kappa + \frac{V_i L}{2}$$
 * @param plate - sizes and moduli
 * @param load - forces and moments at the middle of the cutout
 * @returns left web, then right web
 * @validity solid plate before and behind the cutout; rounded corners, whose peak is not counted; webs shorter than
 * about a fifth of their width are no beams
 * @throws InputError when a number is out of range, or the cutout leaves no web
 * @derivation plane sections at both ends of the cutout: N_i = E A_i (ε + κ y_i), own moment E I_i κ; both webs move alike
 * across, so V_i follows 1/(L³/12EI_i + L/κGA_i), with the turning point at half length
 */
export function webs(plate: CutPlate, load: CutPlateLoad): readonly [left: Web, right: Web] {
  const { plateWidth, thickness, cutoutWidth, cutoutLength, cutoutOffset, youngsModulus, shearModulus } = plate;
  requireLength(plateWidth, { parameter: 'plateWidth', quantity: 'width of the plate' });
  requireThickness(thickness);
  requireLength(cutoutWidth, { parameter: 'cutoutWidth', quantity: 'width of the cutout' });
  requireLength(cutoutLength, { parameter: 'cutoutLength', quantity: 'length of the cutout' });
  requireBetween(cutoutOffset, -100, 100, {
    parameter: 'cutoutOffset',
    quantity: 'offset of the cutout',
    kind: 'length',
  });
  requireModulus(youngsModulus, { parameter: 'youngsModulus', quantity: 'Young’s modulus of the plate' });
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'shear modulus of the plate' });
  for (const [parameter, value] of Object.entries(load)) {
    requireFinite(value, { parameter, quantity: `${parameter} load on the plate` });
    requireBetween(value, -1e9, 1e9, { parameter, quantity: `${parameter} load on the plate` });
  }
  const side = (sign: number) => plateWidth / 2 - sign * cutoutOffset - cutoutWidth / 2;
  const [left, right] = [side(1), side(-1)];
  if (Math.min(left, right) < 1e-3 * plateWidth) throw noWeb(plate);

  const bars = [left, right].map((width, i) => ({
    width,
    area: width * thickness,
    inertia: (thickness * width ** 3) / 12,
    y: (i === 0 ? 1 : -1) * (plateWidth / 2 - width / 2),
  }));
  const area = bars.reduce((sum, bar) => sum + bar.area, 0);
  const centre = bars.reduce((sum, bar) => sum + bar.area * bar.y, 0) / area;
  const inertia = bars.reduce((sum, bar) => sum + bar.inertia + bar.area * (bar.y - centre) ** 2, 0);
  // Pull on the middle line stretches both, and bends the plate where the webs differ.
  const curvature = (load.moment - load.axial * centre) / inertia;
  const kappa = rectangleShearCoefficient(DEFAULT_POISSON_RATIO);
  const stiffness = bars.map(
    (bar) =>
      1 / (cutoutLength ** 3 / (12 * youngsModulus * bar.inertia) + cutoutLength / (kappa * shearModulus * bar.area)),
  );
  const both = stiffness[0]! + stiffness[1]!;
  const outOfPlaneStress = (6 * Math.abs(load.outOfPlane)) / (thickness ** 2 * (left + right));
  const web = (bar: (typeof bars)[number], share: number): Web => {
    const axial = bar.area * (load.axial / area + curvature * (bar.y - centre));
    const shear = load.shear * share;
    const moment = Math.abs(bar.inertia * curvature) + (Math.abs(shear) * cutoutLength) / 2;
    const axialStress = Math.abs(axial) / bar.area;
    const bendingStress = (moment * bar.width) / 2 / bar.inertia;
    const stress = axialStress + bendingStress + outOfPlaneStress;
    return { width: bar.width, axial, shear, moment, axialStress, bendingStress, outOfPlaneStress, stress };
  };
  return [web(bars[0]!, stiffness[0]! / both), web(bars[1]!, stiffness[1]! / both)];
}

function noWeb({ plateWidth, cutoutWidth, cutoutOffset }: CutPlate): InputError {
  const fits = cutoutWidth < plateWidth;
  return new InputError({
    parameter: fits ? 'cutoutOffset' : 'cutoutWidth',
    quantity: fits ? 'offset of the cutout' : 'width of the cutout',
    value: fits ? cutoutOffset : cutoutWidth,
    rule: fits
      ? 'leaves no web on one side: move it back to the middle, or below'
      : 'leaves no web: it must be smaller than the plate',
    limit: fits ? (plateWidth - cutoutWidth) / 2 : plateWidth,
    kind: 'length',
  });
}
