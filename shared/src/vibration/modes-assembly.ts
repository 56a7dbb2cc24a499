import type { ArmSegment } from '../beam/index.ts';
import { rigidity } from '../beam/index.ts';
import type { Plane } from '../section/index.ts';
import { addBlock, addTo, banded, type Banded } from './modes-banded.ts';
import { bendingMass, bendingStiffness, twistElement, type ElementValues } from './modes-element.ts';
import type { Space } from './modes-space.ts';
import type { MotorAtTip } from './motor.ts';

export interface ArmSystem {
  stiffness: Banded;
  mass: Banded;
  /** Along the arm [m]. */
  stations: readonly number[];
  /** Index of the unknown of a node, or −1 where it is held: 0 deflection, 1 rotation, 2 twist. */
  unknown: (node: number, kind: number) => number;
}

export interface ArmSystemInput {
  segments: readonly ArmSegment[];
  plane: Plane;
  motor: MotorAtTip;
  /** Fixed where not given [N·m/rad]. */
  rootBending?: number;
  rootTwist?: number;
  elements: number;
}

function elementValues(segment: ArmSegment, plane: Plane, length: number): ElementValues {
  const values = { length, ...rigidity(segment, plane), mass: 0, rotary: 0, polar: 0 };
  for (const { section, density = 0 } of segment.layers) {
    values.mass += density * section.area;
    values.rotary += density * section[plane].secondMomentOfArea;
    values.polar += density * (section.vertical.secondMomentOfArea + section.horizontal.secondMomentOfArea);
  }
  return values;
}

interface Stretch {
  count: number;
  values: ElementValues;
}

/** Elements of equal kind, more of them where a segment is longer. */
function split({ segments, plane, elements }: ArmSystemInput): Stretch[] {
  const whole = segments.reduce((sum, segment) => sum + segment.length, 0);
  return segments.map((segment) => {
    const count = Math.max(2, Math.ceil((elements * segment.length) / whole));
    return { count, values: elementValues(segment, plane, segment.length / count) };
  });
}

const motorMatrix = (plane: Plane, { mass, offset, pitchInertia, rollInertia, yawInertia }: MotorAtTip) =>
  plane === 'vertical'
    ? [
        [mass, 0],
        [0, pitchInertia + mass * offset * offset],
      ]
    : [
        [mass, 0, mass * offset],
        [0, yawInertia, 0],
        [mass * offset, 0, rollInertia + mass * offset * offset],
      ];

/**
 * Stiffness and mass of an arm with its motor. Up and down it only bends. Sideways it also twists, because the mass of the
 * motor sits above the arm: moving sideways, its inertia turns the arm.
 * @param input - segments, plane, motor, root springs, number of elements
 * @param memory - where the matrices are put
 * @returns banded matrices and the place of each unknown
 * @validity inputs already checked by armModes
 * @throws InputError through armModes
 * @source przemieniecki-1968-matrix, § 6.1 and § 11.4, assembly; the motor's matrix from its kinetic energy
 * ½ m (v̇ + h φ̇)² + ½ I φ̇² sideways, ½ m ẇ² + ½ (I + m h²) θ̇² up and down
 */
export function assembleArm(input: ArmSystemInput, memory: Space): ArmSystem {
  const { plane, motor, rootBending, rootTwist } = input;
  const stretches = split(input);
  const kinds = plane === 'vertical' ? 2 : 3;
  const held = [true, rootBending === undefined, rootTwist === undefined].slice(0, kinds);
  // What is free at the root comes first.
  let free = 0;
  const atRoot = held.map((is) => (is ? -1 : free++));
  const unknown = (node: number, kind: number): number =>
    node === 0 ? atRoot[kind]! : free + (node - 1) * kinds + kind;
  const elements = stretches.reduce((sum, { count }) => sum + count, 0);
  const size = free + elements * kinds;
  const [stiffness, mass] = [banded(size, 2 * kinds - 1, memory), banded(size, 2 * kinds - 1, memory)];

  const stations = [0];
  for (const { count, values } of stretches) {
    const [bend, move, twist] = [bendingStiffness(values), bendingMass(values), twistElement(values)];
    for (let i = 0, n = stations.length - 1; i < count; i++, n++) {
      stations.push(stations[n]! + values.length);
      const bending = [unknown(n, 0), unknown(n, 1), unknown(n + 1, 0), unknown(n + 1, 1)];
      addBlock(stiffness, bending, bend);
      addBlock(mass, bending, move);
      if (kinds === 2) continue;
      const twisting = [unknown(n, 2), unknown(n + 1, 2)];
      addBlock(stiffness, twisting, twist.stiffness);
      addBlock(mass, twisting, twist.mass);
    }
  }
  [undefined, rootBending, rootTwist].slice(0, kinds).forEach((spring, kind) => {
    if (spring !== undefined) addTo(stiffness, atRoot[kind]!, atRoot[kind]!, spring);
  });
  const tip = held.map((_, kind) => unknown(elements, kind));
  addBlock(mass, tip, motorMatrix(plane, motor));
  return { stiffness, mass, stations, unknown };
}
