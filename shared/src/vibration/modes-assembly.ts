import type { ArmSegment } from '../beam/index.ts';
import { rigidity } from '../beam/index.ts';
import type { Plane } from '../section/index.ts';
import { addTo, banded, type Banded } from './modes-banded.ts';
import {
  bendingMass,
  bendingStiffness,
  twistElement,
  type ElementMatrix,
  type ElementValues,
} from './modes-element.ts';
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
  const sum = (of: (layer: ArmSegment['layers'][number]) => number): number =>
    segment.layers.reduce((total, layer) => total + of(layer), 0);
  return {
    length,
    ...rigidity(segment, plane),
    mass: sum((layer) => layer.density! * layer.section.area),
    rotary: sum((layer) => layer.density! * layer.section[plane].secondMomentOfArea),
    polar: sum(
      (layer) =>
        layer.density! * (layer.section.vertical.secondMomentOfArea + layer.section.horizontal.secondMomentOfArea),
    ),
  };
}

/** Elements of equal kind, more of them where a segment is longer. */
function split({ segments, plane, elements }: ArmSystemInput): ElementValues[] {
  const whole = segments.reduce((sum, segment) => sum + segment.length, 0);
  return segments.flatMap((segment) => {
    const count = Math.max(2, Math.ceil((elements * segment.length) / whole));
    const values = elementValues(segment, plane, segment.length / count);
    return Array.from({ length: count }, () => values);
  });
}

/**
 * Stiffness and mass of an arm with its motor. Up and down it only bends. Sideways it also twists, because the mass of the
 * motor sits above the arm: moving sideways, its inertia turns the arm.
 * @param input - segments, plane, motor, root springs, number of elements
 * @returns banded matrices and the place of each unknown
 * @validity inputs already checked by armModes
 * @throws InputError through armModes
 * @source przemieniecki-1968-matrix, § 6.1 and § 11.4, assembly; the motor's matrix from its kinetic energy
 * ½ m (v̇ + h φ̇)² + ½ I φ̇² sideways, ½ m ẇ² + ½ (I + m h²) θ̇² up and down
 */
export function assembleArm(input: ArmSystemInput): ArmSystem {
  const { plane, motor, rootBending, rootTwist } = input;
  const elements = split(input);
  const kinds = plane === 'vertical' ? 2 : 3;
  const held = [true, rootBending === undefined, rootTwist === undefined].slice(0, kinds);
  const free = held.filter((is) => !is).length;
  const unknown = (node: number, kind: number): number => {
    if (node === 0) return held[kind] ? -1 : held.slice(0, kind).filter((is) => !is).length;
    return free + (node - 1) * kinds + kind;
  };
  const size = free + elements.length * kinds;
  const [stiffness, mass] = [banded(size, 2 * kinds - 1), banded(size, 2 * kinds - 1)];
  const add = (to: Banded, places: readonly number[], matrix: ElementMatrix): void =>
    matrix.forEach((row, i) =>
      row.forEach(
        (value, j) => i >= j && places[i]! >= 0 && places[j]! >= 0 && addTo(to, places[i]!, places[j]!, value),
      ),
    );
  const spring = (kind: number, value: number | undefined): void => {
    if (value !== undefined) addTo(stiffness, unknown(0, kind), unknown(0, kind), value);
  };

  const stations = [0];
  elements.forEach((values, n) => {
    stations.push(stations.at(-1)! + values.length);
    const bending = [unknown(n, 0), unknown(n, 1), unknown(n + 1, 0), unknown(n + 1, 1)];
    add(stiffness, bending, bendingStiffness(values));
    add(mass, bending, bendingMass(values));
    if (kinds === 2) return;
    const twist = twistElement(values);
    add(stiffness, [unknown(n, 2), unknown(n + 1, 2)], twist.stiffness);
    add(mass, [unknown(n, 2), unknown(n + 1, 2)], twist.mass);
  });
  spring(1, rootBending);
  if (kinds === 3) spring(2, rootTwist);

  const tip = [0, 1, 2].slice(0, kinds).map((kind) => unknown(elements.length, kind));
  const lever = motor.mass * motor.offset;
  add(
    mass,
    tip,
    plane === 'vertical'
      ? [
          [motor.mass, 0],
          [0, motor.pitchInertia + lever * motor.offset],
        ]
      : [
          [motor.mass, 0, lever],
          [0, motor.yawInertia, 0],
          [lever, 0, motor.rollInertia + lever * motor.offset],
        ],
  );
  return { stiffness, mass, stations, unknown };
}
