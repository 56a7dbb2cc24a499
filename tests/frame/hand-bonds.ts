import {
  dropForce,
  frame,
  holeTakes,
  leg,
  notched,
  outer,
  shown,
  sleeveSecond,
  strike,
  tubeSecond,
} from './hand-sheet.ts';

/**
 * Glue and tow of the Dunnock D by hand: the motor plate on its tube, the wrap over it, the sleeve in the root. N, mm, MPa.
 * Integrals are summed strip by strip, as in a spreadsheet's column. Nothing of the package; own derivation from the
 * sources named, no published number.
 * Gere: J. M. Gere, Mechanics of Materials, 6th edition, 2004. Hibbeler: R. C. Hibbeler, Mechanics of Materials.
 */
const { sqrt, hypot, exp } = Math;

/** Middle of each of n strips from `from` to `to`, and their width: a column of cells. */
function strips(from: number, to: number, n: number): { x: number; dx: number }[] {
  const dx = (to - from) / n;
  return Array.from({ length: n }, (_, i) => ({ x: from + (i + 0.5) * dx, dx }));
}
const sum = (cells: readonly number[]): number => cells.reduce((a, b) => a + b, 0);

/* Motor plate: flat, 26 mm long, on a tube of 7 mm radius, 0.2 mm of glue where they are nearest. */
const R = 7;
const LINE = 0.2;
const LENGTH = 26;
/** Plate at 7.2 mm above the tube's axis, tube below it on a circle: Pythagoras. */
const gap = (x: number): number => R + LINE - sqrt(R ** 2 - x ** 2);
/** Paste fills up to 1 mm (common practice, no source): from there the circle lies 0.8 mm lower than at its top. */
const filled = sqrt(R ** 2 - (R - 0.8) ** 2);
/** A round stick of 2 mm touches tube and plate: its middle is 7 + 2 from the tube's and 7.2 − 2 above it. Pythagoras. */
const stick = sqrt((R + 2) ** 2 - (R + LINE - 2) ** 2) - 2;
const edge = Math.max(filled, stick);
/**
 * Glue as a section of many materials, each strip as stiff as it is thin: the method of the transformed section, Gere,
 * § 6.3, with 1/gap for the modulus. Area and second moment of what is left of it, for each mm along the tube.
 */
const column = strips(0, edge, 20000);
const area = 2 * sum(column.map(({ x, dx }) => dx / gap(x)));
const second = 2 * sum(column.map(({ x, dx }) => (x ** 2 * dx) / gap(x)));
/** Turning in its own plane, both second moments together: Gere, § 3.3, and Hibbeler, appendix A, polar moment. */
const polar = LENGTH * second + (LENGTH ** 3 / 12) * area;

interface OnMount {
  shear?: number;
  lift?: number;
  torque?: number;
  tipping?: number;
}

/**
 * Share of the glue that a load uses. Pull N/A + M c/I (Gere, § 5.12), shear V/A + T r/J, each strip by its own 1/gap.
 * Together as squares: J. C. Brewer, P. A. Lagace, Quadratic Stress Criterion for Initiation of Delamination, Journal of
 * Composite Materials 22, 1988, recalled. Strengths of the frame's file, 15 MPa in shear, 8 MPa across.
 */
export function glueUse({ shear = 0, lift = 0, torque = 0, tipping = 0 }: OnMount): number {
  const cells = strips(0, edge, 4000).map(({ x }) => {
    const slid = (shear / (LENGTH * area) + (torque * hypot(x, LENGTH / 2)) / polar) / gap(x);
    const even = lift / (LENGTH * area);
    const lengthwise = (even + (tipping * (LENGTH / 2)) / ((LENGTH ** 3 / 12) * area)) / gap(x);
    const sideways = (even + (tipping * x) / (LENGTH * second)) / gap(x);
    return hypot(slid / 15, Math.max(lengthwise, sideways) / 8);
  });
  return Math.max(...cells);
}

/* What the cases do to the mount. The blow lands 12 − 7 mm above the glue. Newton’s second law for the motor's 37.5 g. */
const LEVER = 12 - 7;
export const onMount = {
  thrust: { lift: 15, torque: 15 * 13.5 },
  'strike-vertical': { lift: (strike.vertical * frame.m.motor) / shown.vertical },
  'strike-sideways': { shear: strike.sideways, tipping: strike.sideways * LEVER },
  'strike-along': { shear: strike.along, tipping: strike.along * LEVER },
  drop: { lift: (4 * dropForce * frame.m.motor) / frame.m.all },
} as const satisfies Readonly<Record<string, OnMount>>;

/*
 * Wrap: two bands, 26 − 6 mm apart, whose legs meet the tube at the angle `leg`. Statics of the plate: lift on four sides;
 * tipped sideways it rocks on the tube's top, R − R cos ψ from the legs' line; lengthwise on the other band.
 */
