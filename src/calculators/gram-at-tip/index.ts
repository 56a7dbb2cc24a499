import { defineCalculator, sweep } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { GramAtTipFigure } from './figure.tsx';
import { inputs } from './inputs.ts';

const WHERE = 'Where the grams sit';
const ALL = 'The whole craft';

export default defineCalculator({
  id: 'gram-at-tip',
  title: 'A gram at the tip',
  question: 'What does a gram at the end of each arm cost, against a gram in the middle?',
  inputs,
  compute,
  outputs: [
    {
      key: 'rollCost',
      label: 'Roll acceleration lost',
      quantity: 'percent',
      meaning: 'What the grams take from the answer to full stick in roll.',
      value: ({ here }) => here.roll,
      headline: true,
    },
    {
      key: 'climbCost',
      label: 'Climb lost',
      quantity: 'percent',
      meaning: 'What the same grams take from thrust over mass. It is the same wherever they sit.',
      value: ({ here }) => here.climb,
      headline: true,
    },
    {
      key: 'pitchCost',
      label: 'Pitch acceleration lost',
      quantity: 'percent',
      meaning: 'The same fore and aft.',
      value: ({ here }) => here.pitch,
      group: WHERE,
    },
    {
      key: 'yawCost',
      label: 'Yaw acceleration lost',
      quantity: 'percent',
      meaning: 'Yaw counts the whole distance from the middle, not only its side part.',
      value: ({ here }) => here.yaw,
      group: WHERE,
    },
    {
      key: 'halfwayCost',
      label: 'Roll lost, half as far out',
      quantity: 'percent',
      meaning: 'Half the distance costs about a quarter.',
      value: ({ halfway }) => halfway.roll,
      group: WHERE,
    },
    {
      key: 'middleCost',
      label: 'Roll lost, in the middle',
      quantity: 'percent',
      meaning: 'Next to nothing. What is left comes from the height between arms and centre of mass.',
      value: ({ middle }) => middle.roll,
      group: WHERE,
      digits: 2,
    },
    {
      key: 'spokes',
      label: 'Arms and motors in the roll inertia',
      quantity: 'percent',
      meaning: 'Their share before anything is added. The rest is body and battery.',
      value: ({ spokes }) => spokes,
      group: ALL,
    },
    {
      key: 'rollInertia',
      label: 'Roll inertia',
      symbol: 'I_{xx}',
      quantity: 'momentOfInertia',
      meaning: 'Of the craft before anything is added.',
      value: ({ rollInertia }) => rollInertia,
      group: ALL,
    },
  ],
  says: ({ here, middle }, { added, reach }, show) =>
    `${show(added, 'mass')} on each arm, ${show(reach, 'percent')} of the way out, cost ${show(here.roll, 'percent')} of the roll acceleration and ${show(here.climb, 'percent')} of the climb. In the middle of the craft they cost ${show(middle.roll, 'percent', 2)} of roll and just as much climb.`,
  steps: [
    {
      id: 'added',
      says: 'Four equal masses add to the roll inertia with the square of their side distance',
      formula: '\\Delta I = 4\\,\\Delta m\\,(s\\,y_m)^2',
      numbers: '\\Delta I = 4\\cdot\\slot{mass}\\cdot(\\slot{reach}\\cdot\\slot{lever})^2 = \\slot{more}',
      slots: (v, { motor }) => ({
        mass: { value: v.added, quantity: 'mass' },
        reach: { value: v.reach, quantity: 'percent' },
        lever: { value: motor.y, quantity: 'length' },
        more: { value: 4 * v.added * (v.reach * motor.y) ** 2, quantity: 'momentOfInertia', digits: 3 },
      }),
    },
    {
      id: 'lost',
      says: 'Against the inertia that is there. In full, the height between arms and centre of mass counts as well',
      formula: '1-\\frac{I_{xx}}{I_{xx}+\\Delta I}',
      numbers:
        '1-\\frac{\\slot{before}}{\\slot{before}+\\slot{more}} = \\slot{about}\\quad\\text{in full}\\quad\\slot{lost}',
      slots: (v, { motor, rollInertia, here }) => {
        const more = 4 * v.added * (v.reach * motor.y) ** 2;
        return {
          before: { value: rollInertia, quantity: 'momentOfInertia' },
          more: { value: more, quantity: 'momentOfInertia', digits: 3 },
          about: { value: more / (rollInertia + more), quantity: 'percent' },
          lost: { value: here.roll, quantity: 'percent' },
        };
      },
    },
  ],
  plots: [
    {
      id: 'cost-over-reach',
      title: 'What the grams cost, by how far out they sit',
      caption: 'Climb pays the same everywhere. Roll and yaw pay with the square of the distance.',
      x: { label: 'Along the arm, 100 % at the motor axis', quantity: 'percent' },
      y: { label: 'Lost', quantity: 'percent' },
      data: (values, _result, run) =>
        sweep(values, run, { input: 'reach', from: 0, to: 1.2, count: 25 }, [
          { label: 'roll', of: ({ here }) => here.roll, role: 'main' },
          { label: 'yaw', of: ({ here }) => here.yaw, role: 'second' },
          { label: 'climb', of: ({ here }) => here.climb, role: 'comparison' },
        ]),
    },
  ],
  Figure: GramAtTipFigure,
  figureCaption: 'From above, to scale. Hatched dots: the added grams.',
  assumptions: [
    'The grams are points at the height of the arm axis, the same on all four arms.',
    'Body and battery are even boxes, the battery lengthwise on top and in the middle. Results are estimates for comparing designs.',
    'Thrust stays as it was: a heavier motor that pulls more is another question.',
  ],
  sources: ['meriam-2012-dynamics', 'common-practice'],
  formulas: ['mass/added-grams.ts', 'mass/agility.ts', 'mass/assembly.ts', 'mass/craft.ts'],
});
