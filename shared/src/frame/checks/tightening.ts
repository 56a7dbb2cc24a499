import { clampLimit, COARSE_THREADS, preloadFromTorque, USUAL_TORQUE_COEFFICIENT } from '../../joint/index.ts';
import { hasSleeve } from '../arm.ts';
import { marginOf, type Check } from '../check.ts';
import type { FrameRecord } from '../record.ts';

/** Crush of the tube by its own screws. */
export function tighteningChecks(record: FrameRecord): Check[] {
  const { arm, materials } = record;
  if (arm.kind !== 'tube') return [];
  const { torque, clampLength, thread } = arm.root;
  const { hoopBendingStrength } = materials.tube;
  const clamp = {
    outerDiameter: arm.tube.outerDiameter,
    wall: arm.tube.wall + (hasSleeve(record) ? arm.sleeve.wall : 0),
    clampLength,
    hoopBendingStrength: hoopBendingStrength.typical,
    torqueCoefficient: USUAL_TORQUE_COEFFICIENT,
    screwDiameter: COARSE_THREADS[thread].diameter,
  };
  const { force } = clampLimit(clamp);
  const preload = preloadFromTorque({
    torque,
    torqueCoefficient: USUAL_TORQUE_COEFFICIENT,
    diameter: clamp.screwDiameter,
  });
  const { low, typical, high } = hoopBendingStrength;
  const at = (strength: number) => (force * strength) / typical;
  return [
    {
      case: 'tightening',
      mode: 'tube-crush',
      quantity: 'force',
      applied: preload.high,
      allowable: force,
      margin: marginOf(preload.high, { low: at(low), typical: force, high: at(high) }),
    },
  ];
}
