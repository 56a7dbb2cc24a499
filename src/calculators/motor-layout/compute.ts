import {
  armFreeLength,
  bodyClearance,
  motorLayout,
  taperedOutline,
  type BodyClearance,
  type MotorLayout,
  type PlanPoint,
} from '@frameworthy/shared/layout';
import type { Values } from '~/island/declaration.ts';
import type { inputs } from './inputs.ts';

export type LayoutValues = Values<typeof inputs>;

export interface LayoutResult {
  layout: MotorLayout;
  freeLength: number;
  outline: readonly PlanPoint[];
  body: BodyClearance;
}

export function compute(values: LayoutValues): LayoutResult {
  const layout = motorLayout(values);
  const outline = taperedOutline({ length: values.bodyLength, waist: values.bodyWaist, end: values.bodyEnd });
  return {
    layout,
    outline,
    freeLength: armFreeLength({ motor: layout.motors[0] as PlanPoint, rootDistance: values.rootDistance }),
    body: bodyClearance({ outline, motors: layout.motors, propellerDiameter: values.propellerDiameter }),
  };
}
