import { requireBelow, requirePositive } from '../require.ts';
import { requireTube, roundTubeSection, type RoundTube } from './round-tube.ts';
import type { BendingPlane, Plane, Section } from './section.ts';

export interface DrilledTube extends RoundTube {
  /** Diameter of the hole, through both walls [m]. */
  holeDiameter: number;
  /** Direction of the hole's axis: a screw through both plates of the body is vertical. */
  holeAxis: Plane;
}

/** Area and second moments of a disc cut to the strip |x| < half, y along the strip. */
export function discStrip(radius: number, half: number): { area: number; alongStrip: number; acrossStrip: number } {
  const a = Math.min(half, radius);
  const y = Math.sqrt(radius ** 2 - a ** 2);
  const angle = Math.asin(a / radius);
  return {
    area: 2 * (a * y + radius ** 2 * angle),
    alongStrip: (a * y * (5 * radius ** 2 - 2 * a ** 2) + 3 * radius ** 4 * angle) / 6,
    acrossStrip: (radius ** 4 * angle - a * y * (radius ** 2 - 2 * a ** 2)) / 2,
  };
}

/**
 * Round tube at the centre of a hole through both walls: the two wall arcs that the drill takes, exactly. They cost
 * most for bending in the plane of the hole's axis, where they stand at the extreme fibre, and almost nothing across.
 * $$I_{net} = I - \int_{-d/2}^{d/2}\tfrac23\bigl[(r_o^2-x^2)^{3/2}-(r_i^2-x^2)^{3/2}\bigr]dx$$
 * @param tube - tube, hole diameter [m], axis of the hole
 * @returns net section. The torsion constant is scaled with the net polar second moment, an estimate: the torque only
 * has to flow round a short hole
 * @validity hole through the axis of the tube, narrower than the tube
 * @throws InputError when the sizes do not make a tube or the hole is as wide as the tube
 * @derivation the removed part is the annulus over |x| < d/2; a disc of radius r over the same strip has
 * area 2∫√(r²-x²)dx, ∫y²dA = ∫⅔(r²-x²)^{3/2}dx and ∫x²dA = ∫2x²√(r²-x²)dx, each in closed form with the
 * angle asin(d/2r); outer disc minus inner disc is the annulus
 */
export function drilledTubeSection(tube: DrilledTube): Section {
  requireTube(tube);
  const subject = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requirePositive(tube.holeDiameter, subject);
  requireBelow(tube.holeDiameter, tube.outerDiameter, 'must be smaller than the tube', subject);
  const whole = roundTubeSection(tube);
  const outer = tube.outerDiameter / 2;
  const half = tube.holeDiameter / 2;
  const outerStrip = discStrip(outer, half);
  const innerStrip = discStrip(outer - tube.wall, half);
  const gross = whole.vertical.secondMomentOfArea;
  // Rounding may leave a hair below nothing where the hole takes almost the whole tube.
  const left = (all: number, removed: number): number => Math.max(all - removed, all * 1e-12);
  const along: BendingPlane = {
    secondMomentOfArea: left(gross, outerStrip.alongStrip - innerStrip.alongStrip),
    extremeFibre: Math.sqrt(outer ** 2 - half ** 2),
  };
  const across: BendingPlane = {
    secondMomentOfArea: left(gross, outerStrip.acrossStrip - innerStrip.acrossStrip),
    extremeFibre: outer,
  };
  const polar = along.secondMomentOfArea + across.secondMomentOfArea;
  return {
    area: left(whole.area, outerStrip.area - innerStrip.area),
    vertical: tube.holeAxis === 'vertical' ? along : across,
    horizontal: tube.holeAxis === 'vertical' ? across : along,
    torsionConstant: (whole.torsionConstant * polar) / (2 * gross),
    shearCoefficient: whole.shearCoefficient,
  };
}
