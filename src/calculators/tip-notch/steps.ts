import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import type { NotchResult } from './compute.ts';
import type { NotchValues } from './inputs.ts';

const length = slotOf('length');
const inertia = slotOf('secondMomentOfArea');
const moment = slotOf('moment');

export const steps: readonly Step<NotchValues, NotchResult>[] = [
  {
    id: 'stand',
    says: 'What is left of the slot past the wires',
    formula: 's = (a + p) - e_w',
    numbers: 's = (\\slot{reach}+\\slot{past})-\\slot{bundle} = \\slot{stand}',
    slots: (v, { wires }) => ({
      reach: length(v.slotReach),
      past: length(v.tubePast),
      bundle: length(wires.bundle),
      stand: length(wires.standPast),
    }),
  },
  {
    id: 'needed',
    says: 'What a scrape at the shallowest angle needs',
    formula: 's_{min} = w + \\frac{\\max(0,\\,q)}{\\tan\\theta}',
    numbers: 's_{min} = \\slot{wear} + \\frac{\\max(0,\\,\\slot{proud})}{\\tan\\slot{angle}} = \\slot{needed}',
    slots: (v, { wires }) => ({
      wear: length(v.wear),
      proud: length(v.proud),
      angle: { value: v.scrapeAngle, quantity: 'angle' },
      needed: length(wires.needed),
    }),
  },
  {
    id: 'moment',
    says: 'Moment sideways at the inner end of the slot; none where that lies outside of the motor axis',
    formula: 'M_h = F_h\\,a + T_r',
    numbers: 'M_h = \\slot{force}\\cdot\\slot{reach}+\\slot{reaction} \\Rightarrow \\slot{moment}',
    slots: (v, { slot }) => ({
      force: { value: v.horizontalForce, quantity: 'force' },
      reach: length(v.slotReach),
      reaction: moment(v.reactionTorque),
      moment: moment(slot.moment.horizontal),
    }),
  },
  {
    id: 'open',
    says: 'Torsion constant of the open tube: its wall is a rolled-up strip',
    formula: 'J = \\tfrac13\\,s_w\\,t^3',
    numbers: 'J = \\tfrac13\\cdot\\slot{round}\\cdot(\\slot{wall})^3 = \\slot{j}',
    slots: (v, { slot }) => ({
      round: length((3 * slot.section.torsionConstant) / v.wall ** 3),
      wall: length(v.wall),
      j: inertia(slot.section.torsionConstant),
    }),
  },
  {
    id: 'torque',
    says: 'Torque about the shear centre; F acts across the slot',
    formula: 'T = F_h\\,z + F\\,e',
    numbers: 'T = \\slot{force}\\cdot\\slot{height}+\\slot{across}\\cdot\\slot{e} = \\slot{torque}',
    slots: (v, { slot }) => ({
      force: { value: v.horizontalForce, quantity: 'force' },
      height: length(v.strikeHeight),
      across: { value: v.slotFaces === 'vertical' ? v.horizontalForce : v.verticalForce, quantity: 'force' },
      e: length(slot.shearCentre),
      torque: moment(slot.torque),
    }),
  },
];
