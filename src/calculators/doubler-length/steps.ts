import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import type { DoublerValues } from './inputs.ts';
import type { DoublerResult } from './result.ts';

const length = slotOf('length');
const stress = slotOf('stress');
const modulus = slotOf('modulus');
const ratio = slotOf('ratio');
const force = slotOf('force');
const mass = slotOf('mass');
const second = slotOf('secondMomentOfArea');

export const steps: readonly Step<DoublerValues, DoublerResult>[] = [
  {
    id: 'end-step',
    says: 'Stress step just past the sleeve’s end, with the taper.',
    formula: 'K = 1 + (K_0-1)\\,f,\\quad f = \\frac{1-e^{-\\lambda a}}{\\lambda a}',
    numbers: 'K = 1 + (\\slot{square} - 1)\\cdot\\slot{f} = \\slot{step}',
    slots: (v, r) => ({ square: ratio(v.squareEndFactor), f: ratio(r.leftByTaper), step: ratio(r.endStep) }),
  },
  {
    id: 'bare-enough',
    says: 'Station past the outer screw from which the bare tube is enough.',
    formula: 'x_1 = \\max\\left(0,\\ L - \\frac{\\sigma_t\\,I_t}{K\\,c\\,F}\\right)',
    numbers:
      'x_1 = \\max\\left(0,\\;\\slot{L} - \\frac{\\slot{allow}\\cdot\\slot{I}}{\\slot{step}\\cdot\\slot{c}\\cdot\\slot{F}}\\right) = \\slot{x}',
    slots: (v, r) => ({
      L: length(v.armLength),
      allow: stress(v.tubeStrength),
      I: second(r.section.whole.tube.secondMomentOfArea),
      step: ratio(r.endStep),
      c: length(r.section.whole.tube.extremeFibre),
      F: force(v.tipForce),
      x: length(r.required.bareEnough),
    }),
  },
  {
    id: 'transfer-length',
    says: 'Transfer length of the bond, from its gap and both walls.',
    formula:
      '\\frac1\\lambda = \\left[\\frac{G_a}{t_a}\\left(\\frac{1}{E_ot_o}+\\frac{1}{E_it_i}\\right)\\right]^{-1/2}',
    numbers:
      '\\frac1\\lambda = \\left[\\frac{\\slot{G}}{\\slot{h}}\\left(\\frac{1}{\\slot{Eo}\\cdot\\slot{to}}+\\frac{1}{\\slot{Ei}\\cdot\\slot{ti}}\\right)\\right]^{-1/2} = \\slot{reach}',
    slots: (v, r) => ({
      G: modulus(v.shearModulus),
      h: length(r.section.geometry.bondLine),
      Eo: modulus(v.tubeModulus),
      to: length(r.section.geometry.tubeWall),
      Ei: modulus(v.sleeveModulus),
      ti: length(v.sleeveWall),
      reach: length(1 / r.section.lambda),
    }),
  },
  {
    id: 'lead-in',
    says: 'Length in which the sleeve takes up 95 % of its share.',
    formula: 'x_{95} = \\frac{3+\\ln f}{\\lambda} + a',
    numbers: 'x_{95} = (3+\\ln\\slot{f})\\cdot\\slot{reach} + \\slot{a} = \\slot{x}',
    slots: (v, r) => ({
      f: ratio(r.leftByTaper),
      reach: length(1 / r.section.lambda),
      a: length(v.taper),
      x: length(r.leadIn),
    }),
  },
  {
    id: 'required',
    says: 'Required length, from the inner end of the tube.',
    formula: '\\ell_{req} = e + s + \\max\\left(x_1,\\ d + x_{95}\\right)',
    numbers:
      '\\ell_{req} = \\slot{e} + \\slot{s} + \\max\\left(\\slot{x},\\;\\slot{d} + \\slot{lead}\\right) = \\slot{length}',
    slots: (v, r) => ({
      e: length(v.edgeDistance),
      s: length(v.screwSpacing),
      x: length(r.required.bareEnough),
      d: length(v.holeDiameter),
      lead: length(r.leadIn),
      length: length(r.required.length),
    }),
  },
  {
    id: 'bond-peak',
    says: 'Peak bond shear at the outer end, from the stress that the sleeve would take there.',
    formula: '\\tau_{max} = f\\,\\lambda\\,\\sigma_i\\,t_i',
    numbers: '\\tau_{max} = \\slot{f}\\cdot\\frac{\\slot{sigma}\\cdot\\slot{ti}}{\\slot{reach}} = \\slot{peak}',
    slots: (v, r) => ({
      f: ratio(r.leftByTaper),
      sigma: stress(r.bondPeak / (r.leftByTaper * r.section.lambda * v.sleeveWall)),
      ti: length(v.sleeveWall),
      reach: length(1 / r.section.lambda),
      peak: stress(r.bondPeak),
    }),
  },
  {
    id: 'wasted',
    says: 'Grams past the required length.',
    formula: 'm_w = \\rho A_i\\,\\max(0,\\ \\ell-\\ell_{req})',
    numbers: 'm_w = \\slot{rho}\\cdot\\slot{A}\\cdot\\max(0,\\;\\slot{chosen}-\\slot{required}) = \\slot{wasted}',
    slots: (v, r) => ({
      rho: { value: v.sleeveDensity, quantity: 'density' },
      A: { value: r.section.geometry.sleeve.area, quantity: 'area' },
      chosen: length(v.length),
      required: length(r.required.length),
      wasted: mass(r.wasted),
    }),
  },
];
