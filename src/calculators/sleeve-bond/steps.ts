import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import type { BondValues } from './inputs.ts';
import type { BondResult } from './result.ts';

const length = slotOf('length');
const stress = slotOf('stress');
const ratio = slotOf('ratio');

/** Softer over stiffer part: the ratio of the shears at the two ends of a long bond. */
const stiffnesses = ({ atStart, atEnd, jointNumber }: BondResult): number => {
  // Both ends are mixes of the two stiffnesses: undo the mixing.
  const fade = 1 / Math.cosh(jointNumber);
  const [low, high] = [Math.min(atStart, atEnd), Math.max(atStart, atEnd)];
  return (low - high * fade) / (high - low * fade);
};

export const steps: readonly Step<BondValues, BondResult>[] = [
  {
    id: 'transfer-length',
    says: 'Transfer length: a stiff bond and soft parts make it short. k is the bond’s shear stiffness per length, S the stiffness of each part: EA, GJ or EI with the load.',
    formula:
      '\\frac1\\lambda = \\left[k\\left(\\frac1{S_o}+\\frac1{S_i}\\right)\\right]^{-1/2},\\quad k = \\frac{G_a}{t_a}\\,2\\pi r,\\ \\frac{G_a}{t_a}\\,2\\pi r^3\\ \\text{or}\\ \\frac{G_a}{t_a}\\,\\pi r^3',
    numbers:
      '\\frac1\\lambda = \\slot{reach}\\quad\\text{with}\\quad G_a = \\slot{G},\\ t_a = \\slot{h},\\ r = \\slot{r}',
    slots: (v, r) => ({
      reach: length(1 / r.lambda),
      G: { value: v.shearModulus, quantity: 'modulus' },
      h: length(r.geometry.bondLine),
      r: length(r.geometry.bondRadius),
    }),
  },
  {
    id: 'joint-number',
    says: 'Overlap in transfer lengths.',
    formula: '\\rho = \\lambda\\,\\ell',
    numbers: '\\rho = \\frac{\\slot{overlap}}{\\slot{reach}} = \\slot{number}',
    slots: (v, r) => ({ overlap: length(v.overlap), reach: length(1 / r.lambda), number: ratio(r.jointNumber) }),
  },
  {
    id: 'peak',
    says: 'Peak shear from the mean; ψ is the softer part’s stiffness over the stiffer’s.',
    formula:
      '\\tau_{max} = \\tau_{mean}\\,\\frac{\\rho}{2}\\left[\\coth\\frac{\\rho}{2}+\\frac{1-\\psi}{1+\\psi}\\tanh\\frac{\\rho}{2}\\right]',
    numbers:
      '\\tau_{max} = \\slot{mean}\\cdot\\frac{\\slot{number}}{2}\\left[\\coth\\frac{\\slot{number2}}{2}+\\frac{1-\\slot{psi}}{1+\\slot{psi2}}\\tanh\\frac{\\slot{number3}}{2}\\right] = \\slot{peak}',
    slots: (_, r) => {
      const psi = ratio(stiffnesses(r));
      const number = ratio(r.jointNumber);
      return { mean: stress(r.mean), number, number2: number, number3: number, psi, psi2: psi, peak: stress(r.peak) };
    },
  },
  {
    id: 'useful',
    says: 'Overlap beyond which the peak stays.',
    formula: '\\ell_u = \\frac5\\lambda',
    numbers: '\\ell_u = 5\\cdot\\slot{reach} = \\slot{useful}',
    slots: (_, r) => ({ reach: length(1 / r.lambda), useful: length(r.useful) }),
  },
  {
    id: 'breaks',
    says: 'Elastic peak at which a long bond comes apart, its ends yielding first.',
    formula: '\\tau_{eq} = f_T\\,\\tau_p\\sqrt{1+2\\,r_p}',
    numbers: '\\tau_{eq} = \\slot{kept}\\cdot\\slot{strength}\\cdot\\sqrt{1+2\\cdot\\slot{plastic}} = \\slot{breaks}',
    slots: (v, r) => ({
      kept: { value: v.kept, quantity: 'percent' },
      strength: stress(v.adhesiveStrength),
      plastic: ratio(v.plasticRatio),
      breaks: stress(r.breaks),
    }),
  },
];
