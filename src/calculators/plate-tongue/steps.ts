import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import type { TongueAnswer } from './compute.ts';
import type { TongueValues } from './inputs.ts';

const length = slotOf('length');
const force = slotOf('force');
const moment = slotOf('moment');
const stress = slotOf('stress');

export const steps: readonly Step<TongueValues, TongueAnswer>[] = [
  {
    id: 'outer',
    says: 'Force on the tongue at the outer screw: moments about the inner one.',
    formula: 'F_o = \\frac{F (L+s)}{s}',
    numbers: 'F_o = \\frac{\\slot{F}\\cdot(\\slot{L}+\\slot{s})}{\\slot{s2}} = \\slot{result}',
    slots: (v, r) => ({
      F: force(v.force),
      L: length(v.armLength),
      s: length(v.screwSpacing),
      s2: length(v.screwSpacing),
      result: force(r.outer),
    }),
  },
  {
    id: 'moment',
    says: 'Moment at the edge of the body. An inner screw on the tongue takes its part away.',
    formula: 'M = F_o\\,l - F_i\\,\\max(0,\\,l-s)',
    numbers: 'M = \\slot{Fo}\\cdot\\slot{l} - \\slot{Fi}\\cdot\\slot{inner} = \\slot{result}',
    slots: (v, r) => ({
      Fo: force(r.outer),
      l: length(v.tongueLength),
      Fi: force(r.inner),
      inner: length(Math.max(0, v.tongueLength - v.screwSpacing)),
      result: moment(r.rootMoment),
    }),
  },
  {
    id: 'share',
    says: 'Share of it that the main plate bends with: by rigidity, less what pull and push take over.',
    formula: 'M_b = \\alpha M',
    numbers: 'M_b = \\slot{share}\\cdot\\slot{M} = \\slot{result}',
    slots: (_, r) => ({
      share: slotOf('ratio')(r.bottom.rootMoment / r.rootMoment),
      M: moment(r.rootMoment),
      result: moment(r.bottom.rootMoment),
    }),
  },
  {
    id: 'stress',
    says: 'Stress at the edge of the body: h is the depth of the plate in the direction of the blow, b the other side.',
    formula: '\\sigma = \\frac{6 M_b}{b h^2} + \\frac{|N|}{b h}',
    numbers:
      '\\sigma = \\frac{6\\cdot\\slot{M}}{\\slot{b}\\cdot(\\slot{h})^2} + \\frac{\\slot{N}}{\\slot{b2}\\cdot\\slot{h2}} = \\slot{result}',
    slots: (v, r) => {
      const [b, h] = v.plane === 'horizontal' ? [v.bottomPlate, v.tongueWidth] : [v.tongueWidth, v.bottomPlate];
      return {
        M: moment(Math.abs(r.bottom.rootMoment)),
        b: length(b),
        h: length(h),
        N: force(Math.abs(r.bottom.axial)),
        b2: length(b),
        h2: length(h),
        result: stress(r.bottom.rootStress),
      };
    },
  },
  {
    id: 'web',
    says: 'Stress of the worse web: pull or push, and its own bending.',
    formula: '\\sigma_w = \\sigma_N + \\sigma_M',
    numbers: '\\sigma_w = \\slot{axial} + \\slot{bending} = \\slot{result}',
    slots: (_, r) => ({
      axial: stress(r.web.axialStress),
      bending: stress(r.web.bendingStress + r.web.outOfPlaneStress),
      result: stress(r.web.stress),
    }),
  },
];
