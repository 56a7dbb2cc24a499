import { CANTILEVER_TIP_SHARE } from '@frameworthy/shared/vibration';
import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import type { FrequencyResult } from './compute.ts';
import type { FrequencyValues } from './inputs.ts';

const [frequency, mass, length, stiffness, speed] = [
  slotOf('frequency'),
  slotOf('mass'),
  slotOf('length'),
  slotOf('stiffness'),
  slotOf('rotationalSpeed'),
];

export const steps: readonly Step<FrequencyValues, FrequencyResult>[] = [
  {
    id: 'stiffness',
    says: 'Stiffness of the arm at the motor, as a slender beam in a rigid root.',
    formula: 'k = \\frac{3EI}{L^3}',
    numbers: 'k = \\frac{3\\cdot\\slot{e}\\cdot\\slot{i}}{(\\slot{l})^3} = \\slot{k}',
    slots: ({ armLength }, { arm, modes, flexuralRigidity }) => ({
      e: slotOf('modulus')(arm.youngsModulus),
      i: slotOf('secondMomentOfArea')(modes.section.vertical.secondMomentOfArea),
      l: length(armLength),
      k: stiffness((3 * flexuralRigidity) / armLength ** 3),
    }),
  },
  {
    id: 'mass',
    says: 'Mass that moves: what is at the tip, and not quite a quarter of the arm.',
    formula: 'm = M + \\tfrac{33}{140}\\,m_{\\mathrm{arm}}',
    numbers: 'm = \\slot{tip} + \\tfrac{33}{140}\\cdot\\slot{arm} = \\slot{m}',
    slots: ({ motorMass }, { beamMass }) => ({
      tip: mass(motorMass),
      arm: mass(beamMass),
      m: mass(motorMass + CANTILEVER_TIP_SHARE * beamMass),
    }),
  },
  {
    id: 'quick',
    says: 'Quick estimate, up and down: the highest that this arm could reach.',
    formula: 'f = \\frac{1}{2\\pi}\\sqrt{\\frac{k}{m}}',
    numbers: 'f = \\frac{1}{2\\pi}\\sqrt{\\frac{\\slot{k}}{\\slot{m}}} = \\slot{f}',
    slots: ({ armLength, motorMass }, { flexuralRigidity, beamMass, quick }) => ({
      k: stiffness((3 * flexuralRigidity) / armLength ** 3),
      m: mass(motorMass + CANTILEVER_TIP_SHARE * beamMass),
      f: frequency(quick),
    }),
  },
  {
    id: 'up-down',
    says: 'The same arm in sixteen beam elements, with shear, the give of the root, and a motor that tilts as it nods.',
    formula: '\\det(K - \\omega^2\\,M) = 0,\\quad f = \\frac{\\omega}{2\\pi}',
    numbers: 'f_v = \\slot{f}',
    slots: (_, { modes }) => ({ f: frequency(modes.upDown[0].frequency) }),
  },
  {
    id: 'sideways',
    says: 'Sideways the motor’s height couples swing and twist through its mass. Two mixtures of them come out.',
    formula: 'M_{\\mathrm{tip}} = \\begin{bmatrix} M & M a \\\\ M a & I + M a^2 \\end{bmatrix}',
    numbers: 'f_h = \\slot{first},\\quad f_{h2} = \\slot{second}',
    slots: (_, { modes }) => ({
      first: frequency(modes.sideways[0].frequency),
      second: frequency(modes.sideways[1].frequency),
    }),
  },
  {
    id: 'turn',
    says: 'The imbalance of a propeller shakes once per turn.',
    formula: 'f_1 = \\frac{n}{60\\ \\mathrm{s/min}}',
    numbers: '\\slot{nh} \\to \\slot{fh},\\quad \\slot{nf} \\to \\slot{ff}',
    slots: ({ hoverSpeed, fullSpeed }, { hover, full }) => ({
      nh: speed(hoverSpeed),
      fh: frequency(hover.oncePerRev),
      nf: speed(fullSpeed),
      ff: frequency(full.oncePerRev),
    }),
  },
  {
    id: 'blades',
    says: 'Its blades pass the arm that many times as often.',
    formula: 'f_B = B f_1',
    numbers: 'f_B = \\slot{b}\\cdot\\slot{fh} = \\slot{bh},\\quad \\slot{b2}\\cdot\\slot{ff} = \\slot{bf}',
    slots: ({ blades }, { hover, full }) => ({
      b: slotOf('count')(blades),
      b2: slotOf('count')(blades),
      fh: frequency(hover.oncePerRev),
      bh: frequency(hover.bladePass),
      ff: frequency(full.oncePerRev),
      bf: frequency(full.bladePass),
    }),
  },
];
