import {
  clearanceHole,
  SCREW_MATERIALS,
  screwedJoint,
  SEAT_DIAMETERS,
  THREAD_LIMITS,
  type ScrewedJoint,
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
  /** Of thread, in whatever the screw goes into [m]. */
  engagement: number;
}

/** The field that says how much thread there is. */
export const ENGAGEMENT = { tapped: 'engagement', 'press-nut': 'nutHeight', insert: 'insertLength' } as const;

type Held = Pick<ScrewedJoint, 'tappedShearStrength' | 'pressNut' | 'insert'>;

/** Thread and what holds it: the fields of the others have no effect. */
const HELD: Record<ScrewValues['into'], (values: ScrewValues) => Held> = {
  tapped: ({ tappedShearStrength }) => ({ tappedShearStrength }),
  'press-nut': (values) => ({ tappedShearStrength: values.nutShearStrength, pressNut: values }),
  insert: (values) => ({ tappedShearStrength: values.insertShearStrength, insert: values }),
};

export function compute(values: ScrewValues): ScrewResult {
  const limits = THREAD_LIMITS[values.thread];
  const holeDiameter = clearanceHole(values.thread, values.hole);
  const seatDiameter = SEAT_DIAMETERS[values.thread][values.seat];
  const engagement = values[ENGAGEMENT[values.into]];
  const joint = screwedJoint({
    limits,
    material: SCREW_MATERIALS[values.material],
    torque: values.torque,
    torqueCoefficient: values.torqueCoefficient,
    engagement,
    holeDiameter,
    seatDiameter,
    plateStrength: values.plateStrength,
    ...HELD[values.into](values),
  });
  return { ...joint, holeDiameter, seatDiameter, diameter: limits.thread.diameter, engagement };
}
