import type { HoleMaterial } from '@frameworthy/shared/notch';
import { orthotropicHoleFactor, type Orthotropic } from '@frameworthy/shared/joint';
import { PULTRUDED_TUBE, QUASI_ISOTROPIC_PLATE, ROLL_WRAPPED_TUBE, WOVEN_PLATE } from '@frameworthy/shared/material';
import type { CarbonPart, CarbonTube } from '@frameworthy/shared/material';
import type { QuantityInput } from '~/island/declaration.ts';

/** What a notch needs to know of a wall, and the inputs for it, for the calculators of this chapter that cut holes. */
export interface NotchedWall extends Orthotropic {
  bendingStrength: number;
  shearStrength: number;
}

/** A tenth more or less moves K by a hundredth: no field is spent on it. */
const POISSON_RATIO = 0.3;

const wallOf = (part: CarbonPart, modulusY: number, poissonRatio: number): NotchedWall => ({
  modulusX: part.youngsModulus.typical,
  modulusY,
  shearModulus: part.shearModulus.typical,
  poissonRatio,
  bendingStrength: part.bendingStrength.typical,
  shearStrength: part.shearStrength.typical,
});
const tubeOf = (tube: CarbonTube): NotchedWall => wallOf(tube, tube.hoopModulus.typical, POISSON_RATIO);
const plateOf = (plate: CarbonPart, ratio: number): NotchedWall => wallOf(plate, plate.youngsModulus.typical, ratio);

const WALLS = {
  'roll-wrapped': tubeOf(ROLL_WRAPPED_TUBE),
  pultruded: tubeOf(PULTRUDED_TUBE),
  woven: plateOf(WOVEN_PLATE, 0.1),
  quasi: plateOf(QUASI_ISOTROPIC_PLATE, POISSON_RATIO),
} as const;

export type WallName = keyof typeof WALLS | 'own';

/** The wall behind a name, or the reader's own figures. */
export const wallNamed = (name: WallName, own: Omit<NotchedWall, 'poissonRatio'>): NotchedWall =>
  name === 'own' ? { ...own, poissonRatio: POISSON_RATIO } : WALLS[name];

export const holeMaterial = (
  wall: NotchedWall,
  lengths: { pointLength: number; meanLength: number },
): HoleMaterial => ({
  holeFactor: orthotropicHoleFactor(wall),
  pointLength: lengths.pointLength,
  meanLength: lengths.meanLength,
});

type Shown = NonNullable<QuantityInput['shownWhen']>;
type Own = Omit<QuantityInput, 'group' | 'shownWhen'>;
const GPA = 1e9;
const MPA = 1e6;

/** Fields for the reader's own wall; `shown` says when they count. Defaults: the roll-wrapped tube. */
export function ownWallInputs(shown: Shown) {
  const own = (input: Own): QuantityInput => ({ group: 'Material', shownWhen: shown, ...input });
  const modulus = { quantity: 'modulus', min: 1 * GPA, max: 300 * GPA, step: 0.5 * GPA } as const;
  const strength = { quantity: 'stress', min: 10 * MPA, max: 2000 * MPA, step: 10 * MPA } as const;
  const start = WALLS['roll-wrapped'];
  return {
    modulusX: own({
      ...modulus,
      label: 'Modulus along the arm',
      symbol: 'E_x',
      default: start.modulusX,
      parameters: ['youngsModulus'],
      frameField: 'arm.youngsModulus',
      help: 'Stack of plies gives these constants.',
    }),
    modulusY: own({
      ...modulus,
      label: 'Modulus across it',
      symbol: 'E_y',
      default: start.modulusY,
      parameters: ['poissonRatio'],
      help: 'Round a tube, or across a strip.',
    }),
    shearModulus: own({
      ...modulus,
      label: 'Shear modulus',
      symbol: 'G_{xy}',
      default: start.shearModulus,
      parameters: ['holeFactor'],
      frameField: 'arm.shearModulus',
      help: '4 to 6 GPa for 0/90 plies, 10 to 20 with ±45°.',
    }),
    bendingStrength: own({
      ...strength,
      label: 'Bending strength along the arm',
      symbol: '\\sigma_0',
      default: start.bendingStrength,
      frameField: 'arm.bendingStrength',
      help: 'The lower of tension and compression.',
    }),
    shearStrength: own({
      ...strength,
      label: 'Shear strength',
      symbol: '\\tau_0',
      default: start.shearStrength,
      frameField: 'arm.shearStrength',
      help: '40 to 90 MPa without ±45° plies.',
    }),
  };
}

/** Lengths fitted to one measured series of carbon laminates; the handbook’s are 1.0 and 3.8 mm. */
export const notchLengths = {
  pointLength: {
    quantity: 'length',
    label: 'Length of the point criterion',
    symbol: 'd_0',
    help: '0.5 to 0.8 mm fit the one test series we have; 1.0 mm is the usual guess.',
    group: 'Material',
    default: 0.8e-3,
    min: 0.1e-3,
    max: 5e-3,
    step: 0.1e-3,
  },
  meanLength: {
    quantity: 'length',
    label: 'Length of the mean criterion',
    symbol: 'a_0',
    help: '1.5 to 2.1 mm fit that series, 3.8 mm is the usual guess.',
    group: 'Material',
    default: 1.8e-3,
    min: 0.2e-3,
    max: 10e-3,
    step: 0.1e-3,
  },
} as const satisfies Record<string, QuantityInput>;
