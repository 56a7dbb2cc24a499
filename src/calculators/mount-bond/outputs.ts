import type { MountCase } from '@frameworthy/shared/mount';
import type { Output, Step } from '~/island/declaration.ts';
import { CASE_WORDS } from '../mount-inputs.ts';
import { verdictOfUse } from '../verdict-of-use.ts';
import type { BondResult } from './compute.ts';
import type { BondValues } from './inputs.ts';

type BondOutput = Output<BondValues, BondResult>;

const use = (key: string, name: MountCase, label: string, meaning: string): BondOutput => ({
  key,
  label,
  quantity: 'percent',
  digits: 2,
  group: 'Share of the glue’s strength',
  meaning,
  value: ({ stress }) => stress[name].use,
  verdict: ({ stress }) => verdictOfUse(stress[name].use, 'the glue’s strength'),
});

export const outputs: readonly BondOutput[] = [
  {
    key: 'worstUse',
    label: 'Bond used at worst',
    quantity: 'percent',
    digits: 2,
    headline: true,
    meaning: 'Shear and pull across the glue together, in the worst of the four cases.',
    value: ({ stress, worst }) => stress[worst].use,
    verdict: ({ stress, worst }) => verdictOfUse(stress[worst].use, `its strength: ${CASE_WORDS[worst]}`),
  },
  {
    key: 'holds',
    label: 'Stop that the bond takes, in g',
    quantity: 'ratio',
    digits: 2,
    headline: true,
    meaning: 'Deceleration at which the motor’s own mass tips or pulls the plate off.',
    value: ({ holds }) => holds,
  },
  use('stopUse', 'stop', 'Sideways stop', 'The motor’s mass tips the plate: peel, the weak direction.'),
  use('pullUse', 'pull', 'Straight off', 'The same stop, pulling the plate off evenly.'),
  use('strikeUse', 'strike', 'Blade strike', 'Twists the plate on the tube and tips it.'),
  use('flightUse', 'flight', 'Full throttle', 'Thrust, reaction torque and a chipped blade, millions of times over.'),
  {
    key: 'tippedAcross',
    label: 'Pull across the glue, tipped sideways',
    symbol: '\\sigma',
    quantity: 'stress',
    group: 'Stress',
    meaning: 'In the stop, plate rocking over the tube. Highest a little beside the middle.',
    value: ({ stress }) => stress.stop.tension.across,
  },
  {
    key: 'tippedAlong',
    label: 'Pull across the glue, tipped lengthwise',
    symbol: '\\sigma',
    quantity: 'stress',
    group: 'Stress',
    meaning: 'In the stop, at the end of the bond. Falls with the square of its length.',
    value: ({ stress }) => stress.stop.tension.along,
  },
  {
    key: 'strikeShear',
    label: 'Shear in a blade strike',
    symbol: '\\tau',
    quantity: 'stress',
    group: 'Stress',
    meaning: 'At the ends of the bond, which are farthest from the motor’s axis.',
    value: ({ stress }) => stress.strike.peakShear,
  },
  {
    key: 'meanShear',
    label: 'Mean shear in the stop',
    quantity: 'stress',
    group: 'Stress',
    meaning: 'What a yielding glue would share out. Small, beside the pull.',
    value: ({ stress }) => stress.stop.meanShear,
  },
  {
    key: 'bondWidth',
    label: 'Width of the bond',
    symbol: 'b',
    quantity: 'length',
    group: 'Bond',
    meaning: 'Across the tube, as far as glue fills the gap from tube to plate.',
    value: ({ bond }) => bond.width,
  },
  {
    key: 'workingWidth',
    label: 'Width that works',
    symbol: 'b_w',
    quantity: 'length',
    group: 'Bond',
    meaning: 'Of a glue line as thin all over and as stiff: the thick edges of the wedge hardly load up.',
    value: ({ bond }) => bond.workingWidth,
  },
  {
    key: 'bondArea',
    label: 'Bonded area',
    symbol: 'A',
    quantity: 'area',
    group: 'Bond',
    meaning: 'Width times length.',
    value: ({ area }) => area,
  },
  {
    key: 'edgeGap',
    label: 'Gap at its edge',
    quantity: 'length',
    group: 'Bond',
    meaning: 'Thickness of the glue where the bond ends.',
    value: ({ bond }) => bond.edgeGap,
  },
  {
    key: 'glueMass',
    label: 'Glue of one mount',
    quantity: 'mass',
    group: 'Bond',
    meaning: 'Cured, fillets included, at the density of epoxy paste.',
    value: ({ glueMass }) => glueMass,
  },
];

export const steps: readonly Step<BondValues, BondResult>[] = [
  {
    id: 'fill',
    says: 'The gap reaches the fill limit at this distance from the middle, R being the tube’s radius',
    formula: 'x_g = \\sqrt{(g_{max}-h)\\,(2R-g_{max}+h)}',
    numbers:
      'x_g = \\sqrt{(\\slot{limit}-\\slot{line})(\\slot{diameter}-\\slot{limit2}+\\slot{line2})} = \\slot{reach}',
    slots: (v, { bond }) => ({
      limit: { value: v.fillLimit, quantity: 'length' },
      limit2: { value: v.fillLimit, quantity: 'length' },
      line: { value: v.bondLine, quantity: 'length' },
      line2: { value: v.bondLine, quantity: 'length' },
      diameter: { value: v.outerDiameter, quantity: 'length' },
      reach: { value: bond.fillReach, quantity: 'length' },
    }),
  },
  {
    id: 'fillet',
    says: 'The hollow of the fillet lies at',
    formula: 'x_f = \\sqrt{(2R+h)(2r-h)}-r',
    numbers:
      'x_f = \\sqrt{(\\slot{diameter}+\\slot{line})(2\\cdot\\slot{fillet}-\\slot{line2})}-\\slot{fillet2} = \\slot{reach}',
    slots: (v, { bond }) => ({
      fillet: { value: v.filletRadius, quantity: 'length' },
      fillet2: { value: v.filletRadius, quantity: 'length' },
      diameter: { value: v.outerDiameter, quantity: 'length' },
      line: { value: v.bondLine, quantity: 'length' },
      line2: { value: v.bondLine, quantity: 'length' },
      reach: { value: bond.filletReach, quantity: 'length' },
    }),
  },
  {
    id: 'moment',
    says: 'In the stop the motor pushes sideways and tips the plate about the glue',
    formula: 'M = m\\,a\\,(h_m + t_p)',
    numbers: 'M = \\slot{force}\\cdot(\\slot{height}+\\slot{plate}) = \\slot{moment}',
    slots: (v, { loads }) => ({
      force: { value: loads.stop.shear, quantity: 'force' },
      height: { value: v.centreHeight, quantity: 'length' },
      plate: { value: v.plateThickness, quantity: 'length' },
      moment: { value: loads.stop.tipping, quantity: 'moment' },
    }),
  },
  {
    id: 'along',
    says: 'Tipped lengthwise, the end of the bond is pulled by',
    formula: '\\sigma = \\frac{6M}{L^2\\,b_w}',
    numbers:
      '\\sigma = \\frac{6\\cdot\\slot{moment}}{\\left(\\slot{length}\\right)^2\\cdot\\slot{width}} = \\slot{stress}',
    slots: (v, { loads, bond, stress }) => ({
      moment: { value: loads.stop.tipping, quantity: 'moment' },
      length: { value: v.bondLength, quantity: 'length' },
      width: { value: bond.workingWidth, quantity: 'length' },
      stress: { value: stress.stop.tension.along, quantity: 'stress' },
    }),
  },
];
