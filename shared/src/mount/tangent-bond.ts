import { requireBelow, requireBetween, requireNotNegative } from '../require.ts';
import { requireLength } from '../require-physical.ts';

/** A flat plate glued along the top of a round tube. */
export interface TangentBondGiven {
  /** Outside diameter of the tube [m]. */
  tubeDiameter: number;
  /** Glue between plate and tube where they are nearest [m]. */
  bondLine: number;
  /** Widest gap that the adhesive fills without sagging or voids [m]. */
  fillLimit: number;
  /** Of the fillet drawn along both edges; 0 for none [m]. */
  filletRadius: number;
  /** Of the plate across the tube [m]. */
  plateWidth: number;
}

export interface TangentBond {
  /** Tube radius R [m]. */
  radius: number;
  /** Glue at its thinnest [m]. */
  bondLine: number;
  /** From the middle to where the gap reaches the fill limit [m]. */
  fillReach: number;
  /** From the middle to the hollow of the fillet, as far as glue fills the gap from tube to plate; 0 without one [m]. */
  filletReach: number;
  /** From the middle to where the fillet leaves the plate; 0 without one [m]. */
  filletReachOnPlate: number;
  /** Width of the bond, both sides [m]. */
  width: number;
  /** Gap at its edge [m]. */
  edgeGap: number;
  /** Width of an even glue line of the least thickness that is as stiff in shear [m]. */
  workingWidth: number;
  /** Glue in a metre of bond, fillets included [m³/m]. */
  glueArea: number;
  /** Whether the plate's edge ends the bond. */
  endsAtPlate: boolean;
}

/**
 * Gap between a flat plate and the round tube under it.
 * $$g(x) = h + R - \sqrt{R^2 - x^2}$$
 * @param bond - tube radius and least glue line [m]
 * @param x - distance from the line of contact, across the tube [m]
 * @returns gap [m]
 * @validity plate flat, tube round; x no further than the tube is wide
 * @throws InputError when x is beyond the tube
 * @derivation height of the plate above the circle of the tube
 */
export function tangentGap({ radius, bondLine }: { radius: number; bondLine: number }, x: number): number {
  requireLength(radius, { parameter: 'radius', quantity: 'radius of the tube' });
  requireNotNegative(bondLine, { parameter: 'bondLine', quantity: 'glue line', kind: 'length' });
  requireBetween(Math.abs(x), 0, radius, { parameter: 'x', quantity: 'distance across the tube', kind: 'length' });
  return gapAt(radius, bondLine, x);
}

/** The same for values that are known to be sound. The difference as a quotient keeps its digits near the line of contact. */
export const gapAt = (radius: number, bondLine: number, x: number): number =>
  bondLine + x ** 2 / (radius + Math.sqrt(Math.max(0, radius ** 2 - x ** 2)));

/** Area between chord and glue: ∫ g dx over both sides. */
function filledArea(radius: number, bondLine: number, reach: number): number {
  const height = radius + bondLine;
  const root = Math.sqrt(Math.max(0, radius ** 2 - reach ** 2));
  return 2 * height * reach - (reach * root + radius ** 2 * Math.asin(reach / radius));
}

/** Area between plate, tube and both fillets: a quadrilateral to their centres less the sectors of tube and fillets. */
function filletedArea(radius: number, bondLine: number, filletRadius: number, onPlate: number): number {
  const under = radius + bondLine;
  const centre = under - filletRadius;
  const angle = Math.atan2(onPlate, centre);
  return onPlate * (2 * under - centre) - radius ** 2 * angle - filletRadius ** 2 * (Math.PI - angle);
}

/**
 * How wide the bond of a flat plate on a round tube becomes: to where the gap reaches what the adhesive fills, and on to
 * the hollow of the fillet.
 * $$x_g = \sqrt{s\,(2R-s)},\ s = g_{max}-h,\quad x_f = \sqrt{(2R+h)(2r-h)}-r,\quad b = 2\max(x_g, x_f)$$
 * $$b_w = h\int_{-b/2}^{b/2}\frac{dx}{g} = 2h\Bigl[\frac{2H}{\sqrt{H^2-R^2}}\arctan\Bigl(\sqrt{\tfrac{H+R}{H-R}}\tan\tfrac{\varphi}{2}\Bigr)-\varphi\Bigr],\ H=R+h,\ \sin\varphi=\tfrac{b}{2R}$$
 * @param given - tube, least glue line, fill limit, fillet radius, plate width [m]
 * @returns reaches, width, edge gap, working width [m], glue per length [m³/m]
 * @validity plate flat and level, tube round, glue without voids; the bond ends at the plate's edge where that is nearer
 * @throws InputError when a size is out of range or the adhesive does not even fill the glue line
 * @derivation x_g solves g(x) = g_max. The fillet is a circle of radius r that touches the plate from below and the tube
 * from outside: its centre lies R + r from the tube's and R + h − r above it, so (R+r)² − (R+h−r)² = (2R+h)(2r−h) is the
 * square of its distance from the middle, and its hollow lies r nearer. Rigid parts that slide by δ put a shear of Gδ/g(x) into the glue; the
 * integral with x = R sinφ has a closed form
 */
export function tangentBondWidth(given: TangentBondGiven): TangentBond {
  const { tubeDiameter, bondLine, fillLimit, filletRadius, plateWidth } = given;
  requireLength(tubeDiameter, { parameter: 'outerDiameter', quantity: 'outside diameter of the tube' });
  requireLength(bondLine, { parameter: 'bondLine', quantity: 'glue line' });
  requireLength(plateWidth, { parameter: 'plateWidth', quantity: 'width of the plate' });
  const fill = { parameter: 'fillLimit', quantity: 'gap that the adhesive fills', kind: 'length' } as const;
  requireBetween(fillLimit, bondLine, 100, fill);
  const radius = tubeDiameter / 2;
  const fillet = { parameter: 'filletRadius', quantity: 'fillet radius', kind: 'length' } as const;
  requireNotNegative(filletRadius, fillet);
  requireBelow(filletRadius, radius, 'must be smaller than the radius of the tube', fillet);

  const spare = Math.min(fillLimit - bondLine, radius);
  const fillReach = Math.sqrt(spare * (2 * radius - spare));
  const filletReachOnPlate = Math.sqrt((2 * radius + bondLine) * Math.max(0, 2 * filletRadius - bondLine));
  const filletReach = Math.min(Math.max(0, filletReachOnPlate - filletRadius), radius);
  const reach = Math.min(Math.max(fillReach, filletReach), radius);
  const half = Math.max(Math.min(reach, plateWidth / 2), 1e-9);
  const toolFits = filletReach > fillReach && filletReachOnPlate <= plateWidth / 2;
  const height = radius + bondLine;
  const angle = Math.asin(half / radius);
  const narrow = bondLine * (2 * radius + bondLine);
  const turn = Math.atan(((height + radius) / Math.sqrt(narrow)) * Math.tan(angle / 2));
  return {
    radius,
    bondLine,
    fillReach,
    filletReach,
    filletReachOnPlate,
    width: 2 * half,
    edgeGap: tangentGap({ radius, bondLine }, half),
    workingWidth: 2 * bondLine * (((2 * height) / Math.sqrt(narrow)) * turn - angle),
    glueArea: toolFits
      ? filletedArea(radius, bondLine, filletRadius, filletReachOnPlate)
      : filledArea(radius, bondLine, half),
    endsAtPlate: plateWidth / 2 < reach,
  };
}
