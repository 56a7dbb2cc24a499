import type { Input, Values } from '~/island/declaration.ts';
import { materialInputs, rootSpringInputs, shapeInputs } from '../arm-inputs.ts';
import { batteryInputs, craftInputs, measuredCraft, placeInputs, thrustInputs } from '../craft-inputs.ts';
import { obstacleInputs } from '../obstacle-inputs.ts';
import { armLength } from '../root-inputs.ts';
import { sleeveInputs } from '../sleeve-inputs.ts';
import { strengthInputs } from '../strength-inputs.ts';

const MM = 1e-3;

type Choices = Readonly<Record<string, number | string>>;
const byParts = (values: Choices): boolean => values.craft === 'parts';
const entered = (values: Choices): boolean => values.craft === 'entered';

/** Fields that count only while the craft is put together from its parts. */
const partsOnly = <I extends Readonly<Record<string, Input>>>(inputs: I): I =>
  Object.fromEntries(Object.entries(inputs).map(([key, input]) => [key, { ...input, shownWhen: byParts }])) as I;

const {
  wheelbase,
  armAngle,
  bodyMass,
  bodyLength,
  bodyWidth,
  bodyHeight,
  bodyDepth,
  bodyForward,
  armMass,
  motorMass,
  propellerHeight,
} = craftInputs;
/** Without the craft's own arm length: one length serves beam and craft. */
const weights = {
  bodyMass,
  bodyLength,
  bodyWidth,
  bodyHeight,
  bodyDepth,
  bodyForward,
  armMass,
  motorMass,
  propellerHeight,
};

export const inputs = {
  speed: {
    label: 'Speed of the hit',
    symbol: 'v',
    quantity: 'speed',
    default: 5,
    min: 0.2,
    max: 40,
    step: 0.5,
    group: 'Hit',
    frameField: 'cases.strike.speed',
    help: 'Along the blow. Most hits happen at 3 to 12 m/s.',
  },
  hitHeight: {
    label: 'Hit above the arm’s axis',
    symbol: 'h',
    quantity: 'length',
    default: 12 * MM,
    min: -30 * MM,
    max: 60 * MM,
    step: 1 * MM,
    group: 'Hit',
    frameField: 'cases.strike.height',
    help: '0 at the end of the arm, about 12 mm at the foot of the bell, below 0 on a skid.',
  },
  ...obstacleInputs({ group: 'Hit', label: 'Obstacle', frameField: 'cases.strike.contactStiffness' }),
  ...shapeInputs,
  armLength: { ...armLength, parameters: ['length'] },
  ...materialInputs,
  ...strengthInputs,
  ...sleeveInputs,
  ...rootSpringInputs,
  ...thrustInputs,
  wheelbase: { ...wheelbase, group: 'Craft' },
  armAngle: { ...armAngle, group: 'Craft' },
  craft: {
    label: 'Mass and inertia',
    choices: { parts: 'worked out from the parts', entered: 'as entered' },
    default: 'parts',
    group: 'Craft',
    frameField: 'mass.by',
    help: 'Boxes, rods and cylinders, or as measured.',
  },
  ...measuredCraft(entered),
  ...partsOnly(placeInputs),
  ...partsOnly(batteryInputs),
  ...partsOnly(weights),
} as const;

export type LoadValues = Values<typeof inputs>;
