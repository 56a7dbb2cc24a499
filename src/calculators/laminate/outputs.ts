import type { FailureMode, LaminateStrength } from '@frameworthy/shared/laminate';
import type { Output, Verdict } from '~/island/declaration.ts';
import type { LaminateResult } from './compute.ts';
import type { LaminateValues } from './inputs.ts';

type LaminateOutput = Output<LaminateValues, LaminateResult>;

const MODE_WORDS: Readonly<Record<FailureMode, string>> = {
  'fibre tension': 'fibre breaks in tension',
  'fibre compression': 'fibre buckles in compression',
  splitting: 'a ply splits along its fibre',
  'crushing across': 'a ply crushes across its fibre',
  shear: 'a ply shears',
};
/** Modes that leave the fibre whole: the part goes on, cracked. */
const RESIN: readonly FailureMode[] = ['splitting', 'crushing across', 'shear'];

function firstFailure({ mode }: LaminateStrength): Verdict {
  const text = `first: ${MODE_WORDS[mode]}`;
  return RESIN.includes(mode) ? { level: 'marginal', text: `${text}; the fibre still holds` } : { level: 'good', text };
}

const strength = (
  pick: (result: LaminateResult) => LaminateStrength,
  rest: Pick<LaminateOutput, 'key' | 'label' | 'meaning' | 'symbol'>,
): LaminateOutput => ({
  ...rest,
  quantity: 'stress',
  group: 'First ply failure',
  value: (result) => pick(result).stress,
  verdict: (result) => firstFailure(pick(result)),
});

/** Below this share of the pull's own strain a sideways shear is not noticed. */
const SLIGHT = 0.02;

export const outputs: readonly LaminateOutput[] = [
  {
    key: 'modulus',
    label: 'Modulus in the plane',
    symbol: 'E_x',
    quantity: 'modulus',
    meaning:
      'What a pull or push along the direction looked at meets; for a tube, what its bending is worked out with.',
    value: ({ inPlane }) => inPlane.modulusX,
    headline: true,
  },
  {
    key: 'flexuralModulus',
    label: 'Flexural modulus',
    symbol: 'E_f',
    quantity: 'modulus',
    meaning: 'What the plate, or the wall by itself, shows when it is bent: the outer plies count most.',
    value: ({ flexural }) => flexural.modulusX,
    headline: true,
  },
  {
    key: 'flexuralRatio',
    label: 'Flexural over in-plane',
    quantity: 'ratio',
    group: 'Stiffness',
    meaning: 'Above 1 where the stiff plies lie outside.',
    value: ({ flexural, inPlane }) => flexural.modulusX / inPlane.modulusX,
  },
  {
    key: 'modulusAcrossStack',
    label: 'Modulus across',
    symbol: 'E_y',
    quantity: 'modulus',
    group: 'Stiffness',
    meaning: 'The same at right angles in the plane; round the tube for a tube.',
    value: ({ inPlane }) => inPlane.modulusY,
  },
  {
    key: 'flexuralAcross',
    label: 'Flexural modulus across',
    symbol: 'E_{f,y}',
    quantity: 'modulus',
    group: 'Stiffness',
    meaning: 'Bending about the long axis: for a tube, the wall under a clamp.',
    value: ({ flexural }) => flexural.modulusY,
  },
  {
    key: 'shearModulusStack',
    label: 'Shear modulus',
    symbol: 'G_{xy}',
    quantity: 'modulus',
    group: 'Stiffness',
    meaning: 'What twist of a tube, and shear in the plane of a plate, work against.',
    value: ({ inPlane }) => inPlane.shearModulus,
  },
  {
    key: 'poisson',
    label: 'Poisson’s ratio',
    symbol: '\\nu_{xy}',
    quantity: 'ratio',
    group: 'Stiffness',
    meaning: 'Contraction across for each unit of stretch.',
    value: ({ inPlane }) => inPlane.poissonRatio,
  },
  {
    key: 'shearing',
    label: 'Shear for each unit of stretch',
    symbol: '\\eta_x',
    quantity: 'ratio',
    group: 'Stiffness',
    meaning:
      'How far the part leans sideways when it is pulled; a tube twists. Zero for a balanced stack along its axes.',
    value: ({ inPlane }) => (Math.abs(inPlane.shearStrainRatio) < 1e-9 ? 0 : inPlane.shearStrainRatio),
    verdict: ({ inPlane }) =>
      Math.abs(inPlane.shearStrainRatio) < SLIGHT
        ? { level: 'good', text: 'pulls straight' }
        : { level: 'marginal', text: 'leans or twists under load' },
  },
  {
    key: 'curling',
    label: 'Coupling of stretch and bending',
    quantity: 'ratio',
    group: 'Stiffness',
    meaning: 'Largest entry of B over thickness and the larger of A11 and A22. Zero for a mirrored stack.',
    value: ({ stiffness }) => (stiffness.bendingCoupling < 1e-9 ? 0 : stiffness.bendingCoupling),
    verdict: ({ stiffness }, { part }) =>
      stiffness.bendingCoupling < 1e-6
        ? { level: 'good', text: 'stays flat' }
        : part === 'tube'
          ? { level: 'good', text: 'a closed wall cannot curl' }
          : { level: 'bad', text: 'warps out of the cure' },
  },
  strength(({ tension }) => tension, {
    key: 'tensionStrength',
    label: 'In tension',
    meaning: 'Load over thickness at which the first ply reaches its limit, by the lower of two criteria.',
  }),
  strength(({ compression }) => compression, {
    key: 'compressionStrength',
    label: 'In compression',
    meaning: 'The same, pushed, as long as nothing buckles.',
  }),
  strength(({ bending }) => bending, {
    key: 'bendingStrength',
    label: 'In bending',
    meaning: 'Outer-fibre stress, as a bending test would report it, when the first ply reaches its limit.',
  }),
  strength(({ bendingAcross }) => bendingAcross, {
    key: 'bendingAcrossStrength',
    label: 'In bending across',
    meaning: 'The same about the long axis: for a tube, the wall under a clamp.',
  }),
  strength(({ shear }) => shear, {
    key: 'shearStrengthStack',
    label: 'In shear in the plane',
    meaning: 'What twist of a tube works against, and the material behind a screw hole.',
  }),
  {
    key: 'holeFactor',
    label: 'Elastic factor at a round hole',
    symbol: 'K',
    quantity: 'ratio',
    group: 'Part',
    meaning:
      'Stress beside a small hole over the stress far away. Carbon does not break at this peak: see the guide on holes.',
    value: ({ holeFactor }) => holeFactor,
  },
  {
    key: 'thickness',
    label: 'Thickness',
    symbol: 'h',
    quantity: 'length',
    group: 'Part',
    meaning: 'Of all plies together.',
    value: ({ stiffness }) => stiffness.thickness,
  },
  {
    key: 'pieceMass',
    label: 'Mass of a piece 100 mm square',
    quantity: 'mass',
    group: 'Part',
    meaning: 'Fibre and resin, without holes.',
    value: (result) => result.massPerArea * 0.01,
  },
];
