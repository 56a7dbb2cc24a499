/**
 * Two members side by side, joined along an overlap by a layer that only shears. Member one brings the whole load in
 * at position 0; member two takes the whole load out at the far end. Flat laps, sleeves under pull, torque or bending
 * differ only in what "load" and "stiffness" stand for.
 */
export interface TransferGiven {
  /** Load carried through the joint: force, force per width or moment [N, N/m, N·m]. */
  load: number;
  /** Length of the overlap [m]. */
  overlap: number;
  /** Load per unit strain (or twist, or curvature) of the member loaded at position 0. */
  firstStiffness: number;
  /** The same of the member loaded at the far end. */
  secondStiffness: number;
  /** Load handed over per unit length and unit relative movement of the members. */
  layerStiffness: number;
}

export interface Transfer {
  /** Rate at which load passes over, `lambda` [1/m]. */
  lambda: number;
  /** `lambda` times overlap. */
  jointNumber: number;
  overlap: number;
  /** Load handed over per length at position 0. */
  atStart: number;
  /** Load handed over per length at the far end. */
  atEnd: number;
  peak: number;
  mean: number;
  /** Coefficient of the term that fades from position 0. */
  fromStart: number;
  /** Coefficient of the term that fades from the far end. */
  fromEnd: number;
}

/**
 * Load transfer of a lap by shear lag.
 * $$q'' = \lambda^2 q,\quad \lambda^2 = k\,(1/S_1 + 1/S_2),\quad q'(0) = -kN/S_1,\quad q'(L) = kN/S_2$$
 * @param given - stiffnesses, load and overlap, already validated by the caller
 * @returns transfer per length at the ends, its peak and mean, and the two coefficients of its course
 * @validity linear layer in pure shear, members that only stretch (or only twist, or only bend)
 * @source willberg-2023-lectures, seminar Aufgabe 3
 * @derivation With $N_1' = -q$, $N_2' = q$ and $q = k(u_2-u_1)$, each $u_i' = N_i/S_i$, differentiate twice. The
 * solution is written in two decaying exponentials, so that a long overlap does not overflow.
 */
export function loadTransfer({
  load,
  overlap,
  firstStiffness,
  secondStiffness,
  layerStiffness,
}: TransferGiven): Transfer {
  const lambda = Math.sqrt(layerStiffness * (1 / firstStiffness + 1 / secondStiffness));
  const jointNumber = lambda * overlap;
  const fade = Math.exp(-jointNumber);
  const closing = -Math.expm1(-2 * jointNumber);
  const first = (layerStiffness * load) / (lambda * firstStiffness);
  const second = (layerStiffness * load) / (lambda * secondStiffness);
  const fromStart = (first + second * fade) / closing;
  const fromEnd = (second + first * fade) / closing;
  const atStart = fromStart + fromEnd * fade;
  const atEnd = fromEnd + fromStart * fade;
  return {
    lambda,
    jointNumber,
    overlap,
    atStart,
    atEnd,
    peak: Math.max(atStart, atEnd),
    mean: load / overlap,
    fromStart,
    fromEnd,
  };
}

/**
 * Load handed over per length at one position of a lap.
 * $$q(x) = A e^{-\lambda x} + B e^{-\lambda (L-x)}$$
 * @param transfer - result of `loadTransfer`
 * @param position - distance from the end where member one is fully loaded [m]
 * @returns load per length, in the unit of the load over metre
 * @validity positions inside the overlap
 * @derivation See `loadTransfer`.
 */
export function transferAt({ lambda, overlap, fromStart, fromEnd }: Transfer, position: number): number {
  return fromStart * Math.exp(-lambda * position) + fromEnd * Math.exp(-lambda * (overlap - position));
}
