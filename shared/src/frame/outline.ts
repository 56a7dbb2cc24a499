import { COARSE_THREADS } from '../joint/index.ts';
import { taperedOutline } from '../layout/index.ts';
import type { FrameOutline, OutlineArm, OutlineBox, OutlinePlate } from '../outline/index.ts';
import { currentArrangement } from './arrangement.ts';
import { framePlan, type FramePlan } from './plan.ts';
import type { FrameRecord } from './record.ts';

const NAMES = ['front right', 'front left', 'rear left', 'rear right'] as const;
/** Of an arm past the motor's axis, and of a plate past the outer screw. */
const PAST_MOTOR = 0.013;
const PAST_SCREW = 0.006;

/** A motor's place from the middle, in steps along its arm. */
function spoke(plan: FramePlan, index: number): (distance: number) => { x: number; y: number } {
  const { x, y } = plan.layout.motors[index]!;
  const reach = Math.hypot(x, y);
  return (distance) => ({ x: (x / reach) * distance, y: (y / reach) * distance });
}

function armsOf(record: FrameRecord, plan: FramePlan, z: number): OutlineArm[] {
  const { arm } = record;
  const { root, strip } = arm;
  const section =
    arm.kind === 'tube'
      ? ({ kind: 'tube', ...arm.tube } as const)
      : ({ kind: 'strip', rootWidth: strip.width, tipWidth: strip.width, thickness: strip.thickness } as const);
  return NAMES.map((name, i) => {
    const at = spoke(plan, i);
    const outer = plan.rootDistance;
    return {
      name: `arm, ${name}`,
      section,
      innerEnd: at(plan.innerEnd),
      outerEnd: at(plan.layout.wheelbase / 2 + PAST_MOTOR),
      z,
      rootScrews: [outer - root.screwSpacing, outer].map((distance) => ({
        at: at(distance),
        diameter: root.holeDiameter,
      })),
    };
  });
}

/** The tongue of a plate that reaches out to an arm's outer screw. */
function tongues(record: FrameRecord, plan: FramePlan, name: string, z: number, thickness: number): OutlinePlate[] {
  const half = record.body.tongueWidth / 2;
  return NAMES.map((place, i) => {
    const at = spoke(plan, i);
    const from = at(Math.max(0, plan.innerEnd));
    const to = at(plan.rootDistance + PAST_SCREW);
    const aside = at(half);
    const corner = ({ x, y }: { x: number; y: number }, way: 1 | -1) => ({
      x: x - way * aside.y,
      y: y + way * aside.x,
    });
    const corners = [corner(from, 1), corner(to, 1), corner(to, -1), corner(from, -1)];
    return { name: `${name}, tongue ${place}`, shape: { kind: 'polygon', corners }, z, thickness };
  });
}

function platesOf(record: FrameRecord, plan: FramePlan): OutlinePlate[] {
  const { body } = record;
  const from = -plan.underside;
  const polygon = (length: number) =>
    ({ kind: 'polygon', corners: taperedOutline({ length, waist: body.width, end: body.end }) }) as const;
  const main = plan.deck - body.mainPlate.thickness + from;
  return [
    ...tongues(record, plan, 'cross plate', 0, body.crossPlate.thickness),
    { name: 'main plate', shape: polygon(body.length), z: main, thickness: body.mainPlate.thickness },
    ...tongues(record, plan, 'main plate', main, body.mainPlate.thickness),
    {
      name: 'top plate',
      shape: polygon(body.topPlate.length),
      z: plan.topPlate + from,
      thickness: body.topPlate.thickness,
    },
  ];
}

function batteryBox({ battery }: FrameRecord, plan: FramePlan): OutlineBox {
  const { lie, side, length, width, height, gap, forward } = battery;
  const from = -plan.underside;
  const z = side === 'above' ? plan.top + from + gap + height / 2 : -gap - height / 2;
  const size = lie === 'lengthwise' ? { x: width, y: length, z: height } : { x: length, y: width, z: height };
  return { name: 'battery', centre: { x: 0, y: forward, z }, size };
}

/**
 * The frame as its drawings need it.
 * @param record - a valid record
 * @returns outline, x to the right, y forward, z from the underside of the cross plate [m]
 * @validity plates as tapered outlines with a tongue to each arm; cutouts are not drawn
 * @throws InputError where the plan cannot be
 * @derivation geometry of framePlan
 */
export function frameOutline(record: FrameRecord): FrameOutline {
  const plan = framePlan(record);
  const { arm, motor, mount, body, name, revision } = record;
  const from = -plan.underside;
  const seat = from + plan.armHeight / 2 + (arm.kind === 'tube' ? mount.plateThickness : 0);
  const { standoffs, items } = currentArrangement(record);
  const motors = plan.layout.motors;
  return {
    name: `${name}, revision ${revision}`,
    motors: motors.map((at, i) => ({
      name: `motor, ${NAMES[i]}`,
      at,
      bellDiameter: motor.diameter,
      z: seat,
      height: motor.height,
    })),
    propellers: motors.map((at, i) => ({
      name: `propeller, ${NAMES[i]}`,
      at,
      diameter: record.propeller.diameter,
      z: from + motor.propellerHeight,
    })),
    arms: armsOf(record, plan, from),
    plates: platesOf(record, plan),
    standoffs: standoffs.map(({ x, y }) => ({
      at: { x: -y, y: x },
      diameter: body.standoff.outerDiameter,
      z: plan.deck + from,
      length: body.standoff.length,
    })),
    electronics: items.map((item) => ({
      name: item.name,
      centre: { x: -item.y, y: item.x, z: plan.deck + from + item.z + item.height / 2 },
      size: { x: item.width, y: item.length, z: item.height },
      ...(item.tilt ? { tilt: item.tilt } : {}),
    })),
    battery: batteryBox(record, plan),
    holes: standoffs.map(({ x, y }, i) => ({
      name: `standoff screw ${i + 1}`,
      at: { x: -y, y: x },
      diameter: COARSE_THREADS[body.standoff.screw].diameter + 0.0002,
    })),
  };
}
