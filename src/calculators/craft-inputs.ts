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

export const placeInputs = {
  lie: {
    label: 'The pack lies',
    help: 'Lengthwise: its long side fore and aft. Crosswise: a quarter turn from that.',
    group: 'Place of the battery',
    choices: { lengthwise: 'lengthwise', crosswise: 'crosswise' },
    default: 'crosswise',
    frameField: 'battery.lie',
  },
  side: {
    label: 'Side of the body',
    help: 'Strapped on the top plate or under the bottom one.',
    group: 'Place of the battery',
    choices: { above: 'above', below: 'below' },
    default: 'above',
    frameField: 'battery.side',
  },
  forward: {
    quantity: 'length',
    label: 'Ahead of the middle',
    symbol: 'x_b',
    help: 'Middle of the pack against the middle of the four motors. Below zero is behind it.',
    group: 'Place of the battery',
    default: 0.004,
    min: -0.1,
    max: 0.1,
    step: 0.001,
    frameField: 'battery.forward',
  },
  gap: {
    quantity: 'length',
    label: 'Gap to the plate',
    help: 'Pad and strap between pack and plate; more where it stands on posts.',
    group: 'Place of the battery',
    default: 0.003,
    min: 0,
    max: 0.06,
    step: 0.001,
    frameField: 'battery.gap',
  },
} as const;

export const thrustInputs = {
  fullThrust: {
    quantity: 'force',
    label: 'Full thrust of one motor',
    symbol: 'T',
    help: 'From the maker’s table or a bench. A 5-inch motor on 6 cells gives 13 to 18 N.',
    group: 'Thrust',
    default: 15,
    min: 0.5,
    max: 100,
    step: 0.5,
    frameField: 'motor.fullThrust',
  },
  torquePerThrust: {
    quantity: 'length',
    label: 'Reaction torque over thrust',
    symbol: '\\kappa',
    help: 'Torque divided by thrust is a length. 5-inch propellers: 11 to 16 mm; it grows with the diameter.',
    group: 'Thrust',
    default: 0.0135,
    min: 0.002,
    max: 0.06,
    step: 0.0005,
    frameField: 'motor.torquePerThrust',
  },
} as const;

export const craftInputs = {
  bodyMass: mass(
    'Body',
    'Mass of the body',
    'Plates, standoffs, boards, camera and wires: everything without arms, motors and battery.',
    [165, 20, 2000, 5],
    { frameField: 'body.mass' },
  ),
  bodyLength: length(
    'Body',
    'Length of the body',
    'Of the box that holds most of that mass, fore and aft.',
    [150, 30, 400, 1],
    { frameField: 'body.length' },
  ),
  bodyWidth: length('Body', 'Width of the body', 'Of the same box, side to side.', [56, 15, 200, 1], {
    frameField: 'body.width',
  }),
  bodyHeight: length(
    'Body',
    'Height of the body',
    'From the underside of the lowest plate to the top of the uppermost.',
    [43, 5, 120, 1],
    { frameField: 'body.height' },
  ),
  bodyDepth: length(
    'Body',
    'Underside below the arm axis',
    'From the middle of the arms down to the underside of the body.',
    [9, 0, 100, 0.5],
    { frameField: 'body.depth' },
  ),
  bodyForward: length(
    'Body',
    'Its centre of mass ahead',
    'Of the middle of the motors; below zero is behind it. Camera and transmitter pull it to their side.',
    [-4, -100, 100, 1],
    { frameField: 'body.forward' },
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
  armMass: mass('Arms and motors', 'Mass of one arm', 'With its motor wires and sleeve.', [15.5, 1, 200, 0.5], {
    frameField: 'arm.mass',
  }),
  armLength: length(
    'Arms and motors',
    'Length of one arm',
    'From its root to the motor axis. At most half the wheelbase.',
    [70, 20, 300, 1],
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

/** What a scale and a swing on two threads give of a whole craft, shown while `shownWhen` says so. */
export function measuredCraft(shownWhen: QuantityInput['shownWhen']) {
  const shown = shownWhen ? { shownWhen } : {};
  const inertia = (label: string, symbol: string, help: string, value: number, axis: 'roll' | 'pitch' | 'yaw') =>
    field('momentOfInertia', 'Craft')(label, help, {
      symbol,
      default: value * 1e-3,
      min: 0.02e-3,
      max: 200e-3,
      step: 0.05e-3,
      frameField: `mass.${axis}Inertia`,
      ...shown,
    });
  return {
    mass: mass(
      'Craft',
      'All-up mass',
      'Ready to fly, with battery. 5-inch frames are 550 to 750 g.',
      [610, 50, 5000, 10],
      {
        symbol: 'm',
        frameField: 'mass.allUp',
        ...shown,
      },
    ),
    rollInertia: inertia('Inertia in roll', 'I_{xx}', 'About the axis fore and aft.', 1.75, 'roll'),
    pitchInertia: inertia('Inertia in pitch', 'I_{yy}', 'About the axis side to side.', 1.95, 'pitch'),
    yawInertia: inertia(
      'Inertia in yaw',
      'I_{zz}',
      'About the upright axis. At most roll and pitch together.',
      2.8,
      'yaw',
    ),
    centreHeight: length(
      'Craft',
      'Centre of mass above the arm’s axis',
      'Seen from above it is in the middle.',
      [29, -60, 80, 1],
      { symbol: 'z_c', frameField: 'mass.centreAboveArm', ...shown },
    ),
  };
}

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
