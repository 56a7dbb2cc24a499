import type { Section } from '@frameworthy/shared/section';
import type { Slot, Step } from '~/island/declaration.ts';
import { slotOf } from './slot-of.ts';

/** Lines of the worked steps that every calculator of a hit on standoffs has; each calculator says what they mean there. */
type Line<V, R> = Omit<Step<V, R>, 'says'>;

interface Hit {
  /** Contact and standoffs in series [N/m]. */
  stiffness: number;
  frameStiffness: number;
  effectiveMass: number;
  peakForce: number;
}

const stiffness = slotOf('stiffness');

/** Contact and standoffs, one behind the other. */
export const springsInSeries: Line<{ contactStiffness: number }, Hit> = {
  id: 'series',
  formula: 'k = \\frac{1}{\\frac{1}{k_c}+\\frac{1}{k_s}}',
  numbers: 'k = \\frac{1}{\\frac{1}{\\slot{kc}}+\\frac{1}{\\slot{ks}}} = \\slot{result}',
  slots: (v, r) => ({
    kc: stiffness(v.contactStiffness),
    ks: stiffness(r.frameStiffness),
    result: stiffness(r.stiffness),
  }),
};

/** Peak of the hit at the speed that it has [m/s]. */
export const peakForce = <V, R extends Hit>(speed: (values: V, result: R) => number): Line<V, R> => ({
  id: 'force',
  formula: 'F = v\\sqrt{k\\,m_{\\mathrm{eff}}}',
  numbers: 'F = \\slot{v}\\cdot\\sqrt{\\slot{k}\\cdot\\slot{m}} = \\slot{result}',
  slots: (v, r) => ({
    v: slotOf('speed')(speed(v, r)),
    k: stiffness(r.stiffness),
    m: slotOf('mass')(r.effectiveMass),
    result: slotOf('force')(r.peakForce),
  }),
});

/** Stress at the end that is bent more: pull or push along it [N], moment [N·m], stress [Pa]. */
export const wallStress = <V extends { outerDiameter: number }, R extends { section: Section }>(
  worst: (result: R) => { axial: number; moment: number; stress: number },
): Line<V, R> => ({
  id: 'stress',
  formula: '\\sigma = \\frac{|N|}{A} + \\frac{M D}{2 I}',
  numbers:
    '\\sigma = \\frac{\\slot{N}}{\\slot{A}} + \\frac{\\slot{M}\\cdot\\slot{D}}{2\\cdot\\slot{I}} = \\slot{result}',
  slots: ({ outerDiameter }, r): Readonly<Record<string, Slot>> => {
    const { axial, moment, stress } = worst(r);
    return {
      N: slotOf('force')(Math.abs(axial)),
      A: slotOf('area')(r.section.area),
      M: slotOf('moment')(moment),
      D: slotOf('length')(outerDiameter),
      I: slotOf('secondMomentOfArea')(r.section.vertical.secondMomentOfArea),
      result: slotOf('stress')(stress),
    };
  },
});
