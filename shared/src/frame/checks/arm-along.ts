import { bearingStress, COARSE_THREADS } from '../../joint/index.ts';
import { armMaterial, armSection, hasSleeve } from '../arm.ts';
import type { Use } from '../check.ts';
import type { FrameRecord } from '../record.ts';
import { screwPerForce } from './arm-tube.ts';

/** Uses of an arm per newton along it, at the height of the blow above its axis. Both screws share the push. */
export function alongUses(record: FrameRecord): Use[] {
  const { arm, cases } = record;
  const { bendingStrength, bearingStrength } = armMaterial(record);
  const { vertical, area } = armSection(record);
  const walls =
    arm.kind === 'tube' ? 2 * (arm.tube.wall + (hasSleeve(record) ? arm.sleeve.wall : 0)) : arm.strip.thickness;
  const { diameter } = COARSE_THREADS[arm.root.thread];
  const bearing = bearingStress({ force: 0.5, diameter, thickness: walls });
  return [
    {
      mode: 'bare-arm',
      quantity: 'stress',
      perForce: 1 / area + (Math.abs(cases.strike.height) * vertical.extremeFibre) / vertical.secondMomentOfArea,
      allowable: bendingStrength,
    },
    { mode: 'bearing-outer', quantity: 'stress', perForce: bearing, allowable: bearingStrength },
    { mode: 'bearing-inner', quantity: 'stress', perForce: bearing, allowable: bearingStrength },
    screwPerForce(record, { shear: 0.5, tension: 0 }),
  ];
}
