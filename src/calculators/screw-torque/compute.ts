import {
  clearanceHole,
  SCREW_MATERIALS,
  screwedJoint,
  SEAT_DIAMETERS,
  THREAD_LIMITS,
  type ScrewedJointResult,
} from '@frameworthy/shared/fastener';
import type { Values } from '~/island/declaration.ts';
import type { inputs } from './inputs.ts';

export type ScrewValues = Values<typeof inputs>;

export interface ScrewResult extends ScrewedJointResult {
  holeDiameter: number;
  seatDiameter: number;
  /** Nominal, of the screw [m]. */
  diameter: number;
}

export function compute(values: ScrewValues): ScrewResult {
  const limits = THREAD_LIMITS[values.thread];
  const holeDiameter = clearanceHole(values.thread, values.hole);
  const seatDiameter = SEAT_DIAMETERS[values.thread][values.seat];
  const joint = screwedJoint({
    ...values,
    limits,
    material: SCREW_MATERIALS[values.material],
    holeDiameter,
    seatDiameter,
  });
  return { ...joint, holeDiameter, seatDiameter, diameter: limits.thread.diameter };
}
