import { factor, solve, timesVector, type Banded, type Factor } from './modes-banded.ts';
import { settledModes, type Eigenpair, type Small } from './modes-small.ts';
import type { Space } from './modes-space.ts';
import { addRow, directions, roomier, scaleRow, share, takeOut, type Directions } from './modes-vectors.ts';

/** Before this many vectors there is no need to look: most arms settle then, some need one or two more. */
const firstLook = (wanted: number): number => 2 * wanted + 1;
const MOST_VECTORS = 80;
const MOST_STARTS = 12;
/** Share of a vector that is rounding and no more. */
const NOTHING = 1e-14;
/** How far above the last mode the modes are counted: well above the rounding of the finest mesh. */
const ABOVE = 1 + 1e-4;

/**
 * The lowest modes of K x = λ M x: Lanczos' vectors of K⁻¹ M, kept apart in the measure of M, and a count by signs that no
 * mode was passed over, as one of two equal ones may be.
 * @param stiffness - K, positive definite
 * @param mass - M, positive definite
 * @param count - how many modes
 * @param memory - where the vectors are put
 * @returns pairs, ascending
 * @validity far cheaper than a general solver where the band is narrow
 * @throws InputError through the function that assembles
 * @source bathe-1996-finite, § 11.5, Lanczos iteration, and § 11.4, Sturm sequence
 */
export function lowestModes(stiffness: Banded, mass: Banded, count: number, memory: Space): Eigenpair[] {
  const held = factor(stiffness, memory);
  const wanted = Math.min(count, stiffness.size);
  let found: Eigenpair[] = [];
  let missing = wanted;
  for (let start = 0; missing > 0 && start < MOST_STARTS; start++) {
    const more = lanczos({ held, mass, wanted: missing, found, start, memory });
    found = [...found, ...more].sort((a, b) => a.value - b.value);
    missing = wanted - found.length;
    if (missing > 0) continue;
    const limit = found[wanted - 1]!.value * ABOVE;
    const below = found.reduce((sum, { value }) => sum + (value < limit ? 1 : 0), 0);
    missing = factor(stiffness, memory, { share: limit, of: mass }).negative - below;
  }
  return found.slice(0, wanted);
}

interface Search {
  held: Factor;
  mass: Banded;
  wanted: number;
  found: readonly Eigenpair[];
  /** How often the search has begun before. */
  start: number;
  memory: Space;
}

/** The first row from a motion that grows towards the tip, as the lowest modes do; each start grows in its own way. */
function begin({ held, mass, start }: Search, rows: Directions, row: number): void {
  const at = row * rows.size;
  for (let i = 0; i < rows.size; i++) rows.x[at + i] = ((i + 1) / rows.size) ** (1 + start);
  timesVector(mass, rows.x, rows.mx, at);
  for (let i = at; i < at + rows.size; i++) rows.x[i] = rows.mx[i]!;
  solve(held, rows.x, at);
}

/** K⁻¹ M of the row before, less its shares of the last two; adds to the small problem. */
function step({ held }: Search, { rows, diagonal, beside, first }: Small, row: number): void {
  const at = row * rows.size;
  for (let i = at; i < at + rows.size; i++) rows.x[i] = rows.mx[i - rows.size]!;
  solve(held, rows.x, at);
  if (row > first + 1) addRow(rows, row, -beside[row - first - 2]!, row - 2);
  const own = share(rows, row, row - 1);
  diagonal.push(own);
  addRow(rows, row, -own, row - 1);
}

/** Modes apart from those already found, whose vectors are the first rows. */
function lanczos(search: Search): Eigenpair[] {
  const { held, mass, wanted, found, memory } = search;
  const { size } = held;
  const first = found.length;
  const most = Math.min(size - first, MOST_VECTORS);
  const small: Small = {
    rows: directions(size, first + firstLook(wanted) + 3, memory),
    first,
    diagonal: [],
    beside: [],
  };
  found.forEach(({ vector }, k) => {
    small.rows.x.set(vector, k * size);
    timesVector(mass, small.rows.x, small.rows.mx, k * size);
  });
  for (let row = first; ; row++) {
    const { rows, diagonal, beside } = small;
    if (row === first) begin(search, rows, row);
    else step(search, small, row);
    const whole = row > first ? diagonal[0]! : lengthOf(rows, mass, row);
    // Against all of them, not the last two alone: rounding would bring the first ones back.
    takeOut(rows, row);
    const length = lengthOf(rows, mass, row);
    if (row > first) beside.push(length);
    // Nothing but rounding is left where all there is to find has been found.
    const last = diagonal.length === most || !(length > NOTHING * whole);
    if (last || diagonal.length >= firstLook(wanted)) {
      const modes = settledModes(small, { wanted, last, memory });
      if (modes) return modes;
    }
    scaleRow(rows, row, 1 / length);
    if (row + 1 === rows.rows) small.rows = roomier(rows, memory);
  }
}

function lengthOf(rows: Directions, mass: Banded, row: number): number {
  timesVector(mass, rows.x, rows.mx, row * rows.size);
  return Math.sqrt(share(rows, row, row));
}
