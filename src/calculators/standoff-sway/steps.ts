import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import { peakForce, springsInSeries, wallStress } from '../standoff-steps.ts';
import type { SwayResult } from './compute.ts';
import type { SwayValues } from './inputs.ts';

const length = slotOf('length');
const ratio = slotOf('ratio');
const force = slotOf('force');
const stiffness = slotOf('stiffness');
const stress = slotOf('stress');
const moment = slotOf('moment');
const mass = slotOf('mass');
const speed = slotOf('speed');

export const steps: readonly Step<SwayValues, SwayResult>[] = [
  {
    id: 'mass',
    says: 'Mass behind the blow: the frame also pitches and yaws away from it.',
    formula:
      'm_{\\mathrm{eff}} = \\frac{m}{1 + \\left(\\frac{L+h-z_c}{k_p}\\right)^2 + \\left(\\frac{e}{k_y}\\right)^2}',
    numbers:
      'm_{\\mathrm{eff}} = \\frac{\\slot{m}}{1 + \\left(\\frac{\\slot{r}}{\\slot{k}}\\right)^2 + \\left(\\frac{\\slot{e}}{\\slot{k2}}\\right)^2} = \\slot{result}',
    slots: (v, r) => ({
      m: mass(v.mass),
      r: length(v.length + v.hitHeight - v.centreHeight),
      k: length(v.pitchRadius),
      e: length(v.hitAside),
      k2: length(v.yawRadius),
      result: mass(r.effectiveMass),
    }),
  },
  {
    id: 'post',
    says: 'Side stiffness of one standoff. The factor is 12 for a slender one held rigidly at both ends; shear and springy plates lower it.',
    formula: 'k_1 = c\\,\\frac{E I}{L^3}',
    numbers: 'k_1 = \\slot{c}\\cdot\\frac{\\slot{E}\\cdot\\slot{I}}{(\\slot{L})^3} = \\slot{result}',
    slots: (v, r) => ({
      c: ratio(r.endFactor),
      E: slotOf('modulus')(r.youngsModulus),
      I: slotOf('secondMomentOfArea')(r.section.vertical.secondMomentOfArea),
      L: length(v.length),
      result: stiffness(r.postStiffness),
    }),
  },
  {
    ...springsInSeries,
    says: 'All standoffs together at the point of the hit, rocking and turning included (six equations), then the contact in series.',
  },
  {
    ...peakForce((v) => v.speed),
    says: 'Peak force: energy of the moving mass against the energy in the springs.',
  },
  {
    id: 'moment',
    says: 'Moment at the end of the standoff that is bent most. The lever is half the length where both ends hold alike.',
    formula: 'M = \\lambda\\, H L',
    numbers: 'M = \\slot{share}\\cdot\\slot{H}\\cdot\\slot{L} = \\slot{result}',
    slots: (v, r) => ({
      share: ratio(r.worstMoment / (r.worstForces.shear * v.length || 1)),
      H: force(r.worstForces.shear),
      L: length(v.length),
      result: moment(r.worstMoment),
    }),
  },
  {
    ...wallStress((r) => ({
      axial: r.worstForces.axial,
      moment: r.worstMoment,
      stress: r.limit('standoff')!.applied,
    })),
    says: 'Stress at its outer fibre.',
  },
  {
    id: 'folding',
    says: 'Side force at which every standoff has a hinge at its held ends: two each, one where the head is loose.',
    formula: 'F_p = n\\,j\\,\\frac{\\sigma_y (D^3-d^3)}{6 L}',
    numbers:
      'F_p = \\slot{n}\\cdot\\slot{j}\\cdot\\frac{\\slot{yield}\\cdot\\left((\\slot{D})^3-(\\slot{d})^3\\right)}{6\\cdot\\slot{L}} = \\slot{result}',
    slots: (v, r) => ({
      n: slotOf('count')(r.columns.length),
      j: slotOf('count')(v.ends === 'pinned-heads' ? 1 : 2),
      yield: stress(r.yieldStrength),
      D: length(v.outerDiameter),
      d: length(v.bore),
      L: length(v.length),
      result: force(r.foldingForce),
    }),
  },
  {
    id: 'speed',
    says: 'Speed at which it yields: every load grows in step with the speed.',
    formula: 'v_y = v\\,\\frac{\\sigma_y}{\\sigma}',
    numbers: 'v_y = \\slot{v}\\cdot\\frac{\\slot{limit}}{\\slot{stress}} = \\slot{result}',
    slots: (v, r) => ({
      v: speed(v.speed),
      limit: stress(r.yieldStrength),
      stress: stress(r.limit('standoff')!.applied),
      result: speed(r.limit('standoff')!.speed ?? 0),
    }),
  },
];
