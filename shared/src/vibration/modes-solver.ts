import { factor, solve, timesVector, type Banded } from './modes-banded.ts';
import { symmetricEigen } from './modes-small.ts';

export interface Eigenpair {
  /** ω² [rad²/s²]. */
  value: number;
  vector: Float64Array;
}

/** More vectors than asked for, so that the last one wanted converges as fast as the first. */
const SPARE = 3;
const SETTLED = 1e-14;
const MOST_ROUNDS = 100;

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
  let basis: Float64Array[] = Array.from({ length: vectors }, (_, j) => Float64Array.from({ length: size }, (__, i) => Math.sin((j + 1.37) * (i + 1.61) ** 1.1)));
  let values: number[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    basis = orthonormal(
      basis.map((x) => solve(held, timesVector(mass, x))),
      mass,
    );
    const stiff = basis.map((x) => timesVector(stiffness, x));
    const small = symmetricEigen(basis.map((x, i) => basis.map((y, j) => (i <= j ? dot(x, stiff[j]!) : dot(y, stiff[i]!)))));
    basis = small.vectors.map((weights) => combine(basis, weights));
    const last = values;
    values = small.values.slice(0, count);
    if (last.length > 0 && values.every((value, i) => Math.abs(value - last[i]!) <= SETTLED * value)) break;
  }
  return values.map((value, i) => ({ value, vector: basis[i]! }));
}

const combine = (basis: readonly Float64Array[], weights: readonly number[]): Float64Array =>
  Float64Array.from(basis[0]!, (_, i) => basis.reduce((sum, x, k) => sum + x[i]! * weights[k]!, 0));

/** Gram-Schmidt in the measure of M, twice, because once loses digits when vectors are nearly alike. */
function orthonormal(vectors: readonly Float64Array[], mass: Banded): Float64Array[] {
  const done: { x: Float64Array; mx: Float64Array }[] = [];
  for (const vector of vectors) {
    let x = vector;
    for (let pass = 0; pass < 2; pass++) {
      const size = Math.sqrt(dot(x, timesVector(mass, x)));
      x = x.map((entry) => entry / size);
      for (const other of done) {
        const share = dot(x, other.mx);
        x = x.map((entry, i) => entry - share * other.x[i]!);
      }
    }
    const mx = timesVector(mass, x);
    const size = Math.sqrt(dot(x, mx));
    done.push({ x: x.map((entry) => entry / size), mx: mx.map((entry) => entry / size) });
  }
  return done.map(({ x }) => x);
}
