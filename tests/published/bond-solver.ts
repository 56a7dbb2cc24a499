/**
 * Independent solutions of the bonded-joint models, stepped numerically from the governing equations and not from the
 * closed forms that the package uses.
 */

/** Classical fourth-order step of a system of ordinary equations. */
function step(state: readonly number[], h: number, slope: (s: readonly number[]) => number[]): number[] {
  const add = (a: readonly number[], b: readonly number[], f: number): number[] =>
    a.map((v, i) => v + f * (b[i] as number));
  const k1 = slope(state);
  const k2 = slope(add(state, k1, h / 2));
  const k3 = slope(add(state, k2, h / 2));
  const k4 = slope(add(state, k3, h));
  return state.map(
    (v, i) => v + (h / 6) * ((k1[i] as number) + 2 * (k2[i] as number) + 2 * (k3[i] as number) + (k4[i] as number)),
  );
}

function march(
  start: readonly number[],
  length: number,
  steps: number,
  slope: (s: readonly number[]) => number[],
): number[] {
  let state = [...start];
  for (let i = 0; i < steps; i += 1) state = step(state, length / steps, slope);
  return state;
}

/**
 * Two members joined by a shear layer: N1' = -q, q' = k (N2/S2 - N1/S1), N2 = N - N1; N1 = N at the start and 0 at the
 * end. Shot twice from the start; linear, so the right q(0) is their mix.
 */
export function solveLap(given: { load: number; overlap: number; first: number; second: number; layer: number }): {
  start: number;
  end: number;
} {
  const { load, overlap, first, second, layer } = given;
  const slope = ([n, q]: readonly number[]): number[] => [
    -(q as number),
    layer * ((load - (n as number)) / second - (n as number) / first),
  ];
  const shoot = (q: number): number[] => march([load, q], overlap, 4000, slope);
  const scale = load / overlap;
  const a = shoot(0)[0] as number;
  const b = shoot(scale)[0] as number;
  const start = (scale * a) / (a - b);
  // The end from the same equation turned round: members swap places.
  const back = ([n, q]: readonly number[]): number[] => [
    -(q as number),
    layer * ((load - (n as number)) / first - (n as number) / second),
  ];
  const c = march([load, 0], overlap, 4000, back)[0] as number;
  const d = march([load, scale], overlap, 4000, back)[0] as number;
  return { start, end: (scale * c) / (c - d) };
}

/**
 * Balanced double lap with an adhesive that yields: slip s from the middle outwards, s'' = 4 τ(s)/S, s' = 0 in the
 * middle, s = h(γe+γp) at the end. The load is 4 ∫τ over half the overlap.
 */
export function solvePlasticDoubleLap(given: {
  shearModulus: number;
  thickness: number;
  yieldShear: number;
  plasticRatio: number;
  stiffness: number;
  overlap: number;
}): number {
  const { shearModulus, thickness, yieldShear, plasticRatio, stiffness, overlap } = given;
  const yieldSlip = (thickness * yieldShear) / shearModulus;
  const breakSlip = yieldSlip * (1 + plasticRatio);
  const shear = (s: number): number => Math.min((shearModulus * s) / thickness, yieldShear);
  const slope = ([s, v]: readonly number[]): number[] => [
    v as number,
    (4 * shear(s as number)) / stiffness,
    4 * shear(s as number),
  ];
  const shoot = (middle: number): number[] => march([middle, 0, 0], overlap / 2, 4000, slope);
  let low = 0;
  let high = breakSlip;
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if ((shoot(middle)[0] as number) > breakSlip) high = middle;
    else low = middle;
  }
  return shoot(low)[2] as number;
}

/**
 * Single lap as a beam under tension with an offset: arm D w'' = P (w - a x), overlap 8 D w'' = P (w - a x + t/2),
 * held at the arm's end and, by symmetry, in the middle; a = t/2 over the distance between. Gives k of M = k P t/2 at the
 * edge of the overlap.
 */
export function solveEdgeMoment(given: {
  load: number;
  modulus: number;
  poisson: number;
  thickness: number;
  half: number;
  arm: number;
}): number {
  const { load, modulus, poisson, thickness, half, arm } = given;
  const stiffness = (modulus * thickness ** 3) / (12 * (1 - poisson ** 2));
  const rise = thickness / 2 / (arm + half);
  const inArm = ([w, v, x]: readonly number[]): number[] => [
    v as number,
    (load / stiffness) * ((w as number) - rise * (x as number)),
    1,
  ];
  const inLap = ([w, v, x]: readonly number[]): number[] => [
    v as number,
    (load / (8 * stiffness)) * ((w as number) - rise * (x as number) + thickness / 2),
    1,
  ];
  const edge = (slope: number): number[] => march([0, slope, 0], arm, 4000, inArm);
  const middle = (slope: number): number => march(edge(slope), half, 4000, inLap)[0] as number;
  const a = middle(0);
  const b = middle(rise);
  const w = edge((rise * a) / (a - b))[0] as number;
  return (load * (rise * arm - w)) / ((load * thickness) / 2);
}

/**
 * A strip bonded on another that carries a steady load, both ends of the bonded one free: Ni' = q,
 * q' = k (Ni/Si - (N - Ni)/So), Ni = 0 at both ends. Gives the bond's transfer at an end and the load the patch has
 * taken up at a distance from it.
 */
export function solvePatch(given: {
  load: number;
  length: number;
  base: number;
  patch: number;
  layer: number;
  at: number;
}): { end: number; taken: number } {
  const { load, length, base, patch, layer, at } = given;
  const slope = ([n, q]: readonly number[]): number[] => [
    q as number,
    layer * ((n as number) / patch - (load - (n as number)) / base),
  ];
  const shoot = (q: number, over: number): number => march([0, q], over, 4000, slope)[0] as number;
  const scale = load / length;
  const a = shoot(0, length);
  const b = shoot(scale, length);
  const end = (scale * a) / (a - b);
  return { end, taken: shoot(end, at) };
}
