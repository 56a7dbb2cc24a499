import { defineCalculator } from '~/island/declaration.ts';
import { placeWords } from '../arm-of-fields.ts';
import { compute, WORDS } from './compute.ts';
import { ArmLoadsFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'arm-loads',
  title: 'Loads on an arm',
  question: 'How hard is my arm hit, from which side is it worst, and what does full thrust do to it?',
  inputs,
  compute,
  outputs,
  says: ({ strikes, first, arm }, { speed }, show) => {
    const { sideways, vertical, along } = strikes;
    const { survivable, survivableLow, breaksBy, worst } = strikes[first];
    // Twist is the same all along, and a sleeve takes its share of it.
    const place = placeWords(arm, breaksBy === 'twisting' ? arm.doubled : worst.at);
    return `At ${show(speed, 'speed')} the end of the arm feels ${show(sideways.peakForce, 'force')} sideways, ${show(vertical.peakForce, 'force')} up or down and ${show(along.peakForce, 'force')} along the arm, or up to half as much again. A blow ${WORDS[first]} breaks ${place} first, by ${breaksBy}, from ${show(survivableLow, 'speed')} to ${show(survivable, 'speed')}.`;
  },
  steps,
  plots,
  Figure: ArmLoadsFigure,
  figureCaption:
    'To scale. Arrows grow with the root of the force. Quartered circle: centre of mass. Dashed: the sleeve, if there is one.',
  assumptions: [
    'For comparing two designs and for orders of magnitude. No promise that an arm survives.',
    'A craft free in the air, rigid but for the struck arm; all linear until it breaks. Measured peaks of small frames lie about 1.5 times above that: the band.',
    'Nobody knows the stiffness of obstacle and root well. Change them and see whether the ranking of your designs holds.',
    'The motor’s own mass is counted behind the arm: within 15 % on concrete, up to half too much force on grass.',
    'One section from root to motor, without holes or notch, in a tube doubled by a sleeve if you give one. Its bond is taken as stiff and its end as no notch. Along the arm the give of the screws is left out.',
  ],
  sources: [
    'hibbeler-mechanics',
    'azambuja-2022-drops',
    'meriam-2012-dynamics',
    'gere-2004-mechanics',
    'common-practice',
  ],
  formulas: [
    'impact/tip-strike.ts',
    'impact/effective-mass-at.ts',
    'impact/moving-mass.ts',
    'impact/peak-force-band.ts',
    'impact/obstacles.ts',
    'beam/tip-stiffness.ts',
    'beam/axial-stiffness.ts',
    'beam/thrust-load.ts',
  ],
});
