import {
  PULTRUDED_TUBE,
  QUASI_ISOTROPIC_PLATE,
  ROLL_WRAPPED_TUBE,
  WOVEN_PLATE,
  type CarbonPart,
  type CarbonTube,
} from '@frameworthy/shared/material';
import { outerDiameter, wall } from './root-inputs.ts';

/** Inputs of an arm of one section, tube or strip, that more than one calculator asks for. Defaults: the Dunnock's tube. */
const MM = 1e-3;
const GPA = 1e9;

type Choices = Readonly<Record<string, number | string>>;
const isTube = (values: Choices): boolean => values.shape === 'tube';
const isStrip = (values: Choices): boolean => values.shape === 'strip';
export const ownMaterial = (values: Choices): boolean => values.material === 'own';
const sprung = (values: Choices): boolean => values.root === 'springs';

const spring = {
  quantity: 'rotationalStiffness',
  min: 20,
  max: 50000,
  step: 10,
  group: 'Root',
  shownWhen: sprung,
} as const;

export const shapeInputs = {
  shape: {
    label: 'Arm',
    choices: { tube: 'round tube', strip: 'strip of plate' },
    default: 'tube',
    group: 'Arm',
    frameField: 'arm.kind',
    help: 'One section from the root to the motor. Take the mid-span size of a tapered arm.',
  },
  outerDiameter: { ...outerDiameter, group: 'Arm', shownWhen: isTube },
  wall: { ...wall, group: 'Arm', shownWhen: isTube },
  width: {
    label: 'Width of the strip',
    symbol: 'w',
    quantity: 'length',
    default: 12 * MM,
    min: 4 * MM,
    max: 30 * MM,
    step: 0.5 * MM,
    group: 'Arm',
    shownWhen: isStrip,
    frameField: 'arm.strip.width',
    help: 'In the plane of the propellers, at mid-span. Usual: 9 to 14 mm.',
  },
  height: {
    label: 'Thickness of the strip',
    symbol: 'h',
    quantity: 'length',
    default: 5 * MM,
    min: 1.5 * MM,
    max: 12 * MM,
    step: 0.5 * MM,
    group: 'Arm',
    shownWhen: isStrip,
    frameField: 'arm.strip.thickness',
    help: 'Of the plate: 4 to 6 mm on 5-inch frames.',
  },
} as const;

export const materialInputs = {
  material: {
    label: 'Material',
    choices: {
      rolled: 'roll-wrapped tube',
      pultruded: 'pultruded tube',
      woven: 'woven plate, 0/90',
      quasi: 'quasi-isotropic plate',
      own: 'own values',
    },
    default: 'rolled',
    group: 'Arm',
    frameField: 'arm.material',
    help: 'Typical values stand behind the names. A tap test on your own arm beats them.',
  },
  youngsModulus: {
    label: 'Modulus along the arm',
    symbol: 'E',
    quantity: 'modulus',
    default: ROLL_WRAPPED_TUBE.youngsModulus.typical,
    min: 5 * GPA,
    max: 300 * GPA,
    step: 1 * GPA,
    group: 'Arm',
    shownWhen: ownMaterial,
    frameField: 'arm.youngsModulus',
    help: 'In bending. The stack-of-plies calculator gives it for a layup.',
  },
  shearModulus: {
    label: 'Shear modulus',
    symbol: 'G',
    quantity: 'modulus',
    default: ROLL_WRAPPED_TUBE.shearModulus.typical,
    min: 1 * GPA,
    max: 100 * GPA,
    step: 0.5 * GPA,
    group: 'Arm',
    shownWhen: ownMaterial,
    frameField: 'arm.shearModulus',
    help: '4 to 6 GPa for 0/90 plies and pultruded tube, 10 to 20 with ±45° plies.',
  },
} as const;

export const rootSpringInputs = {
  root: {
    label: 'Root',
    choices: { springs: 'gives way a little', clamped: 'perfectly rigid' },
    default: 'springs',
    group: 'Root',
    frameField: 'arm.root.held',
    help: 'No root is rigid: holes and plates give. The rigid one is the highest that the arm can reach.',
  },
  rootVertical: {
    ...spring,
    label: 'Root stiffness, up and down',
    symbol: 'k_v',
    default: 3000,
    parameters: ['rootBending'],
    frameField: 'arm.root.stiffnessVertical',
    help: 'Moment over rotation where the arm leaves the plates. A rough guess for two plates; a tap test tells.',
  },
  rootHorizontal: {
    ...spring,
    label: 'Root stiffness, sideways',
    symbol: 'k_h',
    default: 4000,
    frameField: 'arm.root.stiffnessHorizontal',
    help: 'Two tight M3 screws some 20 mm apart come to some thousands. Play in the holes makes it next to nothing for small movements.',
  },
  rootTwist: {
    ...spring,
    label: 'Root stiffness, twist',
    symbol: 'k_t',
    default: 1500,
    frameField: 'arm.root.stiffnessTwist',
    help: 'How firmly the plates keep the arm from rolling about its own axis.',
  },
} as const;

const LIBRARY = {
  rolled: ROLL_WRAPPED_TUBE,
  pultruded: PULTRUDED_TUBE,
  woven: WOVEN_PLATE,
  quasi: QUASI_ISOTROPIC_PLATE,
} as const satisfies Record<string, CarbonPart>;

export type ArmMaterial = keyof typeof LIBRARY;

/** The typical values behind a name of the list. */
export const armMaterial = (name: ArmMaterial): CarbonPart | CarbonTube => LIBRARY[name];
