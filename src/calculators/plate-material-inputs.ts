import { QUASI_ISOTROPIC_PLATE, type CarbonPlate } from '@frameworthy/shared/material';
import type { QuantityInput } from '~/island/declaration.ts';

const MPA = 1e6;
const GPA = 1e9;

/** Inputs of a plate's own material. Defaults: quasi-isotropic plate. */
export const plateMaterial = {
  plateModulus: {
    label: 'Modulus of the plates',
    symbol: 'E_p',
    quantity: 'modulus',
    default: QUASI_ISOTROPIC_PLATE.youngsModulus.typical,
    min: 5 * GPA,
    max: 200 * GPA,
    step: 1 * GPA,
    frameField: 'materials.plate.youngsModulus',
    help: 'In bending. Quasi-isotropic 40 to 60 GPa, woven 0/90 along its fibres 50 to 75.',
  },
  plateStrength: {
    label: 'Bending strength of the plates',
    symbol: '\\sigma_p',
    quantity: 'stress',
    default: QUASI_ISOTROPIC_PLATE.bendingStrength.typical,
    min: 50 * MPA,
    max: 1500 * MPA,
    step: 10 * MPA,
    frameField: 'materials.plate.bendingStrength',
    help: 'Quasi-isotropic 300 to 550 MPa, woven 400 to 700.',
  },
  plateShear: {
    label: 'Shear modulus of the plates',
    symbol: 'G_p',
    quantity: 'modulus',
    default: QUASI_ISOTROPIC_PLATE.shearModulus.typical,
    min: 0.5 * GPA,
    max: 60 * GPA,
    step: 0.5 * GPA,
    frameField: 'materials.plate.shearModulus',
    help: 'In their plane. Quasi-isotropic 14 to 24 GPa, woven 0/90 4 to 6.',
  },
} as const satisfies Record<string, QuantityInput>;

/** The three of a plate from the list. */
export const typicalPlate = ({ youngsModulus, shearModulus, bendingStrength }: CarbonPlate) => ({
  youngsModulus: youngsModulus.typical,
  shearModulus: shearModulus.typical,
  bendingStrength: bendingStrength.typical,
});