export const wrapPull = ({ lift = 0, tipping = 0 }: OnMount): number =>
  lift / (4 * Math.sin(leg)) +
  Math.max(tipping / (2 * R * (1 - Math.cos(leg))), tipping / (2 * (LENGTH - 6) * Math.sin(leg)));
/**
 * Fibre: 3530 MPa, 230 GPa, 1.76 g/cm³, filaments of 7 µm: standard-modulus carbon fibre, data sheet CFA-001. Six turns of
 * 198 tex; hands reach half (the file's own guess).
 */
const fibre = (6 * 0.198e-3) / 1.76e-3;
/** Bent round 1 mm: strain d/(2r). Gere, § 5.4, strain y/ρ. */
const bent = 1 - (230e3 * (0.007 / 2 / 1)) / 3530;
/** 45 % of the band is fibre (estimate), 6 mm wide. */
const thick = fibre / 0.45 / 6;
/**
 * Ring round a pin, twelve times stiffer along than through (estimate): S. G. Lekhnitskii, Anisotropic Plates, 1968, as in
 * C. Willberg, lectures on fibre composites, 2023, lecture 13.
 */
const n = sqrt(12);
const c2n = (1 / (1 + thick)) ** (2 * n);
const inside = ((n * (1 + c2n)) / (1 - c2n)) * thick;
export const wrapHolds = (fibre * 3530 * 0.5 * bent) / inside;

/*
 * Sleeve in the root. Rate of transfer of a lap, O. Volkersen, as in C. Willberg, lectures on fibre composites, 2023,
 * seminar 14, exercise 3: w² = G/h (1/E₁t₁ + 1/E₂t₂). 800 MPa, 0.1 mm, both walls 1 mm at 90 GPa.
 */
const rate = sqrt((800 / 0.1) * (1 / 90e3 + 1 / 90e3));
const REACH = 48 - 10 - 24;
const TAPER = 3;
/** A taper of 3 mm as many small steps, each a lap's end of its own that hands over its part by 1 − exp(−w x). */
const steps = strips(0, TAPER, 4000);
const mean = (of: (from: number) => number): number => sum(steps.map(({ x, dx }) => of(x) * dx)) / TAPER;
/** Of the peak w N of a square end, at the end of the taper. */
const left = mean((from) => exp(-rate * (TAPER - from)));
/** Of its share that the sleeve carries at the outer screw. */
const handed = mean((from) => 1 - exp(-rate * (REACH - from)));
/** Peak of the lap: force of the sleeve's wall there times w. Tube and sleeve bend as one: Gere, § 6.3. Bond at 5.95 mm. */
export const bondPeak = (force: number): number =>
  left * rate * ((force * (70 - REACH) * 5.95) / (tubeSecond + sleeveSecond)) * 1;
/**
 * The bond breaks when the elastic triangle τ²/2G has the energy under the true curve, which yields at 15 MPa and goes on
 * to five times that strain (common practice): L. J. Hart-Smith, NASA CR-112235, 1973, plateau, recalled.
 */
const energy = 15 ** 2 / 800 / 2 + 15 * ((5 * 15) / 800);
export const bondBreaks = sqrt(2 * 800 * energy);

/** Least of strength over stress, in vertical or sideways bending: hole, sleeve's end, whole tube and sleeve at the root. */
export function sleeveReserve(force: number, direction: 'up' | 'across'): number {
  const tube = tubeSecond - holeTakes(14, 12, direction);
  const sleeve = sleeveSecond - holeTakes(11.8, 9.8, direction);
  const root = force * 70;
  const atHole = (outside: number) => (direction === 'up' ? sqrt((outside / 2) ** 2 - 1.6 ** 2) : outside / 2);
  const [share, whole] = [sleeve / (tube + sleeve), sleeveSecond / (tubeSecond + sleeveSecond)];
  // Just past a square end the stress is taken as 1.25 times as high: a stated guess, by what the taper leaves of it.
  const step = 1 + 0.25 * left;
  return Math.min(
    (notched * 600) / ((root * (1 - share * handed) * atHole(14)) / tube),
    (notched * 600) / ((root * share * handed * atHole(11.8)) / sleeve),
    600 / ((root * (1 - whole * handed) * 7) / tubeSecond),
    600 / ((step * force * (70 - REACH) * 7) / tubeSecond),
  );
}

/* Outer arm screw, M3 of class 10.9: as in `hand-sheet.ts`. Along the arm each screw takes half, over two planes. */
export const screw = {
  thrust: outer(15) / (1040 * 5.03),
  along: strike.along / 2 / (2 * 0.5 * 1040 * 5.03),
};
