import { InputError, type Warning } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { requirePlane } from '../beam/arm-bending.ts';
import { requireSegments, type ArmSegment } from '../beam/index.ts';
import type { Plane } from '../section/index.ts';
import { assembleArm, type ArmSystem } from './modes-assembly.ts';
import { timesVector } from './modes-banded.ts';
import { lowestModes, type Eigenpair } from './modes-solver.ts';
import { dot } from './modes-vectors.ts';
import { requireMotor, type MotorAtTip } from './motor.ts';
import { beamModelWarnings } from './validity.ts';

export interface ArmModesInput {
  /** From the root (x = 0) to the motor axis, each layer with its density. */
  segments: readonly ArmSegment[];
  plane: Plane;
  motor: MotorAtTip;
  /** Rotational spring at the root in this plane; fixed where not given [N·m/rad]. */
  rootBending?: number;
  /** Torsional spring at the root; fixed where not given; sideways only [N·m/rad]. */
  rootTwist?: number;
  /** How many modes, 2 where not given [-]. */
  count?: number;
  /** Elements along the arm, 16 where not given [-]. */
  elements?: number;
}

export interface ArmMode {
  /** [Hz] */
  frequency: number;
  /** Share of the mode's spring energy that is twist: 0 is pure bending, 1 pure twist [-]. */
  twistShare: number;
  /** Shape, scaled so that the largest deflection, or twist where nothing deflects, is 1. */
  shape: readonly { x: number; deflection: number; twist: number }[];
}

/**
 * Lowest natural frequencies and shapes of a stepped arm with its motor, in one plane: Timoshenko's beam in finite elements
 * with consistent mass. Sideways modes include the twist that the motor's height brings in.
 * @param input - segments, plane, motor, root springs
 * @returns modes, ascending, with warnings
 * @validity small movements, no damping, body far heavier than the arm; play at the root is not in it
 * @throws InputError when a number is out of range or a layer has no density
 * @source przemieniecki-1968-matrix, § 11.4; bathe-1996-finite, § 11.6
 */
export function armModes(input: ArmModesInput): { modes: readonly ArmMode[]; warnings: readonly Warning[] } {
  requireModesInput(input);
  const { segments, plane, motor, rootBending, rootTwist, count = 2, elements = 16 } = input;
  const system = assembleArm({ segments, plane, motor, rootBending, rootTwist, elements: Math.floor(elements) });
  const modes = lowestModes(system.stiffness, system.mass, Math.floor(count)).map((mode) => ({
    frequency: Math.sqrt(mode.value) / (2 * Math.PI),
    twistShare: plane === 'vertical' ? 0 : twistShare(system, mode),
    shape: shapeOf(system, mode.vector, plane),
  }));
  return { modes, warnings: beamModelWarnings({ segments, plane, highestFrequency: modes.at(-1)!.frequency }) };
}

function requireModesInput({
  segments,
  plane,
  motor,
  rootBending,
  rootTwist,
  count = 2,
  elements = 16,
}: ArmModesInput): void {
  requireSegments(segments);
  requirePlane(plane);
  requireMotor(motor);
  for (const { density } of segments.flatMap((segment) => segment.layers)) {
    const subject = { parameter: 'density', quantity: 'density', kind: 'density' } as const;
    if (density === undefined) throw new InputError({ ...subject, value: density, rule: 'must be given' });
    requirePositive(density, subject);
  }
  const spring = { quantity: 'stiffness of the root', kind: 'rotationalStiffness' } as const;
  if (rootBending !== undefined) requirePositive(rootBending, { parameter: 'rootBending', ...spring });
  if (rootTwist !== undefined) requirePositive(rootTwist, { parameter: 'rootTwist', ...spring });
  requireBetween(count, 1, 4, { parameter: 'count', quantity: 'number of modes', kind: 'count' });
  requireBetween(elements, 4, 200, { parameter: 'elements', quantity: 'number of elements', kind: 'count' });
}

function twistShare({ stiffness, stations, unknown }: ArmSystem, { value, vector }: Eigenpair): number {
  // Only the mass couples bending and twist: their spring energies stand apart.
  const twist = new Float64Array(vector.length);
  for (let node = 0; node < stations.length; node++) {
    const place = unknown(node, 2);
    if (place >= 0) twist[place] = vector[place]!;
  }
  // Of all springs together it is ω², as the vector has length 1 in the measure of the mass.
  return Math.min(1, Math.max(0, dot(twist, timesVector(stiffness, twist)) / value));
}

function shapeOf({ stations, unknown }: ArmSystem, vector: Float64Array, plane: Plane): ArmMode['shape'] {
  const along = (kind: number): { values: Float64Array; largest: number } => {
    const values = new Float64Array(stations.length);
    let largest = 0;
    for (let node = 0; node < values.length; node++) {
      const place = unknown(node, kind);
      if (place < 0) continue;
      const value = vector[place]!;
      values[node] = value;
      if (Math.abs(value) > Math.abs(largest)) largest = value;
    }
    return { values, largest };
  };
  const deflection = along(0);
  const twist = plane === 'vertical' ? undefined : along(2);
  // Pure twist leaves rounding in the deflection: that is not a scale.
  const scale =
    twist && Math.abs(deflection.largest) <= 1e-9 * Math.abs(twist.largest) ? twist.largest : deflection.largest;
  return stations.map((x, node) => ({
    x,
    deflection: deflection.values[node]! / scale,
    twist: twist ? twist.values[node]! / scale : 0,
  }));
}
