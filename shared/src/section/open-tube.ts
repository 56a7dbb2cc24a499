import { InputError } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { requireTube, type RoundTube } from './round-tube.ts';

/**
 * Saint-Venant torsion constant of an open thin-walled section.
 * $$J = \sum\tfrac13 s_i t_i^3$$
 * @param walls - length along the middle line and thickness of each wall [m]
 * @returns torsion constant [m⁴]
 * @validity walls thin against their length; free warping; the section does not close on itself
 * @throws InputError when there is no wall or a size is not positive
 * @source megson-1999-structures, torsion of open section beams
 */
export function openWallTorsionConstant(walls: readonly { length: number; thickness: number }[]): number {
  if (walls.length === 0)
    throw new InputError({ parameter: 'walls', quantity: 'number of walls', value: 0, rule: 'must be at least one' });
  return walls.reduce((sum, { length, thickness }) => {
    requirePositive(length, { parameter: 'length', quantity: 'length of the wall', kind: 'length' });
    requirePositive(thickness, { parameter: 'thickness', quantity: 'wall thickness', kind: 'length' });
    return sum + (length * thickness ** 3) / 3;
  }, 0);
}

export interface OpenTubeTorsion {
  /** Half the angle that the wall goes round, π for a slit of no width [rad]. */
  halfAngle: number;
  /** Saint-Venant's, free to warp [m⁴]. */
  torsionConstant: number;
  /** Sectorial second moment: what holds where warping is prevented [m⁶]. */
  warpingConstant: number;
  /** Of the shear centre from the tube's axis, away from the slot [m]. */
  shearCentre: number;
  /** Largest sectorial coordinate, at the edges of the slot [m²]. */
  sectorialCoordinate: number;
}

/**
 * Torsion of a thin round tube that is slit along its length: torsion and warping constant, shear centre.
 * $$J = \tfrac23\alpha r t^3,\quad e = 2r\frac{\sin\alpha-\alpha\cos\alpha}{\alpha-\sin\alpha\cos\alpha},\quad
 * \Gamma = \frac{2 t r^5}{3}\Bigl[\alpha^3 - 6\frac{(\sin\alpha-\alpha\cos\alpha)^2}{\alpha-\sin\alpha\cos\alpha}\Bigr]$$
 * @param tube - outside diameter, wall and width of the slot [m]
 * @returns constants of the middle line of radius r, which goes round by 2α
 * @validity wall thin against the radius; slot narrower than the bore
 * @throws InputError when the sizes do not make a tube or the slot is as wide as the bore
 * @source young-2002-roark, Table 10.2, sector of a thin circular tube
 */
export function openTubeTorsion(tube: RoundTube & { slotWidth: number }): OpenTubeTorsion {
  requireSlot(tube);
  const radius = (tube.outerDiameter - tube.wall) / 2;
  const halfAngle = Math.PI - Math.asin(tube.slotWidth / 2 / radius);
  const [sin, cos] = [Math.sin(halfAngle), Math.cos(halfAngle)];
  const first = sin - halfAngle * cos;
  const second = halfAngle - sin * cos;
  const shearCentre = (2 * radius * first) / second;
  return {
    halfAngle,
    torsionConstant: openWallTorsionConstant([{ length: 2 * halfAngle * radius, thickness: tube.wall }]),
    warpingConstant: ((2 * tube.wall * radius ** 5) / 3) * (halfAngle ** 3 - (6 * first ** 2) / second),
    shearCentre,
    sectorialCoordinate: radius ** 2 * halfAngle - shearCentre * radius * sin,
  };
}

/**
 * Refuses a slot that does not leave the sides of the tube standing.
 * @throws InputError when the sizes do not make a tube or the slot is as wide as the bore
 */
export function requireSlot(tube: RoundTube & { slotWidth: number }): void {
  requireTube(tube);
  const subject = { parameter: 'slotWidth', quantity: 'width of the slot', kind: 'length' } as const;
  requirePositive(tube.slotWidth, subject);
  // Walls thinner than this against the diameter, or slots of all the bore, leave no digits.
  requireBetween(tube.wall / tube.outerDiameter, 1e-4, 0.5, { parameter: 'wall', quantity: 'wall over diameter' });
  const bore = tube.outerDiameter - 2 * tube.wall;
  if (tube.slotWidth >= bore)
    throw new InputError({ ...subject, value: tube.slotWidth, rule: 'must be smaller than the bore', limit: bore });
}
