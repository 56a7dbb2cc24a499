import { matchingSize, stripSegments, type Match, type TaperedStrip } from '@frameworthy/shared/arm';
import type { Plane } from '@frameworthy/shared/section';
import type { ArmValues } from './inputs.ts';
import { stripMaterial } from './materials.ts';
import { stiffnessOf, stripMass, stripOf, stripOfWidth, tubeMass, tubeSegments, type Part } from './parts.ts';

export interface Matches {
  vertical: Match;
  sideways: Match;
  mass: Match;
}

/** Thinnest wall and plate that are looked at. */
const THINNEST = 5e-5;
/** A strip twice as wide as the arm is long has long ceased to be an arm. */
const WIDEST = 2;
/** Short of a solid bar by so little of the radius. */
const NEARLY = 1 - 1e-9;

/** Width at the root of a strip that matches the tube, in the reader's thickness and taper. */
export function matchingWidth(values: ArmValues, tube: Part): Matches {
  const strip = stripOf(values);
  const taper = strip.tipWidth / strip.rootWidth;
  const wide = (rootWidth: number) => stripOfWidth(values, rootWidth);
  const stiffness = (plane: Plane) => (width: number) =>
    stiffnessOf(stripSegments(wide(width), stripMaterial(values)), plane);
  const range = {
    // No narrower than it is thick: below that it is a strip on edge.
    from: (strip.thickness / Math.min(taper, 1)) * (1 + 1e-9),
    to: Math.max(WIDEST * values.armLength, (2 * strip.thickness) / Math.min(taper, 1)),
  };
  return {
    vertical: matchingSize({ ...range, of: stiffness('vertical'), target: tube.stiffness.vertical }),
    sideways: matchingSize({ ...range, of: stiffness('horizontal'), target: tube.stiffness.horizontal }),
    mass: matchingSize({ ...range, of: (b) => massOf(values, wide(b)), target: tube.mass }),
  };
}

/** The round end grows with the strip where it would be narrower. */
const massOf = (values: ArmValues, strip: TaperedStrip): number =>
  stripMass({ ...values, endDiameter: Math.max(values.endDiameter, strip.tipWidth) }, strip);

/** Thickness of a plate as stiff up and down as the tube, in the reader's widths. */
export function matchingThickness(values: ArmValues, tube: Part): Match {
  const strip = stripOf(values);
  return matchingSize({
    from: THINNEST,
    to: Math.min(strip.rootWidth, strip.tipWidth),
    of: (thickness) => stiffnessOf(stripSegments({ ...strip, thickness }, stripMaterial(values)), 'vertical'),
    target: tube.stiffness.vertical,
  });
}

/** Wall of a tube of the reader's diameter that matches the strip. */
export function matchingWall(values: ArmValues, strip: Part): Matches {
  const range = { from: THINNEST, to: (values.outerDiameter / 2) * NEARLY };
  const stiffness = (plane: Plane) => (wall: number) => stiffnessOf(tubeSegments({ ...values, wall }), plane);
  return {
    vertical: matchingSize({ ...range, of: stiffness('vertical'), target: strip.stiffness.vertical }),
    sideways: matchingSize({ ...range, of: stiffness('horizontal'), target: strip.stiffness.horizontal }),
    mass: matchingSize({ ...range, of: (t) => tubeMass({ ...values, wall: t }), target: strip.mass }),
  };
}
