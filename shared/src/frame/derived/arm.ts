import { COARSE_THREADS } from '../../joint/index.ts';
import { armMaterial, pastMotor, sleeveOf, sleeveReach } from '../arm.ts';
import { frameBalance } from '../balance.ts';
import { holeShare } from '../checks/arm-tube.ts';
import { withValue } from '../paths.ts';
import { totalOf } from '../parts.ts';
import { framePlan } from '../plan.ts';
import type { FrameRecord } from '../record.ts';
import { always, isTube, withTypical, type DerivedField, type DerivedFields } from './derived-field.ts';

type Shared = 'density' | 'youngsModulus' | 'shearModulus' | 'bendingStrength' | 'shearStrength' | 'bearingStrength';

/** Of the material that the arm is of. */
const ofArm = (name: Shared): DerivedField => ({
  get: (record) => armMaterial(record)[name].typical,
  set: (record, value) => withTypical(record, `materials.${isTube(record) ? 'tube' : 'plate'}.${name}`, value),
});

/** Of the sleeve, which is a piece of the tube's stock. */
const ofSleeve = (name: 'density' | 'youngsModulus' | 'shearModulus' | 'bendingStrength'): DerivedField => ({
  get: (record) => (isTube(record) ? record.materials.tube[name].typical : undefined),
});

const partMass = (record: FrameRecord, names: readonly string[]): number =>
  totalOf(frameBalance(record).parts.filter(({ name }) => names.includes(name))).mass / 4;

export const ARM: DerivedFields = {
  'arm.material': always('own'),
  'arm.tube.material': always('own'),
  'arm.strip.material': always('own'),
  'arm.root.held': always('springs'),
  'arm.youngsModulus': ofArm('youngsModulus'),
  'arm.shearModulus': ofArm('shearModulus'),
  'arm.density': ofArm('density'),
  'arm.bendingStrength': ofArm('bendingStrength'),
  'arm.shearStrength': ofArm('shearStrength'),
  'arm.height': { get: (record) => framePlan(record).armHeight },
  'arm.pastMotor': { get: pastMotor },
  'arm.behind': { get: ({ arm: { root } }) => root.screwSpacing + root.endDistance },
  'arm.mass': { get: (record) => totalOf(frameBalance(record).parts, ['arms']).mass / 4 },
  'arm.tube.inside': {
    get: ({ arm: { tube } }) => tube.outerDiameter - 2 * tube.wall,
    set: (record, value) => withValue(record, 'arm.tube.wall', (record.arm.tube.outerDiameter - value) / 2),
  },
  'arm.sleeve.outside': {
    get: (record) => sleeveOf(record).outside,
    set: (record, value) => {
      const { outerDiameter, wall } = record.arm.tube;
      return withValue(record, 'arm.sleeve.bondLine', (outerDiameter - 2 * wall - value) / 2);
    },
  },
  'arm.sleeve.reach': {
    get: sleeveReach,
    set: (record, value) => {
      const { endDistance, screwSpacing } = record.arm.root;
      return withValue(record, 'arm.sleeve.length', endDistance + screwSpacing + value);
    },
  },
  'arm.sleeve.density': ofSleeve('density'),
  'arm.sleeve.youngsModulus': ofSleeve('youngsModulus'),
  'arm.sleeve.shearModulus': ofSleeve('shearModulus'),
  'arm.sleeve.bendingStrength': ofSleeve('bendingStrength'),
  // A strip of one width all along.
  'arm.strip.tipWidth': { get: ({ arm }) => arm.strip.width },
  'arm.root.clearance': {
    get: ({ arm: { root } }) => root.holeDiameter - COARSE_THREADS[root.thread].diameter,
    set: (record, value) =>
      withValue(record, 'arm.root.holeDiameter', COARSE_THREADS[record.arm.root.thread].diameter + value),
  },
  'arm.root.holeShare': { get: holeShare },
  'mount.mass': { get: (record) => partMass(record, ['Motor plate', 'Tow wrap']) },
};
