import { ROLL_WRAPPED_TUBE, WOVEN_PLATE, type CarbonPart } from '@frameworthy/shared/material';
import type { Input, QuantityInput, Values } from '~/island/declaration.ts';
import { armLength, outerDiameter, wall } from '../root-inputs.ts';

const MM = 1e-3;
const GPA = 1e9;
const MPA = 1e6;

type Choices = Readonly<Record<string, number | string>>;
type Numbers = [value: number, min: number, max: number, step: number];

/** Own values of a material, hidden while a name stands for them. */
function own(part: 'tube' | 'strip', group: string, typical: CarbonPart) {
  const shownWhen = (values: Choices): boolean => values[`${part}Material`] === 'own';
  const field = <Q extends QuantityInput['quantity']>(
    quantity: Q,
    label: string,
    help: string,
    [value, min, max, step]: Numbers,
    parameters: readonly string[] = [],
  ) => ({ label, help, group, quantity, default: value, min, max, step, shownWhen, parameters });
  return {
    modulus: field('modulus', 'Modulus along the arm', 'In bending. 40 to 130 GPa for carbon parts.', [
      typical.youngsModulus.typical,
      5 * GPA,
      300 * GPA,
      GPA,
    ]),
    shear: field('modulus', 'Shear modulus', 'More with plies at ±45°.', [
      typical.shearModulus.typical,
      GPA,
      100 * GPA,
      0.5 * GPA,
    ]),
    density: field('density', 'Density', '1.5 to 1.6 g/cm³ for carbon.', [typical.density.typical, 500, 9000, 10]),
    strength: field('stress', 'Bending strength', 'Along the arm, the lower of tension and compression.', [
      typical.bendingStrength.typical,
      20 * MPA,
      3000 * MPA,
      10 * MPA,
    ]),
  };
}

const ownTube = own('tube', 'Round tube', ROLL_WRAPPED_TUBE);
const ownStrip = own('strip', 'Plate strip', WOVEN_PLATE);

export const inputs = {
  armLength: { ...armLength, parameters: ['length'] },
  behind: {
    label: 'Behind the outer screw',
    quantity: 'length',
    default: 30 * MM,
    min: 0,
    max: 120 * MM,
    step: 1 * MM,
    group: 'Arm',
    help: 'Arm inside the body: it weighs and does not bend.',
  },
  holeDiameter: {
    label: 'Hole at the outer screw',
    symbol: 'd',
    quantity: 'length',
    default: 3.2 * MM,
    min: 1 * MM,
    max: 5.5 * MM,
    step: 0.1 * MM,
    group: 'Arm',
    frameField: 'arm.root.holeDiameter',
    help: 'Upright through tube or strip.',
  },
  outerDiameter: { ...outerDiameter, group: 'Round tube', min: 6 * MM },
  wall: { ...wall, group: 'Round tube' },
  beyond: {
    label: 'Tube beyond the motor axis',
    quantity: 'length',
    default: 15 * MM,
    min: 0,
    max: 60 * MM,
    step: 1 * MM,
    group: 'Round tube',
    help: 'That end meets the ground first.',
  },
  mountMass: {
    label: 'Motor mount on the tube',
    quantity: 'mass',
    default: 3e-3,
    min: 0,
    max: 40e-3,
    step: 0.5e-3,
    group: 'Round tube',
    help: 'Plate, glue and tow. A strip needs none.',
  },
  tubeMaterial: {
    label: 'Tube',
    choices: { rolled: 'roll-wrapped', pultruded: 'pultruded', own: 'own values' },
    default: 'rolled',
    group: 'Round tube',
    help: 'Typical values stand behind the names.',
  },
  tubeModulus: ownTube.modulus,
  tubeShear: ownTube.shear,
  tubeDensity: ownTube.density,
  tubeStrength: ownTube.strength,
  wireCount: {
    label: 'Wires in the bore',
    quantity: 'count',
    default: 3,
    min: 1,
    max: 7,
    step: 1,
    group: 'Round tube',
    help: 'A motor has three of them.',
  },
  wireDiameter: {
    label: 'Diameter of a wire',
    quantity: 'length',
    default: 2.1 * MM,
    min: 0.5 * MM,
    max: 6 * MM,
    step: 0.1 * MM,
    group: 'Round tube',
    help: 'Over the insulation: 1.9 to 2.4 mm for 22 to 18 AWG.',
  },
  thickness: {
    label: 'Thickness of the plate',
    symbol: 'h',
    quantity: 'length',
    default: 5 * MM,
    min: 1.5 * MM,
    max: 12 * MM,
    step: 0.5 * MM,
    group: 'Plate strip',
    frameField: 'arm.strip.thickness',
    help: '4 to 6 mm on 5-inch frames.',
  },
  rootWidth: {
    label: 'Width at the root',
    symbol: 'b_r',
    quantity: 'length',
    default: 15 * MM,
    min: 7 * MM,
    max: 60 * MM,
    step: 0.5 * MM,
    group: 'Plate strip',
    help: 'At the outer screw.',
  },
  tipWidth: {
    label: 'Width at the tip',
    symbol: 'b_t',
    quantity: 'length',
    default: 10 * MM,
    min: 4 * MM,
    max: 60 * MM,
    step: 0.5 * MM,
    group: 'Plate strip',
    help: 'Where the round end begins.',
  },
  endDiameter: {
    label: 'Round end under the motor',
    symbol: 'D_e',
    quantity: 'length',
    default: 26 * MM,
    min: 4 * MM,
    max: 80 * MM,
    step: 1 * MM,
    group: 'Plate strip',
    help: 'About the motor axis, as wide as the tip or wider.',
  },
  edges: {
    label: 'Edges',
    choices: { square: 'square, as cut', round: 'rounded off' },
    default: 'square',
    group: 'Plate strip',
    help: 'Rounded to half circles.',
  },
  stripMaterial: {
    label: 'Plate',
    choices: { woven: 'woven, 0/90', quasi: 'quasi-isotropic', own: 'own values' },
    default: 'woven',
    group: 'Plate strip',
    help: 'Typical values stand behind the names.',
  },
  stripModulus: ownStrip.modulus,
  stripShear: ownStrip.shear,
  stripDensity: ownStrip.density,
  stripStrength: ownStrip.strength,
  thrust: {
    label: 'Full thrust of one motor',
    symbol: 'T',
    quantity: 'force',
    default: 15,
    min: 0.1,
    max: 200,
    step: 0.5,
    group: 'Motor',
    frameField: 'motor.fullThrust',
    help: '13 to 18 N for a 5-inch motor on six cells.',
  },
  torquePerThrust: {
    label: 'Reaction torque per thrust',
    symbol: '\\kappa',
    quantity: 'length',
    default: 13.5 * MM,
    min: 2 * MM,
    max: 60 * MM,
    step: 0.5 * MM,
    group: 'Motor',
    frameField: 'motor.torquePerThrust',
    help: '11 to 16 mm for 5-inch propellers.',
  },
  motorMass: {
    label: 'Mass at the tip',
    symbol: 'M',
    quantity: 'mass',
    default: 0.0375,
    min: 0.002,
    max: 0.3,
    step: 0.001,
    group: 'Motor',
    frameField: 'motor.mass',
    help: 'Motor and propeller, for the frequency.',
  },
} as const satisfies Readonly<Record<string, Input>>;

export type ArmValues = Values<typeof inputs>;
