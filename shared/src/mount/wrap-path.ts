import { requireLength } from '../require-physical.ts';

export interface WrapPathGiven {
  /** Outside diameter of the tube [m]. */
  tubeDiameter: number;
  /** Of the plate across the tube, where the tow lies [m]. */
  plateWidth: number;
  plateThickness: number;
  /** Glue between plate and tube [m]. */
  bondLine: number;
}

export interface WrapPath {
  /** Once round plate and tube [m]. */
  length: number;
  /** Where the leg meets the tube, from the top, round the tube [rad]. */
  meets: number;
  /** Share of a leg's pull that holds the plate down [-]. */
  downShare: number;
  /** Of a leg's pull about the line on which the plate rocks [m]. */
  lever: number;
  /** Of contact with the tube [rad]. */
  gripAngle: number;
  /** Corner of the plate that the leg leaves from: half the plate's width out [m], and above the tube's axis [m]. */
  corner: { x: number; y: number };
  /** Whether the tow also lies on the plate's side face. */
  onSide: boolean;
}

/**
 * The way of a tow round a flat plate and the round tube under it: over the plate, down to the tube in a straight leg, and
 * round below.
 * $$\psi = \arctan\frac{w/2}{y}+\arccos\frac{R}{d},\quad d=\sqrt{(w/2)^2+y^2},\quad
 * \ell = w + 2\sqrt{d^2-R^2} + 2R(\pi-\psi),\quad \text{lever} = R\,(1-\cos\psi)$$
 * @param given - tube, plate and glue line [m]
 * @returns length of a turn [m], angle where the leg meets the tube [rad], what a leg does for the plate
 * @validity tow pulled straight; corners as points, so the rounding is left out of the length
 * @throws InputError when a size is out of range
 * @derivation the tightest closed line round a circle and a rectangle above it. A leg is a tangent of the circle, so its
 * line passes the tube's axis at R, and the top of the tube, on which the plate rocks, at R − R cosψ. Where the plate's
 * lower corner stands out beyond the tangent from the upper one, the leg leaves from the lower
 */
export function wrapPath({ tubeDiameter, plateWidth, plateThickness, bondLine }: WrapPathGiven): WrapPath {
  requireLength(tubeDiameter, { parameter: 'outerDiameter', quantity: 'outside diameter of the tube' });
  requireLength(plateWidth, { parameter: 'plateWidth', quantity: 'width of the plate' });
  requireLength(plateThickness, { parameter: 'plateThickness', quantity: 'thickness of the plate' });
  requireLength(bondLine, { parameter: 'bondLine', quantity: 'glue line' });
  const radius = tubeDiameter / 2;
  const half = plateWidth / 2;
  const under = radius + bondLine;
  const tangent = (y: number): number => Math.atan2(half, y) + Math.acos(Math.min(1, radius / Math.hypot(half, y)));
  const fromTop = tangent(under + plateThickness);
  const onSide = half * Math.sin(fromTop) + under * Math.cos(fromTop) > radius;
  const y = onSide ? under : under + plateThickness;
  const meets = onSide ? tangent(under) : fromTop;
  const straight = Math.sqrt(Math.max(0, half ** 2 + y ** 2 - radius ** 2));
  const gripAngle = 2 * (Math.PI - meets);
  return {
    length: plateWidth + (onSide ? 2 * plateThickness : 0) + 2 * straight + radius * gripAngle,
    meets,
    downShare: Math.sin(meets),
    lever: radius * (1 - Math.cos(meets)),
    gripAngle,
    corner: { x: half, y },
    onSide,
  };
}
