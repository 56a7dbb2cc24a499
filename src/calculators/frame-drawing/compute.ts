import { InputError, type Warning } from '@frameworthy/shared';
import { bodyClearance, motorLayout, type MotorLayout } from '@frameworthy/shared/layout';
import { WOVEN_PLATE } from '@frameworthy/shared/material';
import {
  fourArmOutline,
  innerEndGap,
  leastEdgeDistance,
  overallSize,
  plateArea,
  type FrameOutline,
  type OutlinePlate,
  type OverallSize,
} from '@frameworthy/shared/outline';
import type { DrawingValues } from './inputs.ts';

export interface DrawingResult {
  outline: FrameOutline;
  layout: MotorLayout;
  overall: OverallSize;
  /** Inner end of an arm from the middle [m]. */
  innerEnd: number;
  /** Smaller angle between neighbouring arms [rad]. */
  between: number;
  /** Between the inner ends of neighbouring arms [m]. */
  innerGap: number;
  /** From end to end of an arm [m]. */
  cutLength: number;
  /** Top plate to the propeller circles, from above [m]. */
  bodyRoom: number;
  /** Edge of a standoff hole to that of the top plate [m]. */
  holeEdge: number;
  /** All three plates [m²]. */
  area: number;
  /** [kg] */
  mass: number;
  warnings: readonly Warning[];
}

export function compute(v: DrawingValues): DrawingResult {
  if (v.standoffHole >= v.standoffDiameter)
    throw new InputError({
      parameter: 'standoffHole',
      quantity: 'hole for the screws of the standoffs',
      value: v.standoffHole,
      rule: 'must be smaller than the standoff',
      limit: v.standoffDiameter,
      kind: 'length',
    });
  const width = v.armKind === 'tube' ? v.outerDiameter : v.width;
  const outline = fourArmOutline({
    name: 'Frame',
    layout: v,
    motor: { bellDiameter: v.motorDiameter, height: v.motorHeight, propellerHeight: v.propellerHeight },
    arm: {
      section:
        v.armKind === 'tube'
          ? { kind: 'tube', outerDiameter: v.outerDiameter, wall: v.wall }
          : { kind: 'strip', rootWidth: v.width, tipWidth: v.width, thickness: v.height },
      length: v.armLength,
      screwSpacing: v.screwSpacing,
      endDistance: v.endDistance,
      holeDiameter: v.holeDiameter,
      beyondMotor: v.beyondMotor,
    },
    body: {
      length: v.bodyLength,
      width: v.bodyWaist,
      end: v.bodyEnd,
      tongueWidth: v.tongueWidth,
      crossPlate: v.crossPlate,
      mainPlate: v.mainPlate,
      topPlate: v.topPlate,
      topLength: v.topLength,
    },
    standoff: {
      places: [1, -1].flatMap((y) => [1, -1].map((x) => ({ x: (x * v.across) / 2, y: (y * v.foreAft) / 2 }))),
      length: v.standoffLength,
      diameter: v.standoffDiameter,
      holeDiameter: v.standoffHole,
    },
    battery: {
      length: v.batteryLength,
      width: v.batteryWidth,
      height: v.batteryHeight,
      lie: v.lie,
      side: v.side,
      forward: v.forward,
      gap: v.gap,
    },
  });
  const layout = motorLayout(v);
  const innerEnd = layout.wheelbase / 2 - v.armLength - v.screwSpacing - v.endDistance;
  const between = Math.min(2 * layout.armAngle, Math.PI - 2 * layout.armAngle);
  const innerGap = innerEndGap({ distance: innerEnd, width, angle: between });
  const top = outline.plates.at(-1) as OutlinePlate;
  const body = bodyClearance({
    outline: top.shape.kind === 'polygon' ? top.shape.corners : [],
    motors: layout.motors,
    propellerDiameter: v.propellerDiameter,
  });
  const holes = [...outline.holes, ...outline.arms.flatMap(({ rootScrews }) => rootScrews)];
  const areas = outline.plates.map((plate) => plateArea(plate, plate === top ? outline.holes : holes));
  const density = WOVEN_PLATE.density.typical;
  const holeEdge = leastEdgeDistance(top, outline.holes);
  return {
    outline,
    layout,
    overall: overallSize(outline),
    innerEnd,
    between,
    innerGap,
    cutLength: v.armLength + v.screwSpacing + v.endDistance + v.beyondMotor,
    bodyRoom: body.clearance,
    holeEdge,
    area: areas.reduce((sum, area) => sum + area, 0),
    mass: outline.plates.reduce((sum, { thickness }, i) => sum + thickness * density * (areas[i] as number), 0),
    warnings: [
      ...layout.warnings,
      ...body.warnings,
      ...(innerGap < 0
        ? [
            {
              code: 'arms-meet',
              message:
                'The arms run into each other in the middle: shorten root or arm, widen the wheelbase, or cut the ends to a point and count the end distance anew.',
            },
          ]
        : []),
      ...(holeEdge < 0
        ? [{ code: 'hole-breaks-out', message: 'A standoff hole breaks out of the top plate or lies beside it.' }]
        : []),
    ],
  };
}
