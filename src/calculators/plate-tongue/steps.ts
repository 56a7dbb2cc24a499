import type { QuantityKind } from '@frameworthy/shared/quantity';
import type { Slot, Step } from '~/island/declaration.ts';
import type { TongueAnswer } from './compute.ts';
import type { TongueValues } from './inputs.ts';

const of =
  (quantity: QuantityKind) =>
  (value: number): Slot => ({ value, quantity });
const length = of('length');
const force = of('force');
const moment = of('moment');
const stress = of('stress');

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
    says: 'Share of it that the bottom plate bends with: by rigidity, less what pull and push take over.',
    formula: 'M_b = \\alpha M',
    numbers: 'M_b = \\slot{share}\\cdot\\slot{M} = \\slot{result}',
    slots: (_, r) => ({
      share: of('ratio')(r.bottom.rootMoment / r.rootMoment),
      M: moment(r.rootMoment),
      result: moment(r.bottom.rootMoment),
    }),
  },
  {
    id: 'stress',
    says: 'Its section modulus, out of the plane or in it, and the stress at the edge of the body.',
    formula: '\\sigma = \\frac{M_b}{W} + \\frac{|N|}{w\\,t_b}',
    numbers: '\\sigma = \\frac{\\slot{M}}{\\slot{W}} + \\frac{\\slot{N}}{\\slot{w}\\cdot\\slot{t}} = \\slot{result}',
    slots: (v, r) => ({
      M: moment(Math.abs(r.bottom.rootMoment)),
      W: of('volume')(
        v.plane === 'horizontal' ? (v.bottomPlate * v.tongueWidth ** 2) / 6 : (v.tongueWidth * v.bottomPlate ** 2) / 6,
      ),
      N: force(Math.abs(r.bottom.axial)),
      w: length(v.tongueWidth),
      t: length(v.bottomPlate),
      result: stress(r.bottom.rootStress),
    }),
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
