import { equivalentElasticShear } from '../../bond/index.ts';
import { tubeDoubler, type TubeDoublerGiven } from '../../doubler/index.ts';
import {
  CHARACTERISTIC_LENGTHS,
  COARSE_THREADS,
  notchedStrengthRatio,
  PROPERTY_CLASSES,
  screwStrength,
  screwUse,
  tubeRoot,
  type TubeRootResult,
} from '../../joint/index.ts';
import { armSection, hasSleeve, sleeveOf, sleeveReach } from '../arm.ts';
import { exactly, scaled, type Use } from '../check.ts';
import type { FrameRecord } from '../record.ts';

/** Plastic over elastic strain of an ordinary epoxy paste; common practice. */
export const PLASTIC_RATIO = 5;
/** Stress factor just past a square sleeve end; a stated input without source. */
export const SQUARE_END = 1.25;

/** Strength kept beside a root hole of the record. */
export const holeShare = ({ arm }: FrameRecord): number =>
  notchedStrengthRatio({
    holeDiameter: arm.root.holeDiameter,
    characteristicLength: CHARACTERISTIC_LENGTHS.point,
  });

/** The record's sleeve as `tubeDoubler` takes it, for a force at the motor. */
export function doublerGiven(
  record: FrameRecord,
  plane: 'vertical' | 'horizontal',
  tipForce: number,
): TubeDoublerGiven {
  const { arm, materials } = record;
  const { outside, wall } = sleeveOf(record);
  const { youngsModulus, bendingStrength, density } = materials.tube;
  return {
    plane,
    tipForce,
    tubeOutside: arm.tube.outerDiameter,
    tubeInside: arm.tube.outerDiameter - 2 * arm.tube.wall,
    armLength: arm.length,
    screwSpacing: arm.root.screwSpacing,
    edgeDistance: arm.root.endDistance,
    holeDiameter: arm.root.holeDiameter,
    sleeveOutside: outside,
    sleeveWall: wall,
    length: arm.sleeve.length,
    taper: arm.sleeve.taper,
    tubeModulus: youngsModulus.typical,
    sleeveModulus: youngsModulus.typical,
    tubeStrength: bendingStrength.typical,
    sleeveStrength: bendingStrength.typical,
    sleeveDensity: density.typical,
    holeShare: holeShare(record),
    squareEndFactor: SQUARE_END,
    shearModulus: materials.adhesive.shearModulus.typical,
  };
}

/** Both screws and both planes of the tube's root, for forces at the motor. */
export function rootOf(record: FrameRecord, horizontalForce: number, verticalForce: number): TubeRootResult {
  const { arm, materials } = record;
  const { bearingStrength, shearStrength, bendingStrength } = materials.tube;
  return tubeRoot({
    tube: arm.tube,
    sleeveWall: hasSleeve(record) ? arm.sleeve.wall : 0,
    holeDiameter: arm.root.holeDiameter,
    screwDiameter: COARSE_THREADS[arm.root.thread].diameter,
    armLength: arm.length,
    screwSpacing: arm.root.screwSpacing,
    endDistance: arm.root.endDistance,
    horizontalForce,
    verticalForce,
    strengths: {
      bearing: bearingStrength.typical,
      shear: shearStrength.typical,
      bending: bendingStrength.typical,
      characteristicLength: CHARACTERISTIC_LENGTHS.point,
    },
  });
}

/** Share of the outer arm screw's strength per newton. */
export function screwPerForce(record: FrameRecord, { shear, tension }: { shear: number; tension: number }): Use {
  const { thread, grade } = record.arm.root;
  const strength = screwStrength(COARSE_THREADS[thread], PROPERTY_CLASSES[grade]);
  return {
    mode: 'arm-screw',
    quantity: 'percent',
    perForce: screwUse({ shear, tension, shearPlanes: 2 }, strength),
    allowable: exactly(1),
  };
}

/** Uses of a tube arm per newton across it at the motor, in one plane. */
export function tubeUses(record: FrameRecord, plane: 'vertical' | 'horizontal'): Use[] {
  const { arm, materials } = record;
  const { bearingStrength, shearStrength, bendingStrength } = materials.tube;
  const upright = plane === 'vertical';
  const root = rootOf(record, upright ? 0 : 1, upright ? 1 : 0);
  const net = root.uses.find(({ hole, mode }) => hole === 'outer' && mode === `net-section-${plane}`)!;
  const notched = net.strength / bendingStrength.typical;
  const uses: Use[] = [
    { mode: 'outer-hole', quantity: 'stress', perForce: net.stress, allowable: scaled(bendingStrength, notched) },
    screwPerForce(
      record,
      upright ? { shear: 0, tension: root.vertical.outer } : { shear: root.horizontal.outer, tension: 0 },
    ),
  ];
  if (!upright) {
    for (const { hole, mode, stress } of root.uses) {
      if (mode !== 'bearing' && mode !== 'tear-out') continue;
      const allowable = mode === 'bearing' ? bearingStrength : shearStrength;
      uses.push({ mode: `${mode}-${hole}`, quantity: 'stress', perForce: stress, allowable });
    }
  }
  const { secondMomentOfArea, extremeFibre } = armSection(record)[plane];
  const doubled = hasSleeve(record);
  const from = doubled ? Math.max(0, sleeveReach(record)) : 0;
  uses.push({
    mode: 'bare-arm',
    quantity: 'stress',
    perForce: ((arm.length - from) * extremeFibre) / secondMomentOfArea,
    allowable: bendingStrength,
  });
  return doubled ? [...uses, ...sleeveUses(record, plane)] : uses;
}

function sleeveUses(record: FrameRecord, plane: 'vertical' | 'horizontal'): Use[] {
  const { bendingStrength } = record.materials.tube;
  const doubler = tubeDoubler(doublerGiven(record, plane, 1));
  const breaks = (yieldShear: number) => equivalentElasticShear({ yieldShear, plasticRatio: PLASTIC_RATIO });
  const { low, typical, high } = record.materials.adhesive.lapShearStrength;
  return [
    {
      mode: 'sleeve-end',
      quantity: 'stress',
      perForce: bendingStrength.typical / doubler.reserve,
      allowable: bendingStrength,
    },
    {
      mode: 'bond-peak',
      quantity: 'stress',
      perForce: doubler.bondPeak,
      allowable: { low: breaks(low), typical: breaks(typical), high: breaks(high) },
    },
  ];
}
