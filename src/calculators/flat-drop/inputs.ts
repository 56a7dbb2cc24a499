import type { Values } from '~/island/declaration.ts';
import { materialInputs, rootSpringInputs, shapeInputs } from '../arm-inputs.ts';
import { craftInputs, measuredCraft } from '../craft-inputs.ts';
import { obstacleInputs } from '../obstacle-inputs.ts';
import { armLength } from '../root-inputs.ts';
import { sleeveInputs } from '../sleeve-inputs.ts';
import { strengthInputs } from '../strength-inputs.ts';

type Choices = Readonly<Record<string, number | string>>;
const onTips = (values: Choices): boolean => values.lands === 'tips';
const onFeet = (values: Choices): boolean => values.lands === 'feet';
const offCentre = (values: Choices): boolean =>
  values.lands === 'tips' && (values.sharing === 'end' || values.sharing === 'one');

const { mass } = measuredCraft(undefined);
const { rollInertia, pitchInertia } = measuredCraft(offCentre);
const { wheelbase, armAngle, motorMass, armMass } = craftInputs;
const { root, rootVertical } = rootSpringInputs;

export const inputs = {
  dropHeight: {
    label: 'Height of the fall',
    symbol: 'h',
    quantity: 'altitude',
    default: 3,
    min: 0.05,
    max: 100,
    step: 0.1,
    group: 'Fall',
    parameters: ['height'],
    frameField: 'cases.drop.height',
    help: 'Free fall onto level ground. With drag left out it is good to some ten metres.',
  },
  lands: {
    label: 'It lands on',
    choices: { tips: 'the ends of its arms', feet: 'feet under the body' },
    default: 'tips',
    group: 'Fall',
    frameField: 'cases.drop.lands',
    help: 'Skids under the motors count as ends of arms. On feet, the arms only hold up their own motors.',
  },
  sharing: {
    label: 'Arms that touch',
    choices: {
      four: 'all four at once',
      across: 'two, across the middle',
      end: 'two at one end',
      one: 'one alone',
    },
    default: 'four',
    group: 'Fall',
    shownWhen: onTips,
    frameField: 'cases.drop.sharing',
    help: 'Level on a floor: four. On rough ground: fewer. At one end or corner the craft turns away and shows less mass.',
  },
  feet: {
    label: 'Feet that touch',
    symbol: 'n',
    quantity: 'count',
    default: 4,
    min: 1,
    max: 8,
    step: 1,
    group: 'Fall',
    shownWhen: onFeet,
    help: 'Spread evenly round the centre of mass.',
  },
  footStiffness: {
    label: 'Stiffness of one foot',
    symbol: 'k_f',
    quantity: 'stiffness',
    default: 50e3,
    min: 1e3,
    max: 2e6,
    step: 1e3,
    group: 'Fall',
    shownWhen: onFeet,
    help: 'Force over give. Press it on a kitchen scale: 100 N that give 2 mm are 50 N/mm. A screw head is ten times that.',
  },
  ...obstacleInputs({ group: 'Fall', label: 'Ground', frameField: 'cases.drop.contactStiffness' }),
  mass,
  rollInertia,
  pitchInertia,
  wheelbase: { ...wheelbase, group: 'Craft', shownWhen: offCentre },
  armAngle: { ...armAngle, group: 'Craft', shownWhen: offCentre },
  motorMass: { ...motorMass, group: 'Craft', shownWhen: onFeet },
  armMass: { ...armMass, group: 'Craft', shownWhen: onFeet },
  ...shapeInputs,
  armLength: { ...armLength, parameters: ['length'] },
  ...materialInputs,
  ...strengthInputs,
  ...sleeveInputs,
  root,
  rootVertical,
} as const;

export type DropValues = Values<typeof inputs>;
