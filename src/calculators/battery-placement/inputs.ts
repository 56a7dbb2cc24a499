import type { ChoiceInput, QuantityInput } from '~/island/declaration.ts';
import { batteryInputs, craftInputs, placeInputs, thrustInputs } from '../craft-inputs.ts';

export const inputs = {
  ...placeInputs,
  ...batteryInputs,
  ...craftInputs,
  ...thrustInputs,
} as const satisfies Record<string, QuantityInput | ChoiceInput>;
