import type { Slot, Step } from '~/island/declaration.ts';
import type { LoadResult } from './compute.ts';
import type { LoadValues } from './inputs.ts';

const a = (quantity: Slot['quantity'], value: number): Slot => ({ value, quantity });

/** The sideways blow from mass to survivable speed, then full thrust. */
export const steps: readonly Step<LoadValues, LoadResult>[] = [
  {
    id: 'mass',
    says: 'Sideways, the craft turns away about its three axes, and the blow meets less than its mass',
    formula: 'm_{eff} = \\frac{m}{1 + m\\left(\\frac{r_1^2}{I_1}+\\frac{r_2^2}{I_2}+\\frac{r_3^2}{I_3}\\right)}',
    numbers:
      'm_{eff} = \\frac{\\slot{m}}{1 + \\slot{m2}\\left(\\frac{(\\slot{r1})^2}{\\slot{i1}}+\\frac{(\\slot{r2})^2}{\\slot{i2}}+\\frac{(\\slot{r3})^2}{\\slot{i3}}\\right)} = \\slot{shown}',
    slots: (_, { craft, strikes: { sideways } }) => {
      const turns = sideways.turns.flatMap(({ lever, momentOfInertia }, i) => [
        [`r${i + 1}`, a('length', Math.abs(lever))],
        [`i${i + 1}`, a('momentOfInertia', momentOfInertia)],
      ]);
      return {
        m: a('mass', craft.mass),
        m2: a('mass', craft.mass),
        ...(Object.fromEntries(turns) as Record<string, Slot>),
        shown: a('mass', sideways.effectiveMass),
      };
    },
  },
  {
    id: 'stiffness',
    says: 'Arm on its root, and the obstacle behind it: two springs in a row',
    formula: 'k = \\frac{k_{arm}\\,k_c}{k_{arm}+k_c}',
    numbers: 'k = \\frac{\\slot{arm}\\cdot\\slot{contact}}{\\slot{arm2}+\\slot{contact2}} = \\slot{k}',
    slots: (_, { contact, strikes: { sideways } }) => ({
      arm: a('stiffness', sideways.armStiffness),
      arm2: a('stiffness', sideways.armStiffness),
      contact: a('stiffness', contact),
      contact2: a('stiffness', contact),
      k: a('stiffness', sideways.stiffness),
    }),
  },
  {
    id: 'force',
    says: 'All the energy goes into the springs: lower end of the band. The upper one is half as much again',
    formula: 'F = v\\sqrt{k\\,m_{eff}}',
    numbers: 'F = \\slot{v}\\cdot\\sqrt{\\slot{k}\\cdot\\slot{m}} = \\slot{force}\\quad\\text{to}\\quad\\slot{high}',
    slots: ({ speed }, { strikes: { sideways } }) => ({
      v: a('speed', speed),
      k: a('stiffness', sideways.stiffness),
      m: a('mass', sideways.effectiveMass),
      force: a('force', sideways.peakForce),
      high: a('force', sideways.high),
    }),
  },
  {
    id: 'stress',
    says: 'At the root the whole arm is the lever; with a sleeve, what is left of it past the sleeve where that bends the tube more',
    formula: '\\sigma = \\frac{F\\,\\ell\\,c}{I}',
    numbers: '\\sigma = \\frac{\\slot{force}\\cdot\\slot{length}\\cdot\\slot{c}}{\\slot{i}} = \\slot{stress}',
    slots: ({ armLength }, { arm, strikes: { sideways } }) => ({
      force: a('force', sideways.peakForce),
      length: a('length', armLength - sideways.worst.at),
      c: a('length', arm.section.horizontal.extremeFibre),
      i: a('secondMomentOfArea', sideways.worst.secondMomentOfArea.horizontal),
      stress: a('stress', sideways.worst.stress),
    }),
  },
  {
    id: 'speed',
    says: 'All grows in step with the speed; u is the share of strength used, in bending or twisting',
    formula: 'v_s = \\frac{v}{u}',
    numbers: 'v_s = \\frac{\\slot{v}}{\\slot{use}} = \\slot{survivable}',
    slots: ({ speed }, { strikes: { sideways } }) => ({
      v: a('speed', speed),
      use: a('percent', sideways.use.most),
      survivable: a('speed', sideways.survivable),
    }),
  },
  {
    id: 'thrust',
    says: 'Full thrust bends the arm upwards, its reaction torque sideways',
    formula: 'M_v = T L,\\qquad Q = \\kappa\\,T',
    numbers:
      'M_v = \\slot{thrust}\\cdot\\slot{length} = \\slot{moment},\\qquad Q = \\slot{kappa}\\cdot\\slot{thrust2} = \\slot{torque}',
    slots: ({ fullThrust, torquePerThrust, armLength }, { thrust }) => ({
      thrust: a('force', fullThrust),
      thrust2: a('force', fullThrust),
      length: a('length', armLength),
      moment: a('moment', thrust.rootMoment.vertical),
      kappa: a('length', torquePerThrust),
      torque: a('moment', thrust.reactionTorque),
    }),
  },
];
