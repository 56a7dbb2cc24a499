import { placeItem } from '../fit/index.ts';
import { bodyClearance, taperedOutline, type PlanPoint } from '../layout/index.ts';
import { innerEndGap, type FrameOutline } from '../outline/index.ts';
import { currentArrangement } from './arrangement.ts';
import { framePlan } from './plan.ts';
import type { FrameRecord } from './record.ts';

/** Half the height that turning blades take at their middle, pitch and a little flapping; common practice, no source. */
export const BLADE_HALF_HEIGHT = 3e-3;

/** Something that a propeller's circle crosses, seen from above. */
export interface UnderPropeller {
  name: string;
  /** How far the circle reaches over it [m]. */
  reach: number;
  /** Between it and the turning blades, up or down; nothing or less where they strike it [m]. */
  height: number;
}

/** Upright column over an outline, heights from the arm's axis. */
interface Solid {
  name: string;
  outline: readonly PlanPoint[];
  from: number;
  to: number;
}

const corners = (x0: number, x1: number, y0: number, y1: number): PlanPoint[] => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** A standoff as the octagon round its circle, never inside it. */
function octagon(at: PlanPoint, radius: number): PlanPoint[] {
  const far = radius / Math.cos(Math.PI / 8);
  return Array.from({ length: 8 }, (_, i) => {
    const angle = ((i + 0.5) * Math.PI) / 4;
    return { x: at.x + far * Math.cos(angle), y: at.y + far * Math.sin(angle) };
  });
}

function solidsOf(record: FrameRecord, outline: FrameOutline): Solid[] {
  const { deck, topPlate, underside } = framePlan(record);
  const { length, width, end } = record.body;
  // Tongues follow the arms under the propellers in any frame: the lower plates count without them.
  const body = taperedOutline({ length, waist: width, end });
  const plates = outline.plates.flatMap(({ name, shape, z, thickness }) =>
    shape.kind === 'polygon'
      ? [
          {
            name,
            outline: name === 'top plate' ? shape.corners : body,
            from: z + underside,
            to: z + thickness + underside,
          },
        ]
      : [],
  );
  const standoffs = outline.standoffs.map(({ at, diameter }, i) => ({
    name: `standoff ${i + 1}`,
    outline: octagon(at, diameter / 2),
    from: deck,
    to: topPlate,
  }));
  const parts = currentArrangement(record).items.flatMap((item) =>
    placeItem(item).parts.flatMap(({ role, box }) =>
      role === 'wires'
        ? []
        : [
            {
              name: item.name,
              outline: corners(-box.y1, -box.y0, box.x0, box.x1),
              from: deck + box.z0,
              to: deck + box.z1,
            },
          ],
    ),
  );
  const battery = [outline.battery]
    .filter((box) => box !== undefined)
    .map(({ centre, size }) => ({
      name: 'battery',
      outline: corners(centre.x - size.x / 2, centre.x + size.x / 2, centre.y - size.y / 2, centre.y + size.y / 2),
      from: centre.z - size.z / 2 + underside,
      to: centre.z + size.z / 2 + underside,
    }));
  return [...plates, ...standoffs, ...parts, ...battery];
}

/**
 * What of a frame lies under or over the circles of its propellers, and whether the blades strike it.
 * $$c = \operatorname{dist}(\text{outline}, m) - \tfrac{D}{2} < 0,\quad
 * h = \max(z_0 - z_p,\; z_p - z_1) - b$$
 * @param record - a valid record
 * @param outline - its outline
 * @returns each thing whose outline a circle crosses, with its distance in height from the blades, least first [m]
 * @validity everything straight: an arm that bends in a hit, or a blade that flaps, takes height. The arms, their tongues and
 * the motor wires lie under the blades in any frame and are left out
 * @throws InputError where the plan cannot be
 * @derivation bodyClearance for each outline; heights from framePlan
 */
export function propellerRoom(record: FrameRecord, outline: FrameOutline): UnderPropeller[] {
  const { propeller, motor } = record;
  const motors = outline.motors.map(({ at }) => at);
  const found = new Map<string, UnderPropeller>();
  for (const { name, outline: shape, from, to } of solidsOf(record, outline)) {
    const { clearance } = bodyClearance({ outline: shape, motors, propellerDiameter: propeller.diameter });
    if (clearance >= 0) continue;
    const height = Math.max(from - motor.propellerHeight, motor.propellerHeight - to) - BLADE_HALF_HEIGHT;
    const before = found.get(name);
    if (!before || height < before.height) found.set(name, { name, reach: -clearance, height });
  }
  return [...found.values()].sort((a, b) => a.height - b.height);
}

/**
 * Room between the inner ends of neighbouring arms.
 * @param record - a valid record
 * @returns distance; negative where they run into each other [m]
 * @validity as innerEndGap
 * @throws InputError where the plan cannot be
 * @derivation innerEndGap, filled from the record
 */
export function armEndGap(record: FrameRecord): number {
  const { layout, innerEnd } = framePlan(record);
  const { arm } = record;
  const width = arm.kind === 'tube' ? arm.tube.outerDiameter : arm.strip.width;
  const angle = Math.min(2 * layout.armAngle, Math.PI - 2 * layout.armAngle);
  return innerEndGap({ distance: innerEnd, width, angle });
}
