import { discStrip } from './drilled-tube.ts';
import { openTubeTorsion, requireSlot } from './open-tube.ts';
import { roundTubeSection, type RoundTube } from './round-tube.ts';
import type { BendingPlane, Plane, Section } from './section.ts';

export interface SlottedTube extends RoundTube {
  /** Of the slot, or the diameter of a hole through one wall [m]. */
  slotWidth: number;
  /** Where the slot faces: `vertical` for the top or the bottom, `horizontal` for a side. */
  slotFaces: Plane;
}

/**
 * Round tube with a slot of parallel sides through one wall: an open section. The same cut across the centre of a hole
 * through one wall, where the torsion constant does not apply.
 * $$I_{along} = I - I_{cut} - \frac{Q^2}{A-A_{cut}},\quad Q = (r_o^2-r_i^2)\tfrac b2,\quad J = \tfrac23\alpha r t^3$$
 * @param tube - tube, width of the slot [m], the side it faces
 * @returns open section about its own centroid, with the distance of that from the tube's axis, away from the slot [m]
 * @validity slot narrower than the bore; torsion free to warp, thin wall
 * @throws InputError when the sizes do not make a tube or the slot is as wide as the bore
 * @derivation the cut is half of what drilledTubeSection takes away, on one side. Its first moment about the tube's axis
 * is ∫½[(r_o²-x²)-(r_i²-x²)]dx over the width b; the rest turns about its own centroid by the parallel-axis theorem
 */
export function slottedTubeSection(tube: SlottedTube): Section & { centroidOffset: number } {
  requireSlot(tube);
  const whole = roundTubeSection(tube);
  const outer = tube.outerDiameter / 2;
  const inner = outer - tube.wall;
  const half = tube.slotWidth / 2;
  const [outside, inside] = [discStrip(outer, half), discStrip(inner, half)];
  const gross = whole.vertical.secondMomentOfArea;
  const area = whole.area - (outside.area - inside.area) / 2;
  const firstMoment = tube.wall * (outer + inner) * half;
  const centroidOffset = firstMoment / area;
  const along: BendingPlane = {
    secondMomentOfArea: gross - (outside.alongStrip - inside.alongStrip) / 2 - firstMoment * centroidOffset,
    extremeFibre: Math.max(Math.sqrt(outer ** 2 - half ** 2) + centroidOffset, outer - centroidOffset),
  };
  const across: BendingPlane = {
    secondMomentOfArea: gross - (outside.acrossStrip - inside.acrossStrip) / 2,
    extremeFibre: outer,
  };
  return {
    area,
    vertical: tube.slotFaces === 'vertical' ? along : across,
    horizontal: tube.slotFaces === 'vertical' ? across : along,
    torsionConstant: openTubeTorsion(tube).torsionConstant,
    shearCoefficient: whole.shearCoefficient,
    centroidOffset,
  };
}
