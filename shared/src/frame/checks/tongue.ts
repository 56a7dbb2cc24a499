import { twoScrewRoot } from '../../joint/index.ts';
import { tongue } from '../../plate/index.ts';
import type { Plane } from '../../section/index.ts';
import type { Use } from '../check.ts';
import type { FrameRecord } from '../record.ts';

/** Stress in the plates' tongue that carries the outer arm screw, per newton across the arm at the motor. */
export function tongueUse(record: FrameRecord, plane: Plane, armHeight: number): Use {
  const { arm, body, materials } = record;
  const { youngsModulus, shearModulus, bendingStrength } = materials.plate;
  const { screwSpacing } = arm.root;
  const { outer, inner } = twoScrewRoot({ tipForce: 1, armLength: arm.length, screwSpacing });
  // An inner screw behind the edge of the body presses on that and not on the tongue.
  const innerAt = body.tongueLength - screwSpacing;
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
    loads: [{ at: body.tongueLength, force: outer }, ...(innerAt > 0 ? [{ at: innerAt, force: -inner }] : [])],
  });
  return {
    mode: 'tongue',
    quantity: 'stress',
    perForce: Math.max(...plates.map(({ rootStress }) => rootStress)),
    allowable: bendingStrength,
  };
}
