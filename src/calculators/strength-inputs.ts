import { ROLL_WRAPPED_TUBE } from '@frameworthy/shared/material';
import type { QuantityInput } from '~/island/declaration.ts';
import { ownMaterial } from './arm-inputs.ts';

const MPA = 1e6;
const strength = (label: string, symbol: string, help: string, value: number, frameField: string): QuantityInput => ({
  quantity: 'stress',
  label,
  symbol,
  help,
  group: 'Arm',
  default: value,
  min: 10 * MPA,
  max: 2000 * MPA,
  step: 10 * MPA,
  shownWhen: ownMaterial,
  frameField,
});

/** Strengths of an arm's material where its name is `own values`. */
export const strengthInputs = {
  bendingStrength: strength(
    'Bending strength',
    '\\sigma_b',
    'Along the arm, the lower of tension and compression.',
    ROLL_WRAPPED_TUBE.bendingStrength.typical,
    'arm.bendingStrength',
  ),
  shearStrength: strength(
    'Shear strength',
    '\\tau_b',
    'In the plane of wall or plate.',
    ROLL_WRAPPED_TUBE.shearStrength.typical,
    'arm.shearStrength',
  ),
};
