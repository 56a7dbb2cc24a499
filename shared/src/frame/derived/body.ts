import { STANDOFF_METALS } from '../../material/index.ts';
import { boardSide, electronicsGap } from '../arrangement.ts';
import { frameBalance, frameCraft } from '../balance.ts';
import { nosePoint } from '../checks/nose.ts';
import { totalOf } from '../parts.ts';
import { framePlan } from '../plan.ts';
import { always, type DerivedFields } from './derived-field.ts';

export const BODY: DerivedFields = {
  'body.mass': {
    get: (record) => totalOf(frameBalance(record).parts, ['plates', 'standoffs', 'electronics', 'hardware']).mass,
  },
  'body.forward': {
    get: (record) => {
      const { plan, parts } = frameBalance(record);
      return frameCraft(record, plan, parts).craft.bodyForward;
    },
  },
  'body.height': {
    get: (record) => {
      const { top, underside } = framePlan(record);
      return top - underside;
    },
  },
  // The plates narrow from the waist to both ends.
  'body.taperLength': { get: ({ body }) => body.length / 2 },
  'body.depth': { get: (record) => -framePlan(record).underside },
  'body.gap': { get: (record) => Math.max(electronicsGap(record), 0) },
  'body.boardSide': { get: boardSide },
  'body.tongueLink': always('tied'),
  'body.plateMaterial': always('own'),
  'body.standoff.ends': always('plates'),
  'body.standoff.end': always('plate'),
  'body.standoff.shearStrength': {
    get: ({ body }) => STANDOFF_METALS[body.standoff.material].metal.shearStrength.typical,
  },
  'cases.nose.forward': { get: (record) => nosePoint(record).x },
  'cases.nose.by': always('speed'),
};
