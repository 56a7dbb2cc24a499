/**
 * The stepped arm with its first two modes, against the same model built and solved with a general matrix package: same
 * elements, same mesh, same stiffness and mass. Both are timed in turn by what their one thread has had of a processor, and
 * the ratio is taken in each round, so that whatever else the machine does weighs on neither.
 */
import { CholeskyDecomposition, EigenvalueDecomposition, Matrix, inverse } from 'ml-matrix';
import { rigidity, type ArmSegment } from '../../shared/src/beam/index.ts';
import { ALUMINIUM_7075_T6, ROLL_WRAPPED_TUBE, type Material } from '../../shared/src/material/index.ts';
import { roundTubeSection, type RoundTube } from '../../shared/src/section/index.ts';
import { armModes, cylinderMotor, type ArmModesInput } from '../../shared/src/vibration/index.ts';
import {
  bendingMass,
  bendingStiffness,
  twistElement,
  type ElementMatrix,
} from '../../shared/src/vibration/modes-element.ts';

const ELEMENTS = 16;
const ROUNDS = 25;
const WARM_UP = 1500;
/** Runs in one timing: the clock of a thread ticks in milliseconds. */
const IN_A_ROW = { ours: 2000, theirs: 60 };

const layer = (material: Material, tube: RoundTube) => ({
  section: roundTubeSection(tube),
  youngsModulus: material.youngsModulus.typical,
  shearModulus: material.shearModulus.typical,
  density: material.density.typical,
});
const tube = layer(ROLL_WRAPPED_TUBE, { outerDiameter: 0.014, wall: 1e-3 });
/** The tube arm of the Dunnock: doubler in the root, bare tube, collar of the motor plate. */
const segments: readonly ArmSegment[] = [
  { length: 0.025, layers: [tube, layer(ROLL_WRAPPED_TUBE, { outerDiameter: 0.012, wall: 1e-3 })] },
  { length: 0.055, layers: [tube] },
  { length: 0.015, layers: [tube, layer(ALUMINIUM_7075_T6, { outerDiameter: 0.0165, wall: 1.25e-3 })] },
];
const motor = cylinderMotor({ mass: 0.04, diameter: 0.028, height: 0.02, offset: 0.018 });
const arm = (plane: ArmModesInput['plane']): ArmModesInput => ({
  segments,
  plane,
  motor,
  rootBending: 3000,
  rootTwist: 1500,
  elements: ELEMENTS,
});

/** Deflection held at the root, springs on the rest: row 0 is left out at the end. */
function assembled({ plane, rootBending = 0, rootTwist = 0 }: ArmModesInput): { stiffness: Matrix; mass: Matrix } {
  const kinds = plane === 'vertical' ? 2 : 3;
  const whole = segments.reduce((sum, { length }) => sum + length, 0);
  const parts = segments.map((segment) => {
    const count = Math.max(2, Math.ceil((ELEMENTS * segment.length) / whole));
    const sum = (of: (one: Required<ArmSegment['layers'][number]>) => number) =>
      segment.layers.reduce((total, one) => total + of(one as Required<typeof one>), 0);
    const values = {
      length: segment.length / count,
      ...rigidity(segment, plane),
      mass: sum(({ density, section }) => density * section.area),
      rotary: sum(({ density, section }) => density * section[plane].secondMomentOfArea),
      polar: sum(
        ({ density, section }) =>
          density * (section.vertical.secondMomentOfArea + section.horizontal.secondMomentOfArea),
      ),
    };
    return { count, bend: bendingStiffness(values), move: bendingMass(values), twist: twistElement(values) };
  });
  const size = (parts.reduce((sum, { count }) => sum + count, 0) + 1) * kinds;
  const [stiffness, mass] = [Matrix.zeros(size, size), Matrix.zeros(size, size)];
  const add = (to: Matrix, places: readonly number[], block: ElementMatrix) =>
    block.forEach((row, i) =>
      row.forEach((value, j) => to.set(places[i]!, places[j]!, to.get(places[i]!, places[j]!) + value)),
    );
  let first = 0;
  for (const { count, bend, move, twist } of parts) {
    for (let i = 0; i < count; i++, first += kinds) {
      const bending = [first, first + 1, first + kinds, first + kinds + 1];
      add(stiffness, bending, bend);
      add(mass, bending, move);
      if (kinds === 2) continue;
      add(stiffness, [first + 2, first + 5], twist.stiffness);
      add(mass, [first + 2, first + 5], twist.mass);
    }
  }
  add(stiffness, [1], [[rootBending]]);
  if (kinds === 3) add(stiffness, [2], [[rootTwist]]);
  const lever = motor.mass * motor.offset;
  if (kinds === 2)
    add(
      mass,
      [first, first + 1],
      [
        [motor.mass, 0],
        [0, motor.pitchInertia + lever * motor.offset],
      ],
    );
  else {
    const roll = motor.rollInertia + lever * motor.offset;
    add(
      mass,
      [first, first + 1, first + 2],
      [
        [motor.mass, 0, lever],
        [0, motor.yawInertia, 0],
        [lever, 0, roll],
      ],
    );
  }
  const free = (matrix: Matrix) => matrix.subMatrix(1, size - 1, 1, size - 1);
  return { stiffness: free(stiffness), mass: free(mass) };
}

/** K = L Lᵀ, then the largest eigenvalues of L⁻¹ M L⁻ᵀ: one over the lowest ω². */
function general(input: ArmModesInput): number[] {
  const { stiffness, mass } = assembled(input);
  const reduction = inverse(new CholeskyDecomposition(stiffness).lowerTriangularMatrix);
  const reduced = reduction.mmul(mass).mmul(reduction.transpose());
  const { realEigenvalues } = new EigenvalueDecomposition(reduced, { assumeSymmetric: true });
  return [...realEigenvalues]
    .sort((a, b) => b - a)
    .slice(0, 2)
    .map((value) => 1 / (2 * Math.PI * Math.sqrt(value)));
}

/** Microseconds of one run. */
function time(run: () => unknown, times: number): number {
  const started = process.threadCpuUsage();
  for (let i = 0; i < times; i++) run();
  const { user, system } = process.threadCpuUsage(started);
  return (user + system) / times;
}
const median = (numbers: readonly number[]): number => [...numbers].sort((a, b) => a - b)[numbers.length >> 1] ?? 0;

export function benchSteppedArm(): void {
  for (const plane of ['vertical', 'horizontal'] as const) {
    const input = arm(plane);
    const ours = () => armModes(input);
    const theirs = () => general(input);
    for (let i = 0; i < WARM_UP; i++) for (const run of [ours, theirs]) run();
    const rounds = Array.from({ length: ROUNDS }, () => ({
      ours: time(ours, IN_A_ROW.ours),
      theirs: time(theirs, IN_A_ROW.theirs),
    }));
    const expected = theirs();
    const apart = Math.max(...ours().modes.map(({ frequency }, i) => Math.abs(frequency / expected[i]! - 1)));
    const [small, large] = [median(rounds.map((one) => one.ours)), median(rounds.map((one) => one.theirs))];
    const ratio = median(rounds.map((one) => one.theirs / one.ours));
    console.info(
      `stepped arm, ${plane}, two modes, ${ELEMENTS} elements: ${small.toFixed(0)} µs against ${large.toFixed(0)} µs with ml-matrix, ${ratio.toFixed(1)} times faster (median of ${ROUNDS} rounds); largest difference ${apart.toExponential(1)}`,
    );
  }
}
