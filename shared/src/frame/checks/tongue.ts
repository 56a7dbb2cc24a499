import { twoScrewRoot } from '../../joint/index.ts';
import { tongue } from '../../plate/index.ts';
import type { Plane } from '../../section/index.ts';
import type { Use } from '../check.ts';
import type { FrameRecord } from '../record.ts';

/** Stress in the plates' tongue at the outer arm screw, per newton across the arm at the motor. */
export function tongueUse(record: FrameRecord, plane: Plane, armHeight: number): Use {
  const { arm, body, materials } = record;
  const { youngsModulus, shearModulus, bendingStrength } = materials.plate;
  const { outer } = twoScrewRoot({ tipForce: 1, armLength: arm.length, screwSpacing: arm.root.screwSpacing });
  const sheet = ({ thickness }: { thickness: number }) => ({ thickness, youngsModulus: youngsModulus.typical });
  const { plates } = tongue({
    length: body.tongueLength,
    width: body.tongueWidth,
    bottom: sheet(body.crossPlate),
    top: sheet(body.mainPlate),
    gap: armHeight,
    shearModulus: shearModulus.typical,
    link: 'tied',
    plane,
    loads: [{ at: body.tongueLength, force: outer }],
  });
  return {
    mode: 'tongue',
    quantity: 'stress',
    perForce: Math.max(...plates.map(({ rootStress }) => rootStress)),
    allowable: bendingStrength,
  };
}
