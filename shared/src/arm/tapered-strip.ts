import { variedSegments, type ArmSegment } from '../beam/index.ts';
import { InputError } from '../error.ts';
import { requireBelow, requireBetween, requirePositive } from '../require.ts';
import { roundEndedSection, solidRectangleSection, type BendingPlane, type Section } from '../section/index.ts';

export type StripEdges = 'square' | 'round';

export interface StripSize {
  /** Over the edges, in the plane of the propellers [m]. */
  width: number;
  /** Of the plate [m]. */
  thickness: number;
  /** As cut, or rounded off to half circles. */
  edges: StripEdges;
}

/**
 * Section of a strip of plate with square or round edges.
 * @param strip - width, thickness, edges
 * @returns section
 * @validity as solidRectangleSection and roundEndedSection
 * @throws InputError when a size is not positive, or a strip with round edges is thicker than wide
 * @source gere-2004-mechanics, Appendix D, rectangle; young-2002-roark, Table 10.1 for the torsion of round edges
 */
export function stripSection({ width, thickness, edges }: StripSize): Section {
  requireEdges(edges);
  const size = { width, height: thickness };
  return edges === 'round' ? roundEndedSection(size) : solidRectangleSection(size);
}

export interface TaperedStrip {
  /** From the outer screw to the motor axis [m]. */
  length: number;
  /** At the outer screw [m]. */
  rootWidth: number;
  /** At the motor axis, before any round end [m]. */
  tipWidth: number;
  thickness: number;
  edges: StripEdges;
}

export interface StripMaterial {
  /** Along the arm [Pa]. */
  youngsModulus: number;
  /** [Pa] */
  shearModulus: number;
  /** [kg/m³] */
  density: number;
}

/** Keeps every stiffness of a strip that tapers to a third of its width within a thousandth, to three times within four. */
const SEGMENTS = 24;

/**
 * A strip of plate that tapers evenly from root to tip, as the segments that the beam functions take.
 * $$b(x) = b_r + (b_t-b_r)\,\frac{x}{L}$$
 * @param strip - length, widths, thickness, edges
 * @param material - moduli along the arm and in shear, density
 * @param count - number of segments [-]
 * @returns segments from the outer screw to the motor axis
 * @validity slow taper; the pad under the motor is left out, where there is next to no moment
 * @throws InputError when a size is not positive or a strip with round edges is thicker than wide
 * @derivation variedSegments with the width of each place
 */
export function stripSegments(strip: TaperedStrip, material: StripMaterial, count = SEGMENTS): ArmSegment[] {
  const { length, rootWidth, tipWidth, thickness, edges } = strip;
  requireEdges(edges);
  requirePositive(thickness, { parameter: 'thickness', quantity: 'thickness of the plate', kind: 'length' });
  for (const [parameter, quantity, width] of [
    ['rootWidth', 'width at the root', rootWidth],
    ['tipWidth', 'width at the tip', tipWidth],
  ] as const) {
    const subject = { parameter, quantity, kind: 'length' } as const;
    requirePositive(width, subject);
    if (edges === 'round') requireBetween(width, thickness, 1e15, subject);
  }
  const even = rootWidth === tipWidth ? 1 : count;
  return variedSegments({
    length,
    count: even,
    layersAt: (share) => {
      const section = stripSection({ width: rootWidth + (tipWidth - rootWidth) * share, thickness, edges });
      return [{ section, ...material }];
    },
  });
}

export interface DrilledStrip extends StripSize {
  /** Of the screw hole through the plate, on the centre line [m]. */
  holeDiameter: number;
}

/**
 * Both planes of a strip at the centre of its root screw's hole.
 * $$I_v = I_{v,0}-\frac{d h^3}{12},\quad I_h = I_{h,0}-\frac{h d^3}{12}$$
 * @param strip - width, thickness, edges, hole diameter
 * @returns second moment and extreme fibre in each plane, net of the hole
 * @validity hole on the centre line, clear of round edges
 * @throws InputError when a size is not positive or the hole is too wide for the strip
 * @derivation the hole removes a rectangle d wide and h high about the same centre
 */
export function stripRoot(strip: DrilledStrip): { vertical: BendingPlane; horizontal: BendingPlane } {
  const { vertical, horizontal } = stripSection(strip);
  const { holeDiameter: d, thickness: h } = strip;
  const hole = { parameter: 'holeDiameter', quantity: 'hole diameter', kind: 'length' } as const;
  requirePositive(d, hole);
  const flat = strip.width - (strip.edges === 'round' ? h : 0);
  requireBelow(d, flat, 'must be smaller than the flat width of the strip at the root', hole);
  const less = (plane: BendingPlane, removed: number): BendingPlane => ({
    ...plane,
    secondMomentOfArea: plane.secondMomentOfArea - removed,
  });
  return { vertical: less(vertical, (d * h ** 3) / 12), horizontal: less(horizontal, (h * d ** 3) / 12) };
}

/**
 * What a round end about the motor axis adds to the plan of a strip that stops there.
 * $$A = \pi R^2 - \bigl(a\sqrt{R^2-a^2}+R^2\arcsin\tfrac{a}{R}\bigr),\quad a=\tfrac{b}{2}$$
 * @param end - diameter of the end [m], width of the strip where it stops [m]
 * @returns area in plan [m²]
 * @validity the strip keeps its width under the end; a half disc where both are as wide
 * @throws InputError when a size is not positive or the end is narrower than the strip
 * @derivation disc less what it shares with the strip: half of the disc cut to |y| < a
 */
export function roundEndArea({ diameter, width }: { diameter: number; width: number }): number {
  requirePositive(width, { parameter: 'tipWidth', quantity: 'width at the tip', kind: 'length' });
  requireBetween(diameter, width, 1e15, { parameter: 'endDiameter', quantity: 'round end', kind: 'length' });
  const [radius, a] = [diameter / 2, width / 2];
  const shared = a * Math.sqrt(radius ** 2 - a ** 2) + radius ** 2 * Math.asin(a / radius);
  return Math.PI * radius ** 2 - shared;
}

function requireEdges(edges: StripEdges): void {
  if (edges !== 'square' && edges !== 'round') {
    throw new InputError({
      parameter: 'edges',
      quantity: 'edges of the strip',
      value: edges,
      rule: 'must be square or round',
    });
  }
}
