import { mountLoads, type MountCase, type MountLoad } from '@frameworthy/shared/mount';
import type { QuantityInput } from '~/island/declaration.ts';

const MM = 1e-3;
const RPM = Math.PI / 30;
const PLATE = { quantity: 'length', group: 'Plate on the tube' } as const;
const LOAD = { group: 'Loads' } as const;

/** A motor plate on a tube, as every calculator of mounts asks for it. Defaults: the Dunnock. */
export const plateInputs = {
  plateWidth: {
    ...PLATE,
    label: 'Width of the plate',
    symbol: 'w',
    help: 'Across the tube, where the tow lies or the glue ends.',
    default: 26 * MM,
    min: 8 * MM,
    max: 50 * MM,
    step: 0.5 * MM,
    frameField: 'mount.plateWidth',
  },
  plateThickness: {
    ...PLATE,
    label: 'Thickness of the plate',
    symbol: 't_p',
    help: 'Motor plates are 2 to 3 mm.',
    default: 2 * MM,
    min: 1 * MM,
    max: 6 * MM,
    step: 0.1 * MM,
    frameField: 'mount.plateThickness',
  },
  bondLine: {
    ...PLATE,
    label: 'Glue line',
    symbol: 'h',
    help: 'Between plate and tube where they are nearest. Usual: 0.1 to 0.3 mm, held by a thread or glass beads.',
    default: 0.2 * MM,
    min: 0.03 * MM,
    max: 0.8 * MM,
    step: 0.01 * MM,
    frameField: 'mount.bondLine',
  },
} as const satisfies Record<string, QuantityInput>;

/** What reaches a mount. */
export const loadInputs = {
  deceleration: {
    ...LOAD,
    quantity: 'ratio',
    label: 'Stop in a crash, in g',
    symbol: 'a',
    help: 'Largest deceleration of the motor. A fall on grass tens to 200, concrete and gates 300 to 1000.',
    default: 500,
    min: 10,
    max: 3000,
    step: 10,
  },
  motorMass: {
    ...LOAD,
    quantity: 'mass',
    label: 'Motor with propeller',
    symbol: 'm',
    help: 'With nut and screws. 5-inch motors 30 to 36 g, the propeller 4 to 5 g.',
    default: 0.0375,
    min: 0.003,
    max: 0.15,
    step: 0.0005,
    frameField: 'motor.mass',
  },
  centreHeight: {
    ...LOAD,
    quantity: 'length',
    label: 'Its centre of mass above the plate',
    symbol: 'h_m',
    frameField: 'motor.centreAbovePlate',
    help: 'About half the height of the motor.',
    default: 10 * MM,
    min: 2 * MM,
    max: 40 * MM,
    step: 0.5 * MM,
  },
  propellerHeight: {
    ...LOAD,
    quantity: 'length',
    label: 'Propeller above the plate',
    symbol: 'h_p',
    frameField: 'motor.propellerAbovePlate',
    help: 'Middle of the blades, from the face that the motor stands on.',
    default: 18 * MM,
    min: 4 * MM,
    max: 60 * MM,
    step: 0.5 * MM,
  },
  bladeForce: {
    ...LOAD,
    quantity: 'force',
    label: 'Force that stops a blade',
    symbol: 'F_b',
    help: 'At its tip, until the blade breaks. An estimate: push a spent one with a kitchen scale.',
    default: 60,
    min: 0,
    max: 500,
    step: 5,
  },
  propellerDiameter: {
    ...LOAD,
    quantity: 'length',
    label: 'Propeller diameter',
    symbol: 'D_p',
    help: '5-inch propellers: 127 to 130 mm.',
    default: 129 * MM,
    min: 50 * MM,
    max: 260 * MM,
    step: 1 * MM,
    frameField: 'propeller.diameter',
  },
  fullThrust: {
    ...LOAD,
    quantity: 'force',
    label: 'Full thrust of one motor',
    symbol: 'T',
    help: 'A 5-inch motor on 6 cells: 13 to 18 N.',
    default: 15,
    min: 1,
    max: 80,
    step: 0.5,
    frameField: 'motor.fullThrust',
  },
  torquePerThrust: {
    ...LOAD,
    quantity: 'length',
    label: 'Reaction torque over thrust',
    symbol: '\\kappa',
    help: 'Torque divided by thrust is a length. 5-inch propellers: 11 to 16 mm.',
    default: 13.5 * MM,
    min: 2 * MM,
    max: 60 * MM,
    step: 0.5 * MM,
    frameField: 'motor.torquePerThrust',
  },
  motorSpeed: {
    ...LOAD,
    quantity: 'rotationalSpeed',
    label: 'Speed at full throttle',
    symbol: '\\omega',
    help: 'K_v times volts, times 0.7 to 0.85 under load.',
    default: 27000 * RPM,
    min: 3000 * RPM,
    max: 60000 * RPM,
    step: 500 * RPM,
    frameField: 'motor.fullSpeed',
  },
  chip: {
    ...LOAD,
    quantity: 'mass',
    label: 'Missing at one blade tip',
    symbol: 'm_c',
    help: 'A nick of a millimetre or two is some hundredths of a gram.',
    default: 0.02e-3,
    min: 0,
    max: 1e-3,
    step: 0.01e-3,
  },
} as const satisfies Record<string, QuantityInput>;

type Loads = { readonly [K in keyof typeof loadInputs]: number };

/** The loads at a surface that lies `below` the motor plate's upper face [m]. */
export const loadsAt = (values: Loads, below: number): Readonly<Record<MountCase, MountLoad>> =>
  mountLoads({
    ...values,
    centreHeight: values.centreHeight + below,
    propellerHeight: values.propellerHeight + below,
  });

/** Each case in a few words, as part of a sentence. */
export const CASE_WORDS: Readonly<Record<MountCase, string>> = {
  flight: 'full throttle with a chipped blade',
  stop: 'the motor’s own mass in a sideways stop',
  pull: 'the motor’s own mass straight off the plate',
  strike: 'a blade that hits something',
};

/** The case of most use. */
export const worstOf = (uses: Readonly<Record<MountCase, number>>): MountCase =>
  (Object.keys(uses) as MountCase[]).reduce((worst, name) => (uses[name] > uses[worst] ? name : worst));
