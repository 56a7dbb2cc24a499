import { InputError, type Warning } from '../error.ts';
import { requireBetween, requirePositive } from '../require.ts';
import { requirePlane } from '../beam/arm-bending.ts';
import { requireSegments, type ArmSegment } from '../beam/index.ts';
import type { Plane } from '../section/index.ts';
import { assembleArm, type ArmSystem } from './modes-assembly.ts';
import { timesVector } from './modes-banded.ts';
import type { Eigenpair } from './modes-small.ts';
import { lowestModes } from './modes-solver.ts';
import { clear, space, take } from './modes-space.ts';
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

/** Nothing of it leaves armModes. */
const memory = space();

/**
 * Lowest natural frequencies and shapes of a stepped arm with its motor, in one plane: Timoshenko's beam in finite elements
 * with consistent mass. Sideways modes include the twist that the motor's height brings in.
 * @param input - segments, plane, motor, root springs
 * @returns modes, ascending, with warnings
 * @validity small movements, no damping, body far heavier than the arm; play at the root is not in it
 * @throws InputError when a number is out of range, a layer has no density, or the numbers lie too far apart
 * @source przemieniecki-1968-matrix, § 11.4; bathe-1996-finite, § 11.6
 */
export function armModes(input: ArmModesInput): { modes: readonly ArmMode[]; warnings: readonly Warning[] } {
  requireModesInput(input);
  const { segments, plane, motor, rootBending, rootTwist, count = 2, elements = 16 } = input;
  clear(memory);
  const system = assembleArm(
    { segments, plane, motor, rootBending, rootTwist, elements: Math.floor(elements) },
    memory,
  );
  const wanted = Math.floor(count);
  const modes = lowestModes(system.stiffness, system.mass, wanted, memory).map((mode) => ({
    frequency: Math.sqrt(mode.value) / (2 * Math.PI),
    twistShare: plane === 'vertical' ? 0 : twistShare(system, mode),
    shape: shapeOf(system, mode.vector, plane),
  }));
  if (modes.length < wanted || !modes.every(isMode)) {
    throw new InputError({
      parameter: 'segments',
      quantity: 'stiffness and mass of the arm',
      value: segments,
      rule: 'lie too far apart to compute with',
    });
  }
  return { modes, warnings: beamModelWarnings({ segments, plane, highestFrequency: modes.at(-1)!.frequency }) };
}

const isMode = ({ frequency, twistShare, shape }: ArmMode): boolean =>
  frequency > 0 &&
  [frequency, twistShare].every(Number.isFinite) &&
  shape.every(({ deflection, twist }) => Number.isFinite(deflection) && Number.isFinite(twist));

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
  const [twist, force] = [take(memory, vector.length), take(memory, vector.length)];
  for (let node = 0; node < stations.length; node++) {
    const place = unknown(node, 2);
    if (place >= 0) twist[place] = vector[place]!;
  }
  timesVector(stiffness, twist, force);
  let energy = 0;
  for (let i = 0; i < twist.length; i++) energy += force[i]! * twist[i]!;
  // Of all springs together it is ω², as the vector has length 1 in the measure of the mass.
  return Math.min(1, Math.max(0, energy / value));
}

function shapeOf({ stations, unknown }: ArmSystem, vector: Float64Array, plane: Plane): ArmMode['shape'] {
  const at = (node: number, kind: number): number => {
    const place = unknown(node, kind);
    return place < 0 ? 0 : vector[place]!;
  };
  const largest = (kind: number): number => {
    let most = 0;
    for (let node = 0; node < stations.length; node++) {
      const value = at(node, kind);
      if (Math.abs(value) > Math.abs(most)) most = value;
    }
    return most;
  };
  const deflection = largest(0);
  const twist = plane === 'vertical' ? 0 : largest(2);
  // Pure twist leaves rounding in the deflection: that is not a scale.
  const scale = Math.abs(deflection) > 1e-9 * Math.abs(twist) ? deflection : twist;
  return stations.map((x, node) => ({
    x,
    deflection: at(node, 0) / scale,
    twist: plane === 'vertical' ? 0 : at(node, 2) / scale,
  }));
}
