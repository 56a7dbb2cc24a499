import { choice, count, force, length, mass, ratio, turning, type Field, type PathsOf } from './field.ts';

const LAYOUT = 'layout/motor-layout';
const BATTERY = 'balance/battery-placement';
const VIBRATION = 'arms/vibration';

export const CRAFT_FIELDS: Readonly<Record<PathsOf<'layout' | 'propeller' | 'motor' | 'battery'>, Field>> = {
  'propeller.diameter': length('Propeller, diameter', [50, 200, 1], LAYOUT),
  'propeller.blades': count('Propeller, blades', [2, 6, 1], VIBRATION),
  'layout.shape': choice('Motor layout', { 'true-x': 'true X', stretched: 'stretched', wide: 'wide' }, LAYOUT),
  'layout.stretch': ratio(
    'Motor layout, longer over shorter spacing',
    [1, 1.6, 0.01],
    LAYOUT,
    'Of no effect on a true X.',
  ),
  'layout.tipGap': length('Gap between propeller tips', [-30, 120, 1], LAYOUT),
  'motor.mass': mass('Motor, mass of one', [3, 300, 0.5], BATTERY, 'With propeller, nut and screws.'),
  'motor.diameter': length('Motor, diameter of the bell', [8, 60, 0.5], VIBRATION),
  'motor.height': length('Motor, height', [6, 60, 0.5], VIBRATION),
  'motor.propellerHeight': length('Propeller above the arm axis', [0, 80, 0.5], BATTERY),
  'motor.fullThrust': force('Motor, full thrust of one', [0.5, 60, 0.5], 'layout/motor-layout'),
  'motor.torquePerThrust': length('Motor, reaction torque over thrust', [4, 30, 0.5], BATTERY),
  'motor.hoverSpeed': turning('Motor, speed in hover', [1000, 60000, 100], VIBRATION),
  'motor.fullSpeed': turning('Motor, speed at full throttle', [2000, 90000, 100], VIBRATION),
  'battery.mass': mass('Battery, mass', [20, 1000, 1], BATTERY, 'With lead, plug and strap.'),
  'battery.length': length('Battery, length', [20, 200, 1], BATTERY),
  'battery.width': length('Battery, width', [10, 100, 1], BATTERY),
  'battery.height': length('Battery, height', [8, 100, 1], BATTERY),
  'battery.lie': choice('Battery lies', { lengthwise: 'lengthwise', crosswise: 'crosswise' }, BATTERY),
  'battery.side': choice('Battery sits', { above: 'on top', below: 'under the body' }, BATTERY),
  'battery.forward': length('Battery, ahead of the motors’ middle', [-100, 100, 1], BATTERY),
  'battery.gap': length('Battery, pad under it', [0, 20, 0.5], BATTERY),
};
