import type { InertiaTensor, Vector } from '../../shared/src/mass/index.ts';

/** Independent of the package: Newton and Euler stepped in time, small movements. */
const cross = (a: Vector, b: Vector): Vector => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/** Angular acceleration by Cramer's rule on the inertia matrix. */
function turned(i: InertiaTensor, m: Vector): Vector {
  const [a, b, c] = [
    [i.xx, -i.xy, -i.xz],
    [-i.xy, i.yy, -i.yz],
    [-i.xz, -i.yz, i.zz],
  ] as [number[], number[], number[]];
  const det = (p: number[], q: number[], r: number[]) =>
    p[0]! * (q[1]! * r[2]! - q[2]! * r[1]!) -
    p[1]! * (q[0]! * r[2]! - q[2]! * r[0]!) +
    p[2]! * (q[0]! * r[1]! - q[1]! * r[0]!);
  const right = [m.x, m.y, m.z];
  const column = (k: number) => {
    const swap = (row: number[], value: number) => row.map((old, j) => (j === k ? value : old));
    return det(swap(a, right[0]!), swap(b, right[1]!), swap(c, right[2]!));
  };
  const all = det(a, b, c);
  return { x: column(0) / all, y: column(1) / all, z: column(2) / all };
}

/** Largest force of a spring against which a point of a free rigid body runs along n with the speed v. */
export function stoppedBody(given: {
  mass: number;
  inertia: InertiaTensor;
  lever: Vector;
  n: Vector;
  stiffness: number;
  speed: number;
}): number {
  const { mass, inertia, lever, n, stiffness, speed } = given;
  const step = 2e-7;
  let [velocity, spin]: [Vector, Vector] = [
    { x: n.x * speed, y: n.y * speed, z: n.z * speed },
    { x: 0, y: 0, z: 0 },
  ];
  let [pressed, peak] = [0, 0];
  for (let i = 0; i < 100_000; i++) {
    const force = -stiffness * pressed;
    const push = { x: force * n.x, y: force * n.y, z: force * n.z };
    const turn = turned(inertia, cross(lever, push));
    velocity = {
      x: velocity.x + (push.x / mass) * step,
      y: velocity.y + (push.y / mass) * step,
      z: velocity.z + (push.z / mass) * step,
    };
    spin = { x: spin.x + turn.x * step, y: spin.y + turn.y * step, z: spin.z + turn.z * step };
    const carried = cross(spin, lever);
    pressed +=
      ((velocity.x + carried.x) * n.x + (velocity.y + carried.y) * n.y + (velocity.z + carried.z) * n.z) * step;
    if (-force < peak) break;
    peak = -force;
  }
  return peak;
}

/** Largest force in the arm when the motor is a mass of its own between contact and arm. */
export function armBehindMotor(given: {
  motorMass: number;
  restMass: number;
  armStiffness: number;
  contactStiffness: number;
  speed: number;
}): number {
  const { motorMass, restMass, armStiffness, contactStiffness, speed } = given;
  const step = 2e-7;
  let [motor, rest, motorSpeed, restSpeed, peak] = [0, 0, speed, speed, 0];
  for (let i = 0; i < 150_000; i++) {
    const arm = armStiffness * (rest - motor);
    // The obstacle pushes and never pulls.
    const contact = Math.max(0, contactStiffness * motor);
    motorSpeed += ((arm - contact) / motorMass) * step;
    restSpeed -= (arm / restMass) * step;
    motor += motorSpeed * step;
    rest += restSpeed * step;
    peak = Math.max(peak, arm);
  }
  return peak;
}
