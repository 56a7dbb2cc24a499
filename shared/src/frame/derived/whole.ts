import { frameBalance } from '../balance.ts';
import { strikesOf } from '../hits.ts';
import { withValue } from '../paths.ts';
import { framePlan } from '../plan.ts';
import type { FrameRecord } from '../record.ts';
import { always, type DerivedField, type DerivedFields } from './derived-field.ts';

const wheelbase = (record: FrameRecord) => framePlan(record).layout.wheelbase;

const inertia = (axis: 'xx' | 'yy' | 'zz'): DerivedField => ({
  get: (record) => frameBalance(record).properties.inertia[axis],
});
const radius = (axis: 'xx' | 'yy' | 'zz'): DerivedField => ({
  get: (record) => {
    const { inertia: about, mass } = frameBalance(record).properties;
    return Math.sqrt(about[axis] / mass);
  },
});

export const WHOLE: DerivedFields = {
  'layout.wheelbase': {
    get: wheelbase,
    // All spacings grow in step with the diagonal; the arms keep their roots where they are.
    set: (record, value) => {
      const grown = value / wheelbase(record);
      const spacing = record.propeller.diameter + record.layout.tipGap;
      const tipGap = spacing * grown - record.propeller.diameter;
      const length = record.arm.length + (value - wheelbase(record)) / 2;
      return withValue(withValue(record, 'layout.tipGap', tipGap), 'arm.length', length);
    },
  },
  'layout.armAngle': { get: (record) => framePlan(record).layout.armAngle },
  'layout.rootDistance': {
    get: (record) => framePlan(record).rootDistance,
    set: (record, value) => withValue(record, 'arm.length', wheelbase(record) / 2 - value),
  },
  'mass.by': always('parts'),
  'mass.allUp': { get: (record) => frameBalance(record).allUp },
  'mass.rollInertia': inertia('xx'),
  'mass.pitchInertia': inertia('yy'),
  'mass.yawInertia': inertia('zz'),
  'mass.pitchRadius': radius('yy'),
  'mass.yawRadius': radius('zz'),
  'mass.centreForward': { get: (record) => frameBalance(record).properties.centre.x },
  'mass.centreAboveArm': { get: (record) => frameBalance(record).properties.centre.z },
  'mass.centreAboveMainPlate': {
    get: (record) => {
      const { properties, plan } = frameBalance(record);
      return properties.centre.z - plan.deck;
    },
  },
  'loads.strike.horizontal': { get: (record) => strikesOf(record, frameBalance(record)).sideways.peakForce },
  'loads.strike.vertical': { get: (record) => strikesOf(record, frameBalance(record)).vertical.peakForce },
};
