import type { Inputs } from '~/island/declaration.ts';
import { bodyInputs, layoutInputs } from '../layout-inputs.ts';

export const inputs = {
  ...layoutInputs,
  rootDistance: {
    quantity: 'length',
    step: 0.001,
    label: 'Outer root screw from the middle',
    symbol: 'r',
    help: 'Along the arm, from the middle of the four motors to the screw where the arm leaves the body.',
    group: 'Body',
    default: 0.0424,
    min: 0.005,
    max: 0.2,
    frameField: 'layout.rootDistance',
  },
  ...bodyInputs,
} as const satisfies Inputs;
