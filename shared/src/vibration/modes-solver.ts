import { factor, solve, timesVector, type Banded } from './modes-banded.ts';
import { symmetricEigen } from './modes-small.ts';

export interface Eigenpair {
  /** ω² [rad²/s²]. */
  value: number;
  vector: Float64Array;
}

/** More vectors than asked for, so that the last one wanted converges as fast as the first. */
const SPARE = 3;
const SETTLED = 1e-13;
const MOST_ROUNDS = 60;

const dot = (x: Float64Array, y: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < x.length; i++) sum += x[i]! * y[i]!;
  return sum;
};

/**
 * The lowest modes of K x = λ M x by subspace iteration: solve with K, keep the vectors apart in the measure of M, settle
 * the small problem that is left.
 * @param stiffness - K, positive definite
 * @param mass - M, positive definite
 * @param count - how many modes
 * @returns pairs, ascending
 * @validity far cheaper than a general solver where the band is narrow
 * @throws InputError through the function that assembles
 * @source bathe-1996-finite, § 11.6
 */
export function lowestModes(stiffness: Banded, mass: Banded, count: number): Eigenpair[] {
  const { size } = stiffness;
  const held = factor(stiffness);
  const vectors = Math.min(size, count + SPARE);
  // Any start that is not blind to a mode will do; the same one each time.
  let basis: Float64Array[] = Array.from({ length: vectors }, (_, j) =>
    Float64Array.from({ length: size }, (__, i) => Math.sin((j + 1.37) * (i + 1.61) ** 1.1)),
  );
  basis = orthonormal(basis, mass);
  let values: number[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const moving = basis.map((x) => timesVector(mass, x));
    const next = moving.map((x) => solve(held, x));
    // The flexibility in this basis: its largest values are 1/ω², good to the last digits, as those of K itself are not.
    const small = symmetricEigen(
      moving.map((x, i) => moving.map((y, j) => (i <= j ? dot(x, next[j]!) : dot(y, next[i]!)))),
    );
    basis = orthonormal(
      small.vectors.reverse().map((weights) => combine(next, weights)),
      mass,
    );
    const last = values;
    values = small.values
      .reverse()
      .slice(0, count)
      .map((value) => 1 / value);
    if (last.length > 0 && values.every((value, i) => Math.abs(value - last[i]!) <= SETTLED * value)) break;
  }
  return values.map((value, i) => ({ value, vector: basis[i]! }));
}

function combine(basis: readonly Float64Array[], weights: readonly number[]): Float64Array {
  const sum = new Float64Array(basis[0]!.length);
  basis.forEach((x, k) => {
    const weight = weights[k]!;
    for (let i = 0; i < sum.length; i++) sum[i]! += weight * x[i]!;
  });
  return sum;
}

/** Gram-Schmidt in the measure of M, twice, because once loses digits when vectors are nearly alike. */
function orthonormal(vectors: readonly Float64Array[], mass: Banded): Float64Array[] {
  const done: { x: Float64Array; mx: Float64Array }[] = [];
  for (const vector of vectors) {
    const x = vector;
    for (let pass = 0; pass < 2; pass++) {
      scale(x, 1 / Math.sqrt(dot(x, timesVector(mass, x))));
      for (const other of done) {
        const share = dot(x, other.mx);
        for (let i = 0; i < x.length; i++) x[i]! -= share * other.x[i]!;
      }
    }
    const mx = timesVector(mass, x);
    const size = 1 / Math.sqrt(dot(x, mx));
    scale(x, size);
    scale(mx, size);
    done.push({ x, mx });
  }
  return done.map(({ x }) => x);
}

function scale(x: Float64Array, by: number): void {
  for (let i = 0; i < x.length; i++) x[i]! *= by;
}
