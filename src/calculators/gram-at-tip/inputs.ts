import type { ChoiceInput, QuantityInput } from '~/island/declaration.ts';
import { batteryInputs, craftInputs, placeInputs } from '../craft-inputs.ts';

export const inputs = {
  added: {
    quantity: 'mass',
    label: 'Added to each arm',
    symbol: '\\Delta m',
    help: 'Four times this in all. A longer screw, a skid, a wrap of tape, a heavier motor.',
    group: 'The grams',
    default: 0.001,
    min: 0.0001,
    max: 0.02,
    step: 0.0001,
  },
  reach: {
    quantity: 'percent',
    label: 'How far out',
    symbol: 's',
    help: 'Along the arm from the middle of the craft: 100 % is the motor axis, more is a skid beyond it.',
    group: 'The grams',
    default: 1,
    min: 0,
    max: 1.2,
    step: 0.01,
  },
  ...craftInputs,
  ...batteryInputs,
  ...placeInputs,
} as const satisfies Record<string, QuantityInput | ChoiceInput>;
