import { taperedOutline } from '../layout/body-clearance.ts';
import { motorLayout, type PlanPoint } from '../layout/motor-layout.ts';
import { requireBelow, requireNotNegative } from '../require.ts';
import { armSize } from './arm-shape.ts';
import type { FourArmFrame } from './four-arm-frame.ts';
import type { FrameOutline, OutlineArm, OutlineBox, OutlinePlate } from './frame-outline.ts';
import { starUnion } from './star-union.ts';

/** A tongue narrower than this is none [m]. */
const LEAST_TONGUE = 1e-4;

const NAMES = ['front right', 'front left', 'rear left', 'rear right'] as const;

/**
 * Outline of a frame with four radial arms from the numbers that it is computed with.
 * @param frame - layout, motor, arm, body, standoffs, battery [m]
 * @returns the outline; motors where `motorLayout` puts them
 * @validity arms straight and radial; plates mirrored; the arms may meet in the middle, see `innerEndGap`
 * @throws InputError when a value is out of range or the arm is longer than its motor is far out
 * @derivation stacked from below: cross plate, arms, main plate, standoffs, top plate
 */
export function fourArmOutline(frame: FourArmFrame): FrameOutline {
  const { arm, body, motor, standoff } = frame;
  const { motors } = motorLayout(frame.layout);
  const [{ x, y }] = motors as [PlanPoint];
  const reach = Math.hypot(x, y);
  requireBelow(arm.length, reach, 'must be less than the distance of the motor from the middle', {
    parameter: 'armLength',
    quantity: 'arm from outer screw to motor',
    kind: 'length',
  });
  requireNotNegative(arm.beyondMotor, { parameter: 'beyondMotor', quantity: 'arm beyond the motor', kind: 'length' });
  const { height } = armSize(arm.section);
  const axis = body.crossPlate + height / 2;
  const outer = reach - arm.length;
  const on = (at: PlanPoint, distance: number): PlanPoint => ({
    x: (at.x / reach) * distance,
    y: (at.y / reach) * distance,
  });
  const arms: OutlineArm[] = motors.map((at, i) => ({
    name: `arm, ${NAMES[i]}`,
    section: arm.section,
    innerEnd: on(at, outer - arm.screwSpacing - arm.endDistance),
    outerEnd: on(at, reach + arm.beyondMotor),
    z: axis,
    rootScrews: [outer - arm.screwSpacing, outer].map((distance) => ({
      at: on(at, distance),
      diameter: arm.holeDiameter,
    })),
  }));
  const half = body.tongueWidth / 2;
  const tongue = (at: PlanPoint): PlanPoint[] => {
    const [a, b] = [on(at, outer + half), on(at, 0)];
    const aside = { x: (-at.y / reach) * half, y: (at.x / reach) * half };
    return [a, b].flatMap((p, i) =>
      [1 - 2 * i, 2 * i - 1].map((s) => ({ x: p.x + s * aside.x, y: p.y + s * aside.y })),
    );
  };
  const outline = taperedOutline({ length: body.length, waist: body.width, end: body.end });
  const clamping = body.tongueWidth >= LEAST_TONGUE ? starUnion([outline, ...motors.map(tongue)]) : outline;
  const topEnd = body.width + ((body.end - body.width) * body.topLength) / body.length;
  const floor = body.crossPlate + height;
  const onTop = floor + body.mainPlate + standoff.length;
  const plate = (name: string, corners: readonly PlanPoint[], z: number, thickness: number): OutlinePlate => ({
    name,
    shape: { kind: 'polygon', corners },
    z,
    thickness,
  });
  const top = taperedOutline({ length: body.topLength, waist: body.width, end: Math.max(topEnd, 1e-3) });
  return {
    name: frame.name,
    motors: motors.map((at, i) => ({
      name: `motor, ${NAMES[i]}`,
      at,
      bellDiameter: motor.bellDiameter,
      height: motor.height,
      z: axis + height / 2 + (motor.seat ?? 0),
    })),
    propellers: motors.map((at, i) => ({
      name: `propeller, ${NAMES[i]}`,
      at,
      diameter: frame.layout.propellerDiameter,
      z: axis + motor.propellerHeight,
    })),
    arms,
    plates: [
      plate('cross plate', clamping, 0, body.crossPlate),
      plate('main plate', clamping, floor, body.mainPlate),
      plate('top plate', top, onTop, body.topPlate),
    ],
    standoffs: standoff.places.map((at) => ({
      at,
      diameter: standoff.diameter,
      z: floor + body.mainPlate,
      length: standoff.length,
    })),
    electronics: (frame.electronics ?? []).map((box) => ({
      ...box,
      centre: { ...box.centre, z: box.centre.z + floor + body.mainPlate },
    })),
    ...(frame.battery ? { battery: batteryBox(frame.battery, onTop + body.topPlate) } : {}),
    holes: standoff.places.map((at) => ({ name: 'standoff screw', at, diameter: standoff.holeDiameter })),
  };
}

function batteryBox(battery: NonNullable<FourArmFrame['battery']>, top: number): OutlineBox {
  const { length, width, height, lie, side, forward, gap } = battery;
  const [x, y] = lie === 'lengthwise' ? [width, length] : [length, width];
  const away = gap + height / 2;
  return {
    name: 'battery',
    centre: { x: 0, y: forward, z: side === 'above' ? top + away : -away },
    size: { x, y, z: height },
  };
}
