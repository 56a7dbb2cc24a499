import type { QuantityInput } from '~/island/declaration.ts';
import type { Craft } from '@frameworthy/shared/mass';

/** Inputs of a whole craft that more than one calculator asks for. Defaults: the Dunnock, revision D. */
const MM = 1e-3;
const DEGREE = Math.PI / 180;

type Rest = Omit<QuantityInput, 'quantity' | 'group' | 'label' | 'help'>;
const field =
  (quantity: QuantityInput['quantity'], group: string) =>
  (label: string, help: string, rest: Rest): QuantityInput => ({
    quantity,
    group,
    label,
    help,
    ...rest,
  });
const mass = (
  group: string,
  label: string,
  help: string,
  [value, min, max, step]: [number, number, number, number],
  rest: Partial<Rest> = {},
) =>
  field('mass', group)(label, help, {
    default: value * 1e-3,
    min: min * 1e-3,
    max: max * 1e-3,
    step: step * 1e-3,
    ...rest,
  });
const length = (
  group: string,
  label: string,
  help: string,
  [value, min, max, step]: [number, number, number, number],
  rest: Partial<Rest> = {},
) =>
  field('length', group)(label, help, { default: value * MM, min: min * MM, max: max * MM, step: step * MM, ...rest });

export const batteryInputs = {
  batteryMass: mass(
    'Battery',
    'Mass of the pack',
    'With lead, plug and strap, on a kitchen scale. A 6S 1300 is 215 to 245 g.',
    [230, 20, 1000, 1],
    { symbol: 'm_b', frameField: 'battery.mass' },
  ),
  batteryLength: length('Battery', 'Length of the pack', 'The longest side, without the lead.', [78, 20, 200, 1], {
    frameField: 'battery.length',
  }),
  batteryWidth: length('Battery', 'Width of the pack', 'The other side that lies on the plate.', [40, 10, 100, 1], {
    frameField: 'battery.width',
  }),
  batteryHeight: length('Battery', 'Height of the pack', 'Square to the plate.', [46, 8, 100, 1], {
    frameField: 'battery.height',
  }),
};

export const craftInputs = {
  bodyMass: mass(
    'Body',
    'Mass of the body',
    'Plates, standoffs, boards, camera and wires: everything without arms, motors and battery.',
    [210, 20, 2000, 5],
    { frameField: 'body.mass' },
  ),
  bodyLength: length(
    'Body',
    'Length of the body',
    'Of the box that holds most of that mass, fore and aft.',
    [150, 30, 400, 1],
    { frameField: 'body.length' },
  ),
  bodyWidth: length('Body', 'Width of the body', 'Of the same box, side to side.', [45, 15, 200, 1], {
    frameField: 'body.width',
  }),
  bodyHeight: length(
    'Body',
    'Height of the body',
    'From the underside of the lowest plate to the top of the uppermost.',
    [33, 5, 120, 1],
    { frameField: 'body.height' },
  ),
  bodyDepth: length(
    'Body',
    'Underside below the arm axis',
    'From the middle of the arms down to the underside of the body.',
    [8, 0, 100, 0.5],
    { frameField: 'body.depth' },
  ),
  wheelbase: length('Arms and motors', 'Wheelbase', 'Diagonal from motor axis to motor axis.', [225, 100, 600, 1], {
    symbol: 'w',
    frameField: 'layout.wheelbase',
  }),
  armAngle: field('angle', 'Arms and motors')(
    'Arm angle from straight ahead',
    'True X: 45°. Less is a stretched frame, more a wide one.',
    {
      symbol: '\\theta',
      default: 45 * DEGREE,
      min: 25 * DEGREE,
      max: 65 * DEGREE,
      step: 0.5 * DEGREE,
      frameField: 'layout.armAngle',
    },
  ),
  armMass: mass('Arms and motors', 'Mass of one arm', 'With its motor wires and sleeve.', [15, 1, 200, 0.5], {
    frameField: 'arm.mass',
  }),
  armLength: length(
    'Arms and motors',
    'Length of one arm',
    'From its root to the motor axis. At most half the wheelbase.',
    [90, 20, 300, 1],
    { symbol: 'L', frameField: 'arm.length' },
  ),
  motorMass: mass('Arms and motors', 'Mass of one motor', 'With propeller, nut and screws.', [37.5, 3, 300, 0.5], {
    symbol: 'm_m',
    frameField: 'motor.mass',
  }),
  propellerHeight: length(
    'Arms and motors',
    'Propeller above the arm axis',
    'From the middle of the arm up to the middle of the propeller.',
    [27, 0, 80, 0.5],
    { frameField: 'motor.propellerHeight' },
  ),
};

type CraftValues = Readonly<Record<keyof typeof craftInputs, number>>;

/** The craft of the package from the values of these fields. */
export function craftOf(values: CraftValues): Craft {
  const { bodyMass, bodyLength, bodyWidth, bodyHeight, ...rest } = values;
  return { ...rest, body: { mass: bodyMass, length: bodyLength, width: bodyWidth, height: bodyHeight } };
}

type BatteryValues = Readonly<Record<keyof typeof batteryInputs, number>>;

export function packOf(values: BatteryValues): { mass: number; length: number; width: number; height: number } {
  return {
    mass: values.batteryMass,
    length: values.batteryLength,
    width: values.batteryWidth,
    height: values.batteryHeight,
  };
}
