import { defineCalculator } from '~/island/declaration.ts';
import { compute } from './compute.ts';
import { Figure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs, standing } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'arm-frequency',
  title: 'Frequencies of an arm',
  question: 'Does the arm ring at a speed that its own propeller turns at?',
  inputs,
  compute,
  outputs,
  warnings: ({ modes }) => modes.warnings,
  says: (result, _, show) => {
    const { modes, crossings } = result;
    const [up, side] = [modes.upDown[0].frequency, modes.sideways[0].frequency];
    const first = `The arm nods with ${show(up, 'frequency')} and swings sideways with ${show(side, 'frequency')}`;
    const met = crossings.filter(({ line }) => line === 'once per turn');
    if (met.length === 0) return `${first}. Sideways: ${standing(side, result).text}.`;
    const where = met.map(({ mode, speed }) => `${show(speed, 'rotationalSpeed')} (${mode})`).join(', ');
    return `${first}. Between hover and full throttle, once per turn meets it at ${where}.`;
  },
  steps,
  plots,
  Figure,
  figureCaption:
    'To scale, the movement much enlarged. Dashed: the arm at one end of its swing; the motor moves with it.',
  assumptions: [
    'One arm on a body that stands still. On a real frame the body moves a little against the arms, which raises some of the frequencies by some per cent. Results are estimates.',
    'One section from root to motor; doubler, holes, wires and mount left out. The motor is a solid cylinder with half of it fixed against turning about its own axis.',
    'The root is a linear spring. With play in the holes the arm rattles instead, at a lower frequency that depends on how hard it is shaken.',
    'No damping: the model says where the arm rings, not how loudly. The propeller’s gyroscopic moment is left out; it splits the frequencies a little at high speed.',
  ],
  sources: [
    'przemieniecki-1968-matrix',
    'thomson-1998-vibration',
    'gurgoze-1996-eigenfrequencies',
    'blevins-1979-frequency',
    'cowper-1966-shear',
    'common-practice',
  ],
  formulas: [
    'vibration/uniform-arm.ts',
    'vibration/modes.ts',
    'vibration/modes-element.ts',
    'vibration/sensitivity.ts',
    'vibration/spring-mass.ts',
    'vibration/propeller-lines.ts',
    'vibration/validity.ts',
  ],
});
