import type { Step } from '~/island/declaration.ts';
import { STANDARD_GRAVITY } from '@frameworthy/shared/quantity';
import { slotOf } from '../slot-of.ts';
import type { PlacementResult, PlacementValues } from './compute.ts';

type PlacementStep = Step<PlacementValues, PlacementResult>;

const inertia = slotOf('momentOfInertia');
const mm = slotOf('length');
const kg = slotOf('mass');
const newton = slotOf('force');
const turning = slotOf('angularAcceleration', 4);

const acceleration = (
  id: string,
  says: string,
  axis: 'x' | 'y' | 'z',
  lever: string,
  of: (v: PlacementValues, r: PlacementResult) => number,
): PlacementStep => {
  const key = ({ x: 'xx', y: 'yy', z: 'zz' } as const)[axis];
  const name = ({ x: 'roll', y: 'pitch', z: 'yaw' } as const)[axis];
  return {
    id,
    says,
    formula: `\\alpha_${axis} = \\frac{2\\,T\\,${lever}}{I_{${key}}}`,
    numbers: `\\alpha_${axis} = \\frac{2\\cdot\\slot{thrust}\\cdot\\slot{lever}}{\\slot{inertia}} = \\slot{result}`,
    slots: (v, r) => ({
      thrust: newton(v.fullThrust),
      lever: mm(of(v, r)),
      inertia: inertia(r.chosen.properties.inertia[key]),
      result: turning(r.chosen.agility[name]),
    }),
  };
};

const hover = (id: string, says: string, sign: '+' | '-', of: (r: PlacementResult) => number): PlacementStep => ({
  id,
  says,
  formula: `\\frac{T_{${id}}}{T} = \\frac{m g}{4T}\\left(1 ${sign} \\frac{c_x}{x_m}\\right)`,
  numbers: `\\frac{T_{${id}}}{T} = \\frac{\\slot{weight}}{4\\cdot\\slot{thrust}}\\left(1 ${sign} \\frac{\\slot{offset}}{\\slot{motor}}\\right) = \\slot{share}`,
  slots: (v, r) => ({
    weight: newton(r.chosen.properties.mass * STANDARD_GRAVITY),
    thrust: newton(v.fullThrust),
    offset: mm(r.chosen.forwardOffset),
    motor: mm(r.motor.x),
    share: { value: of(r), quantity: 'percent' },
  }),
});

export const steps: readonly PlacementStep[] = [
  {
    id: 'centre',
    says: 'Pack and frame pull the centre of mass to their sides, each by its share of the mass',
    formula: 'c_x = \\frac{m_b\\,x_b + m_f\\,x_f}{m}',
    numbers:
      'c_x = \\frac{\\slot{pack}\\cdot\\slot{place}+\\slot{frameMass}\\cdot(\\slot{framePlace})}{\\slot{all}} = \\slot{centre}',
    slots: (v, { frame, chosen }) => ({
      pack: kg(v.batteryMass),
      place: mm(v.forward),
      frameMass: kg(frame.mass),
      framePlace: mm(frame.centre.x),
      all: kg(chosen.properties.mass),
      centre: mm(chosen.forwardOffset),
    }),
  },
  {
    id: 'roll-inertia',
    says: 'About the roll axis: frame and pack about their own centres, and the height z between the two',
    formula: 'I_{xx} = I_f + I_b + \\frac{m_f m_b}{m}\\,z^2',
    numbers:
      'I_{xx} = \\slot{frame} + \\slot{pack} + \\frac{\\slot{frameMass}\\cdot\\slot{packMass}}{\\slot{all}}\\cdot(\\slot{height})^2 = \\slot{sum}',
    slots: (v, { frame, pack, chosen }) => ({
      frame: inertia(frame.inertia.xx),
      pack: inertia(pack.inertia.xx),
      frameMass: kg(frame.mass),
      packMass: kg(v.batteryMass),
      all: kg(chosen.properties.mass),
      height: mm(pack.centre.z - frame.centre.z),
      sum: inertia(chosen.properties.inertia.xx),
    }),
  },
  {
    id: 'pitch-inertia',
    says: 'About the pitch axis the step forward from the frame’s own centre counts as well',
    formula: 'I_{yy} = I_f + I_b + \\frac{m_f m_b}{m}\\,\\left((x_b-x_f)^2+z^2\\right)',
    numbers:
      'I_{yy} = \\slot{frame} + \\slot{pack} + \\frac{\\slot{frameMass}\\cdot\\slot{packMass}}{\\slot{all}}\\cdot\\left((\\slot{place})^2+(\\slot{height})^2\\right) = \\slot{sum}',
    slots: (v, { frame, pack, chosen }) => ({
      frame: inertia(frame.inertia.yy),
      pack: inertia(pack.inertia.yy),
      frameMass: kg(frame.mass),
      packMass: kg(v.batteryMass),
      all: kg(chosen.properties.mass),
      place: mm(v.forward - frame.centre.x),
      height: mm(pack.centre.z - frame.centre.z),
      sum: inertia(chosen.properties.inertia.yy),
    }),
  },
  acceleration(
    'roll',
    'Full stick in roll: two motors at full thrust, two at none, at the side lever',
    'x',
    'y_m',
    (_, r) => r.motor.y,
  ),
  acceleration('pitch', 'The same in pitch, at the fore-and-aft lever', 'y', 'x_m', (_, r) => r.motor.x),
  acceleration('yaw', 'In yaw the lever is the reaction torque over thrust', 'z', '\\kappa', (v) => v.torquePerThrust),
  hover('front', 'Each front motor in hover, as a share of its full thrust', '+', ({ chosen }) => chosen.frontShare),
  hover('rear', 'Each rear motor', '-', ({ chosen }) => chosen.rearShare),
];
