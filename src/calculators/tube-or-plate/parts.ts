import {
  largestTipForce,
  roundEndArea,
  stripRoot,
  stripSection,
  stripSegments,
  type TaperedStrip,
} from '@frameworthy/shared/arm';
import { armBending, tipStiffness, type ArmSegment, type TipStiffness } from '@frameworthy/shared/beam';
import { drilledTubeSection, roundTubeSection, type BendingPlane, type Plane } from '@frameworthy/shared/section';
import { CANTILEVER_TIP_SHARE, naturalFrequency } from '@frameworthy/shared/vibration';
import type { ArmValues } from './inputs.ts';
import { stripMaterial, tubeMaterial } from './materials.ts';

type BothPlanes = Readonly<Record<Plane, number>>;

/** What both kinds of arm have. */
export interface Part {
  segments: readonly ArmSegment[];
  /** All of it [kg]. */
  mass: number;
  stiffness: TipStiffness;
  thrust: { deflection: number; tilt: number };
  torque: { moment: number; deflection: number; turn: number };
  /** Largest tip force by bending at the outer screw and half way out [N]. */
  root: BothPlanes;
  middle: BothPlanes;
  /** First frequency, quick estimate [Hz]. */
  frequency: BothPlanes;
}

export const stripOf = ({ armLength, rootWidth, tipWidth, thickness, edges }: ArmValues): TaperedStrip => ({
  length: armLength,
  rootWidth,
  tipWidth,
  thickness,
  edges,
});

/** The same strip at another width, its taper kept. */
export const stripOfWidth = (values: ArmValues, rootWidth: number): TaperedStrip => ({
  ...stripOf(values),
  rootWidth,
  tipWidth: (rootWidth * values.tipWidth) / values.rootWidth,
});

/** Of one plane alone, for curves and solves that ask for many. */
export const stiffnessOf = (segments: readonly ArmSegment[], plane: Plane): number =>
  1 / armBending({ segments, plane, tipForce: 1, steps: 1 }).tipDeflection;

export function tubeSegments(values: ArmValues): ArmSegment[] {
  const { outerDiameter, wall, armLength } = values;
  return [
    { length: armLength, layers: [{ section: roundTubeSection({ outerDiameter, wall }), ...tubeMaterial(values) }] },
  ];
}

const beamMass = (segments: readonly ArmSegment[]): number =>
  segments.reduce(
    (sum, { length, layers }) => sum + length * layers.reduce((s, l) => s + l.section.area * (l.density ?? 0), 0),
    0,
  );

/** Tube from end to end, and what holds the motor on it [kg]. */
export function tubeMass(values: ArmValues): number {
  const { outerDiameter, wall, armLength, behind, beyond, mountMass } = values;
  const { area } = roundTubeSection({ outerDiameter, wall });
  return area * tubeMaterial(values).density * (behind + armLength + beyond) + mountMass;
}

/** Strip, the stretch inside the body at its root width, and what the round end adds [kg]. */
export function stripMass(values: ArmValues, strip: TaperedStrip): number {
  const { rootWidth, tipWidth, thickness, length } = strip;
  const areaAt = (width: number): number => stripSection({ ...strip, width }).area;
  const inside = areaAt(rootWidth) * values.behind;
  // The area changes evenly with the width: the mean width gives the whole taper.
  const taper = areaAt((rootWidth + tipWidth) / 2) * length;
  const end = roundEndArea({ diameter: values.endDiameter, width: tipWidth }) * thickness;
  return stripMaterial(values).density * (inside + taper + end);
}

interface Given {
  segments: readonly ArmSegment[];
  mass: number;
  strength: number;
  atRoot: Record<Plane, BendingPlane>;
  atMiddle: Record<Plane, BendingPlane>;
}

function partOf(values: ArmValues, { segments, mass, strength, atRoot, atMiddle }: Given): Part {
  const { armLength, thrust, torquePerThrust, motorMass } = values;
  const stiffness = tipStiffness(segments);
  const moment = torquePerThrust * thrust;
  const up = armBending({ segments, plane: 'vertical', tipForce: thrust, steps: 1 });
  const aside = armBending({ segments, plane: 'horizontal', tipForce: 0, tipMoment: moment, steps: 1 });
  const moving = motorMass + CANTILEVER_TIP_SHARE * beamMass(segments);
  const both = (of: (plane: Plane) => number): BothPlanes => ({
    vertical: of('vertical'),
    horizontal: of('horizontal'),
  });
  return {
    segments,
    mass,
    stiffness,
    thrust: { deflection: up.tipDeflection, tilt: up.tipSlope },
    torque: { moment, deflection: aside.tipDeflection, turn: aside.tipSlope },
    root: both((plane) => largestTipForce({ plane: atRoot[plane], lever: armLength, strength })),
    middle: both((plane) => largestTipForce({ plane: atMiddle[plane], lever: armLength / 2, strength })),
    frequency: both((plane) => naturalFrequency(stiffness[plane], moving)),
  };
}

export function tubePart(values: ArmValues): Part {
  const { outerDiameter, wall, holeDiameter } = values;
  return partOf(values, {
    segments: tubeSegments(values),
    mass: tubeMass(values),
    strength: tubeMaterial(values).strength,
    atRoot: drilledTubeSection({ outerDiameter, wall, holeDiameter, holeAxis: 'vertical' }),
    atMiddle: roundTubeSection({ outerDiameter, wall }),
  });
}

export function stripPart(values: ArmValues): Part {
  const strip = stripOf(values);
  const { rootWidth, tipWidth, thickness, edges } = strip;
  const material = stripMaterial(values);
  return partOf(values, {
    segments: stripSegments(strip, material),
    mass: stripMass(values, strip),
    strength: material.strength,
    atRoot: stripRoot({ width: rootWidth, thickness, edges, holeDiameter: values.holeDiameter }),
    atMiddle: stripSection({ width: (rootWidth + tipWidth) / 2, thickness, edges }),
  });
}
