import type { HeadStiffness } from './head-stiffness.ts';

/** A standoff's head stiffness at its place in the plan. */
export interface PlacedHead extends HeadStiffness {
  x: number;
  y: number;
}

/**
 * Stiffness of a rigid plate on standoffs against its six movements: three shifts, then turns about x, y, z.
 * $$K = \sum_i B_i^T k_i B_i$$
 * @param heads - head stiffness of each standoff and its place from the point of reference
 * @returns symmetric six by six
 * @validity as plateOnColumns
 * @derivation the head of a standoff at (x, y) moves by (u - yθ_z, v + xθ_z, w + yθ_x - xθ_y) and tilts by θ_y forward
 * and -θ_x to the left; each product below is one pair of those movements times the stiffness that couples them
 */
export function plateStiffness(heads: readonly PlacedHead[]): readonly (readonly number[])[] {
  const total = {
    sway: 0,
    swayX: 0,
    swayY: 0,
    swayPolar: 0,
    coupling: 0,
    couplingX: 0,
    couplingY: 0,
    tilt: 0,
    axial: 0,
    axialX: 0,
    axialY: 0,
    axialXX: 0,
    axialYY: 0,
    axialXY: 0,
  };
  for (const { x, y, sway, coupling, tilt, axial } of heads) {
    total.sway += sway;
    total.swayX += sway * x;
    total.swayY += sway * y;
    total.swayPolar += sway * (x ** 2 + y ** 2);
    total.coupling += coupling;
    total.couplingX += coupling * x;
    total.couplingY += coupling * y;
    total.tilt += tilt;
    total.axial += axial;
    total.axialX += axial * x;
    total.axialY += axial * y;
    total.axialXX += axial * x ** 2;
    total.axialYY += axial * y ** 2;
    total.axialXY += axial * x * y;
  }
  const t = total;
  return [
    [t.sway, 0, 0, 0, t.coupling, -t.swayY],
    [0, t.sway, 0, -t.coupling, 0, t.swayX],
    [0, 0, t.axial, t.axialY, -t.axialX, 0],
    [0, -t.coupling, t.axialY, t.tilt + t.axialYY, -t.axialXY, -t.couplingX],
    [t.coupling, 0, -t.axialX, -t.axialXY, t.tilt + t.axialXX, -t.couplingY],
    [-t.swayY, t.swayX, 0, -t.couplingX, -t.couplingY, t.swayPolar],
  ];
}
