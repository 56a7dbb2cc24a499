import type { QuantityKind } from '@frameworthy/shared/quantity';
import type { Slot, Step } from '~/island/declaration.ts';
import type { LayoutResult } from './compute.ts';
import type { LayoutValues } from './inputs.ts';

const of =
  (quantity: QuantityKind) =>
  (value: number): Slot => ({ value, quantity });
const length = of('length');
const force = of('force');
const stress = of('stress');
const speed = of('speed');
const mass = of('mass');
const stiffness = of('stiffness');

export const steps: readonly Step<LayoutValues, LayoutResult>[] = [
  {
    id: 'middle',
    says: 'Middle of the standoffs, all alike: a level push through it turns nothing.',
    formula: 'x_s = \\frac{1}{n}\\sum x_i',
    numbers: 'x_s = \\frac{\\slot{sum}}{\\slot{n}} = \\slot{result}',
    slots: (_, r) => ({
      sum: length(r.places.reduce((sum, { x }) => sum + x, 0)),
      n: of('count')(r.places.length),
      result: length(r.centre.x),
    }),
  },
  {
    id: 'series',
    says: 'All standoffs at the point of the load, rocking and turning included (six equations), and the contact in series.',
    formula: 'k = \\frac{1}{\\frac{1}{k_c}+\\frac{1}{k_s}}',
    numbers: 'k = \\frac{1}{\\frac{1}{\\slot{kc}}+\\frac{1}{\\slot{ks}}} = \\slot{result}',
    slots: (v, r) => ({
      kc: stiffness(v.contactStiffness),
      ks: stiffness(r.frameStiffness),
      result: stiffness(r.stiffness),
    }),
  },
  {
    id: 'force',
    says: 'Peak force of a hit; a given force is read the other way, as a speed.',
    formula: 'F = v\\sqrt{k\\,m_{\\mathrm{eff}}}',
    numbers: 'F = \\slot{v}\\cdot\\sqrt{\\slot{k}\\cdot\\slot{m}} = \\slot{result}',
    slots: (_, r) => ({
      v: speed(r.speed),
      k: stiffness(r.stiffness),
      m: mass(r.effectiveMass),
      result: force(r.peakForce),
    }),
  },
  {
    id: 'stress',
    says: 'Stress in the worst standoff, at the end that is bent more.',
    formula: '\\sigma = \\frac{|N|}{A} + \\frac{M D}{2 I}',
    numbers:
      '\\sigma = \\frac{\\slot{N}}{\\slot{A}} + \\frac{\\slot{M}\\cdot\\slot{D}}{2\\cdot\\slot{I}} = \\slot{result}',
    slots: (v, r) => {
      const { axial, footMoment, headMoment } = r.forces[r.worst]!;
      return {
        N: force(Math.abs(axial)),
        A: of('area')(r.section.area),
        M: of('moment')(Math.max(footMoment, headMoment)),
        D: length(v.outerDiameter),
        I: of('secondMomentOfArea')(r.section.vertical.secondMomentOfArea),
        result: stress(r.wall[r.worst]!),
      };
    },
  },
];
