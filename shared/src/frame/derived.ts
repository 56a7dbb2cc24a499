import { COARSE_THREADS } from '../joint/index.ts';
import { PATTERNS, patternPositions, type PatternName } from '../standoff/index.ts';
import { boardSide, currentArrangement, electronicsGap } from './arrangement.ts';
import { armMaterial, sleeveOf } from './arm.ts';
import { frameBalance } from './balance.ts';
import { holeShare } from './checks/arm-tube.ts';
import { motorRise } from './checks/running.ts';
import { strikesOf } from './hits.ts';
import { withValue } from './paths.ts';
import { framePlan } from './plan.ts';
import { totalOf } from './parts.ts';
import type { FrameRecord } from './record.ts';

/** A value that calculators ask for and the record does not hold as such. */
export interface DerivedField {
  get: (record: FrameRecord) => number | string | undefined;
  /** The record in which it is so; absent where it follows from too much else. */
  set?: (record: FrameRecord, value: number) => FrameRecord;
}

const wheelbase = (record: FrameRecord) => framePlan(record).layout.wheelbase;

const extentOf = (record: FrameRecord) => {
  const { standoffs } = currentArrangement(record);
  const xs = standoffs.map(({ x }) => x);
  return {
    foreAft: Math.max(...xs) - Math.min(...xs),
    across: 2 * Math.max(...standoffs.map(({ y }) => Math.abs(y))),
    middle: (Math.max(...xs) + Math.min(...xs)) / 2,
  };
};

const NEAR = 1e-4;

/** The usual layout that the standoffs stand in, or none. */
function patternOf(record: FrameRecord): PatternName | undefined {
  const { foreAft, across, middle } = extentOf(record);
  const { standoffs } = currentArrangement(record);
  if (foreAft < NEAR || across < NEAR) return undefined;
  return (Object.keys(PATTERNS) as PatternName[]).find((pattern) => {
    const wide = pattern === 'six-wide' ? across / 1.5 : across;
    const places = patternPositions({ pattern, foreAft, across: wide });
    return (
      places.length === standoffs.length &&
      places.every(({ x, y }) =>
        standoffs.some((one) => Math.abs(one.x - middle - x) < NEAR && Math.abs(one.y - y) < NEAR),
      )
    );
  });
}

/** Standoffs spread or drawn together about their middle. */
function spreadStandoffs(record: FrameRecord, along: number, across: number): FrameRecord {
  const { middle } = extentOf(record);
  const { current, arrangements } = record.electronics;
  const moved = arrangements.map((one) =>
    one.name === current
      ? { ...one, standoffs: one.standoffs.map(({ x, y }) => ({ x: middle + (x - middle) * along, y: y * across })) }
      : one,
  );
  return withValue(record, 'electronics.arrangements', moved);
}

export const DERIVED: Readonly<Record<string, DerivedField>> = {
  'layout.wheelbase': {
    get: wheelbase,
    // All spacings grow in step with the diagonal; the arms keep their roots where they are.
    set: (record, value) => {
      const grown = value / wheelbase(record);
      const spacing = record.propeller.diameter + record.layout.tipGap;
      const tipGap = spacing * grown - record.propeller.diameter;
      const length = record.arm.length + (value - wheelbase(record)) / 2;
      return withValue(withValue(record, 'layout.tipGap', tipGap), 'arm.length', length);
    },
  },
  'layout.armAngle': { get: (record) => framePlan(record).layout.armAngle },
  'layout.rootDistance': {
    get: (record) => framePlan(record).rootDistance,
    set: (record, value) => withValue(record, 'arm.length', wheelbase(record) / 2 - value),
  },
  'arm.material': { get: () => 'own' },
  'arm.tube.inside': {
    get: ({ arm: { kind, tube } }) => (kind === 'tube' ? tube.outerDiameter - 2 * tube.wall : undefined),
    set: (record, value) => withValue(record, 'arm.tube.wall', (record.arm.tube.outerDiameter - value) / 2),
  },
  'arm.sleeve.outside': {
    get: (record) => (record.arm.kind === 'tube' ? sleeveOf(record).outside : undefined),
    set: (record, value) => {
      const { outerDiameter, wall } = record.arm.tube;
      return withValue(record, 'arm.sleeve.bondLine', (outerDiameter - 2 * wall - value) / 2);
    },
  },
  'arm.height': { get: (record) => framePlan(record).armHeight },
  'arm.youngsModulus': { get: (record) => armMaterial(record).youngsModulus.typical },
  'arm.shearModulus': { get: (record) => armMaterial(record).shearModulus.typical },
  'arm.density': { get: (record) => armMaterial(record).density.typical },
  'arm.root.clearance': {
    get: ({ arm: { root } }) => root.holeDiameter - COARSE_THREADS[root.thread].diameter,
    set: (record, value) =>
      withValue(record, 'arm.root.holeDiameter', COARSE_THREADS[record.arm.root.thread].diameter + value),
  },
  'arm.root.holeShare': { get: holeShare },
  'arm.mass': { get: (record) => totalOf(frameBalance(record).parts, ['arms']).mass / 4 },
  'motor.rise': { get: motorRise },
  'body.mass': {
    get: (record) => totalOf(frameBalance(record).parts, ['plates', 'standoffs', 'electronics', 'hardware']).mass,
  },
  'body.height': {
    get: (record) => {
      const { top, underside } = framePlan(record);
      return top - underside;
    },
  },
  'body.depth': { get: (record) => -framePlan(record).underside },
  'body.gap': { get: (record) => Math.max(electronicsGap(record), 0) },
  'body.boardSide': { get: boardSide },
  'body.standoff.pattern': { get: patternOf },
  'body.standoff.foreAft': {
    get: (record) => extentOf(record).foreAft,
    set: (record, value) => spreadStandoffs(record, value / extentOf(record).foreAft, 1),
  },
  'body.standoff.across': {
    get: (record) => extentOf(record).across,
    set: (record, value) => spreadStandoffs(record, 1, value / extentOf(record).across),
  },
  'mass.allUp': { get: (record) => frameBalance(record).allUp },
  'mass.rollInertia': { get: (record) => frameBalance(record).properties.inertia.xx },
  'mass.pitchInertia': { get: (record) => frameBalance(record).properties.inertia.yy },
  'mass.yawInertia': { get: (record) => frameBalance(record).properties.inertia.zz },
  'mass.pitchRadius': {
    get: (record) => {
      const { inertia, mass } = frameBalance(record).properties;
      return Math.sqrt(inertia.yy / mass);
    },
  },
  'mass.centreAboveMainPlate': {
    get: (record) => {
      const { properties, plan } = frameBalance(record);
      return properties.centre.z - plan.deck;
    },
  },
  'loads.strike.horizontal': { get: (record) => strikesOf(record, frameBalance(record)).sideways.peakForce },
  'loads.strike.vertical': { get: (record) => strikesOf(record, frameBalance(record)).vertical.peakForce },
};
