import type { Onward, QuantityInput, Slot } from '~/island/declaration.ts';
import { shapeInputs } from '../arm-inputs.ts';
import { slotOf } from '../slot-of.ts';
import type { LaminateResult } from './compute.ts';
import type { LaminateValues } from './inputs.ts';

type Carry = Onward<LaminateValues, LaminateResult>;

const modulus = slotOf('modulus');
const stress = slotOf('stress', 3);
const density = ({ massPerArea, stiffness }: LaminateResult): Slot => ({
  value: massPerArea / stiffness.thickness,
  quantity: 'density',
});

/** The stack's thickness as that of a wall or plate, where one is made so. */
const thickness = (key: string, { min, max }: Pick<QuantityInput, 'min' | 'max'>, { stiffness }: LaminateResult) =>
  stiffness.thickness >= min && stiffness.thickness <= max
    ? { [key]: { value: stiffness.thickness, quantity: 'length' } as const }
    : {};
const wall = (result: LaminateResult) => thickness('wall', shapeInputs.wall, result);

/** Of a tube, whose walls are pulled on one side and pushed on the other as it bends. */
const tubeStrength = ({ tension, compression }: LaminateResult) => Math.min(tension.stress, compression.stress);
/** Only of the wall of a tube. */
const ofTube =
  (pick: (result: LaminateResult) => Readonly<Record<string, Slot | string>>): Carry['values'] =>
  (result, { part }) =>
    part === 'tube' ? pick(result) : undefined;

export const carriesTo: readonly Carry[] = [
  {
    calculator: 'arm-frequency',
    page: '../arms/vibration.html',
    says: 'Frequencies of an arm made of this',
    values: (result, { part }) => ({
      shape: part === 'tube' ? 'tube' : 'strip',
      material: 'own',
      youngsModulus: modulus(part === 'tube' ? result.inPlane.modulusX : result.flexural.modulusX),
      shearModulus: modulus(result.inPlane.shearModulus),
      density: density(result),
      ...(part === 'tube' ? wall(result) : thickness('height', shapeInputs.height, result)),
    }),
  },
  {
    calculator: 'tube-or-plate',
    page: '../arms/tube-or-plate.html',
    says: 'Tube or plate, one of them made of this',
    values: (result, { part }) =>
      part === 'tube'
        ? {
            tubeMaterial: 'own',
            tubeModulus: modulus(result.inPlane.modulusX),
            tubeShear: modulus(result.inPlane.shearModulus),
            tubeDensity: density(result),
            tubeStrength: stress(tubeStrength(result)),
            ...wall(result),
          }
        : {
            stripMaterial: 'own',
            stripModulus: modulus(result.flexural.modulusX),
            stripShear: modulus(result.inPlane.shearModulus),
            stripDensity: density(result),
            stripStrength: stress(result.bending.stress),
            ...thickness('thickness', shapeInputs.height, result),
          },
  },
  {
    calculator: 'two-screw-root',
    page: '../arms/arm-joints.html',
    says: 'Two-screw root of this tube; bearing strength stays the typical one',
    values: ofTube((result) => ({
      tubeMaterial: 'own',
      bendingStrength: stress(tubeStrength(result)),
      shearStrength: stress(result.shear.stress),
      ...wall(result),
    })),
  },
  {
    calculator: 'clamp-torque',
    page: '../arms/arm-joints.html',
    says: 'Clamp torque on this tube',
    values: ofTube((result) => ({
      tubeMaterial: 'own',
      hoopBendingStrength: stress(result.bendingAcross.stress),
      ...wall(result),
    })),
  },
  {
    calculator: 'doubler-length',
    page: '../arms/doublers.html',
    says: 'Sleeve in this tube',
    values: ofTube((result) => ({
      tubeModulus: modulus(result.inPlane.modulusX),
      tubeStrength: stress(tubeStrength(result)),
    })),
  },
  {
    calculator: 'doubler-length',
    page: '../arms/doublers.html',
    says: 'Sleeve made of this',
    values: ofTube((result) => ({
      sleeveModulus: modulus(result.inPlane.modulusX),
      sleeveStrength: stress(tubeStrength(result)),
      sleeveDensity: density(result),
    })),
  },
];
