import { defineCalculator } from '~/island/declaration.ts';
import { compute, WORDS } from './compute.ts';
import { ArmLoadsFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { outputs } from './outputs.ts';
import { plots } from './plots.ts';
import { steps } from './steps.ts';

export default defineCalculator({
  id: 'arm-loads',
  title: 'Loads on an arm',
  question: 'How hard is the end of my arm hit, from which side is it worst, and what does full thrust do to it?',
  inputs,
  compute,
  outputs,
  says: ({ strikes, first }, { speed }, show) => {
    const { sideways, vertical, along } = strikes;
    const { survivable, survivableLow, breaksBy } = strikes[first];
    return `At ${show(speed, 'speed')} the end of the arm feels ${show(sideways.peakForce, 'force')} sideways, ${show(vertical.peakForce, 'force')} up or down and ${show(along.peakForce, 'force')} along the arm, or up to half as much again. A blow ${WORDS[first]} breaks the bare root first, by ${breaksBy}, from ${show(survivableLow, 'speed')} to ${show(survivable, 'speed')}.`;
  },
  steps,
  plots,
  Figure: ArmLoadsFigure,
  figureCaption:
    'To scale. Arrows grow with the square root of the force, lower end of the band. The quartered circle is the centre of mass.',
  assumptions: [
    'Crash loads are good for comparing two designs and for orders of magnitude. They are no promise that an arm survives.',
    'The craft is free in the air, rigid but for the struck arm, and everything is linear until it breaks. Measured peaks of small frames lie about 1.5 times above that: the band.',
    'Two stiffnesses you hardly know, of the obstacle and of the root. Change them and look whether the ranking of your designs changes.',
    'The motor’s own mass is counted behind the arm, though the obstacle stops it. On concrete that is within some 15 %; on grass the arm’s force comes out up to half too high.',
    'Bare arm of one section: no sleeve, no holes, no notch. Along the arm the give of the screws is left out.',
    'Body and pack are even boxes, arms rods, motors cylinders, where the craft is worked out from its parts.',
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
    'impact/effective-mass.ts',
    'impact/moving-mass.ts',
    'impact/peak-force-band.ts',
    'impact/obstacles.ts',
    'beam/tip-stiffness.ts',
    'beam/axial-stiffness.ts',
    'beam/thrust-load.ts',
  ],
});
