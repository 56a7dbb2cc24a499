import { EPOXY_PASTE } from '@frameworthy/shared/material';

const GPA = 1e9;
const MPA = 1e6;

/** Inputs of a bond line's adhesive, alike in every calculator that asks for one. Defaults: epoxy paste, typical. */
export const adhesive = {
  shearModulus: {
    label: 'Adhesive shear modulus',
    symbol: 'G_a',
    quantity: 'modulus',
    default: EPOXY_PASTE.shearModulus.typical,
    min: 0.05 * GPA,
    max: 3 * GPA,
    step: 0.05 * GPA,
    group: 'Adhesive',
    frameField: 'materials.adhesive.shearModulus',
    help: 'Epoxy paste 0.4 to 1.2 GPa.',
  },
  adhesiveStrength: {
    label: 'Adhesive shear strength',
    symbol: '\\tau_p',
    quantity: 'stress',
    default: EPOXY_PASTE.lapShearStrength.typical,
    min: 1 * MPA,
    max: 60 * MPA,
    step: 0.5 * MPA,
    group: 'Adhesive',
    parameters: ['strength', 'yieldShear'],
    frameField: 'materials.adhesive.lapShearStrength',
    help: 'Lap shear at room temperature, on well prepared carbon: 15 to 25 MPa done well, half of that when not.',
  },
  kept: {
    label: 'Kept at temperature',
    symbol: 'f_T',
    quantity: 'percent',
    default: 1,
    min: 0.1,
    max: 1.2,
    step: 0.01,
    group: 'Adhesive',
    help: 'Share of that strength left on a hot day or next to a hot motor. Handbook pastes keep a third to a half at 75 °C.',
  },
  plasticRatio: {
    label: 'Yielding over elastic strain',
    symbol: 'r_p',
    quantity: 'ratio',
    default: 5,
    min: 0,
    max: 30,
    step: 0.5,
    group: 'Adhesive',
    help: 'How far the adhesive stretches after it yields. Brittle 0, plain epoxy a few, toughened 5 to 20.',
  },
} as const;
