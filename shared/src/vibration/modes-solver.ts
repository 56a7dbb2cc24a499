import { factor, solve, timesVector, type Banded, type Factor } from './modes-banded.ts';
import { settle } from './modes-tridiagonal.ts';
import { add, dot, scaled, takeOut, type Direction } from './modes-vectors.ts';

export interface Eigenpair {
  /** ω² [rad²/s²]. */
  value: number;
  /** Of length 1 in the measure of M. */
  vector: Float64Array;
}

/** Largest error of an eigenvalue, as a share of it. */
const SETTLED = 1e-13;
/** So many vectors more than modes settle an arm with a motor: before that there is no need to look. */
const SPARE = 3;
const MOST_VECTORS = 80;
/** How far above the last mode the modes are counted: well above the rounding of the finest mesh. */
const ABOVE = 1 + 1e-4;

/**
 * The lowest modes of K x = λ M x: Lanczos' vectors of K⁻¹ M, kept apart in the measure of M, and a count by signs that no
 * mode was passed over, as one of two equal ones may be.
 * @param stiffness - K, positive definite
 * @param mass - M, positive definite
 * @param count - how many modes
 * @returns pairs, ascending
 * @validity far cheaper than a general solver where the band is narrow
 * @throws InputError through the function that assembles
 * @source bathe-1996-finite, § 11.5, Lanczos iteration, and § 11.4, Sturm sequence
 */
export function lowestModes(stiffness: Banded, mass: Banded, count: number): Eigenpair[] {
  const held = factor(stiffness);
  const wanted = Math.min(count, stiffness.size);
  let found: Eigenpair[] = [];
  for (let missing = wanted; missing > 0; ) {
    const more = lanczos(held, mass, missing, found);
    found = [...found, ...more].sort((a, b) => a.value - b.value);
    const limit = found[wanted - 1]!.value * ABOVE;
    if (!more.some(({ value }) => value < limit)) break;
    const below = found.reduce((sum, { value }) => sum + (value < limit ? 1 : 0), 0);
    missing = factor(stiffness, { share: limit, of: mass }).negative - below;
  }
  return found.slice(0, wanted);
}

/** Loads that no mode is blind to, the same each time; each further start has its own. */
function anyLoads(size: number, start: number): Float64Array {
  const loads = new Float64Array(size);
  for (let i = 0, share = 0.5 + 0.1 * start; i < size; i++) {
    share = (share + 0.6180339887498949) % 1;
    loads[i] = 0.25 + share;
  }
  return loads;
}

function lanczos(held: Factor, mass: Banded, wanted: number, found: readonly Eigenpair[]): Eigenpair[] {
  const most = Math.min(held.size - found.length, MOST_VECTORS);
  const kept: Direction[] = found.map(({ vector }) => ({ x: vector, mx: timesVector(mass, vector) }));
  const basis: Direction[] = [];
  const [diagonal, beside]: [number[], number[]] = [[], []];
  const next = solve(held, anyLoads(held.size, found.length));
  for (;;) {
    // Against all of them, not the last two alone: rounding would bring the first ones back.
    takeOut(next, kept);
    const pull = timesVector(mass, next);
    const length = Math.sqrt(dot(next, pull));
    if (basis.length > 0) beside.push(length);
    const last = basis.length === most || !(length > 0);
    if (last || basis.length >= wanted + SPARE) {
      const modes = settledModes({ basis, diagonal, beside, wanted, last });
      if (modes) return modes;
    }
    const direction = { x: scaled(next, 1 / length), mx: scaled(pull, 1 / length) };
    basis.push(direction);
    kept.push(direction);
    next.set(direction.mx);
    solve(held, next);
    if (basis.length > 1) add(next, -length, basis[basis.length - 2]!.x);
    const own = dot(next, direction.mx);
    diagonal.push(own);
    add(next, -own, direction.x);
  }
}

interface Small {
  basis: readonly Direction[];
  diagonal: readonly number[];
  beside: readonly number[];
  wanted: number;
  /** Take what there is. */
  last: boolean;
}

/** The modes as the small problem has them; none while one is still on the move. */
function settledModes({ basis, diagonal, beside, wanted, last }: Small): Eigenpair[] | undefined {
  const size = basis.length;
  const { values, vectors } = settle(diagonal, beside, size);
  const order = Array.from(values, (_, i) => i)
    .sort((i, j) => values[j]! - values[i]!)
    .slice(0, wanted);
  const unsettled = (i: number): boolean => {
    const [value, residual] = [values[i]!, Math.abs(beside[size - 1]! * vectors[(size - 1) * size + i]!)];
    let gap = value;
    for (let j = 0; j < size; j++) if (j !== i) gap = Math.min(gap, Math.abs(value - values[j]!));
    // The error is below the residual, and below its square over the gap to the next one.
    return residual > SETTLED * value && residual * residual > SETTLED * value * gap;
  };
  if (!last && order.some(unsettled)) return undefined;
  return order.map((i) => {
    const vector = new Float64Array(basis[0]!.x.length);
    basis.forEach(({ x }, k) => add(vector, vectors[k * size + i]!, x));
    return { value: 1 / values[i]!, vector };
  });
}
