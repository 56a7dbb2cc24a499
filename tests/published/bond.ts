import {
  balancedDoubleLapStrength,
  bendingLapPeakShear,
  BEST_BOND_LINE,
  doubleLapPlateau,
  edgeMoment,
  LAP_SHEAR_LEVELS,
  meanLapShear,
  overlapByRule,
  scarfLengthByRule,
  scarfStress,
  singleLap,
  sleeveBond,
  sleeveBondArea,
  usefulOverlap,
} from '../../shared/src/bond/index.ts';
import { solveEdgeMoment, solveLap, solvePlasticDoubleLap } from './bond-solver.ts';
import type { MissingCheck, PublishedCase } from './row.ts';

const topic = 'bond';
const MM = 1e-3;
const MPA = 1e6;
const PER_MM = 1e3;

/** The joint of the seminar: 70 GPa sheets of 2 mm, 0.1 mm of adhesive at 800 MPa. */
const seminar = (overlap: number, force = 6000, width = 25) =>
  singleLap({
    loadPerWidth: (force / width) * PER_MM,
    overlap: overlap * MM,
    first: { modulus: 70e9, thickness: 2 * MM },
    second: { modulus: 70e9, thickness: 2 * MM },
    layer: { shearModulus: 800 * MPA, thickness: 0.1 * MM },
  });
const seminarRow = {
  topic,
  source: 'willberg-2023-lectures',
  where: 'seminar Krafteinleitung und Fügetechniken, Aufgabe 3 and Lösung 3',
} as const;
const seminarGiven = 'two sheets E 70 GPa, 2 mm; adhesive G 800 MPa, 0.1 mm';

const unequal = () =>
  singleLap({
    loadPerWidth: 200 * PER_MM,
    overlap: 20 * MM,
    first: { modulus: 70e9, thickness: MM },
    second: { modulus: 210e9, thickness: MM },
    layer: { shearModulus: 1000 * MPA, thickness: 0.2 * MM },
  });
const unequalSolved = () => solveLap({ load: 200e3, overlap: 20 * MM, first: 70e6, second: 210e6, layer: 1e9 / (0.2 * MM) });

const bendable = (load: number) => ({
  loadPerWidth: load * PER_MM,
  overlap: 12.7 * MM,
  adherend: { modulus: 70e9, thickness: 1.6 * MM },
  poisson: 0.33,
});
const bendableSolved = (load: number) =>
  solveEdgeMoment({ load: load * PER_MM, modulus: 70e9, poisson: 0.33, thickness: 1.6 * MM, half: 6.35 * MM, arm: 150 * MM });

const paste = { shearModulus: 600 * MPA, thickness: 0.15 * MM, yieldShear: 35 * MPA, plasticRatio: 10 };
const plastic = (overlap: number) => balancedDoubleLapStrength({ adhesive: paste, stiffness: 140e6, overlap: overlap * MM });
const plasticSolved = (overlap: number) => solvePlasticDoubleLap({ ...paste, stiffness: 140e6, overlap: overlap * MM });

const parts = { tubeOutside: 16 * MM, tubeInside: 14 * MM, sleeveOutside: 13.7 * MM, sleeveWall: 1.35 * MM };
const pulled = (overlap: number) =>
  sleeveBond({ ...parts, kind: 'axial', load: 1500, overlap: overlap * MM, tubeModulus: 80e9, sleeveModulus: 70e9, shearModulus: 1e9 });
const twisted = () =>
  sleeveBond({ ...parts, kind: 'torque', load: 8, overlap: 25 * MM, tubeModulus: 20e9, sleeveModulus: 26e9, shearModulus: 1e9 });
const bent = () =>
  sleeveBond({ ...parts, kind: 'bending', load: 8, overlap: 25 * MM, tubeModulus: 80e9, sleeveModulus: 70e9, shearModulus: 1e9 });
const ring = (outer: number, inner: number, power: number) => ((outer * MM) ** power - (inner * MM) ** power) * Math.PI;
const r = 6.925 * MM;
const solvedPull = () => {
  const { start, end } = solveLap({ load: 1500, overlap: 25 * MM, first: (80e9 * ring(16, 14, 2)) / 4, second: (70e9 * ring(13.7, 11, 2)) / 4, layer: (2 * Math.PI * r * 1e9) / (0.15 * MM) });
  return Math.max(start, end) / (2 * Math.PI * r);
};
const solvedTwist = () => {
  const { start, end } = solveLap({ load: 8, overlap: 25 * MM, first: (20e9 * ring(16, 14, 4)) / 32, second: (26e9 * ring(13.7, 11, 4)) / 32, layer: (2 * Math.PI * r ** 3 * 1e9) / (0.15 * MM) });
  return Math.max(start, end) / (2 * Math.PI * r ** 2);
};
/** Bond ring as 720 separate strips, each sheared by its own share of the relative rotation. */
const solvedBend = () => {
  const layer = Array.from({ length: 720 }, (_, i) => (i * Math.PI) / 360).reduce((sum, angle) => sum + ((1e9 / (0.15 * MM)) * (r * Math.sin(angle)) ** 2 * r * Math.PI) / 360, 0);
  const { start, end } = solveLap({ load: 8, overlap: 25 * MM, first: (80e9 * ring(16, 14, 4)) / 64, second: (70e9 * ring(13.7, 11, 4)) / 64, layer });
  // Shear at the extreme strip from the moment handed over: the strip's layer times the rotation that all share.
  return ((Math.max(start, end) / layer) * r * 1e9) / (0.15 * MM);
};
const sleeveGiven = '16/14 mm tube on a 13.7/11 mm sleeve, 0.15 mm of adhesive at 1 GPa, overlap 25 mm';

const insert = (bore: number, outside: number, overlap: number) =>
  sleeveBondArea({ tubeOutside: (bore + 2) * MM, tubeInside: bore * MM, sleeveOutside: outside * MM, sleeveWall: MM, overlap: overlap * MM }) / MM ** 2;

const plain = LAP_SHEAR_LEVELS['amine epoxy, not toughened'];
const tough = LAP_SHEAR_LEVELS['amine epoxy, rubber toughened'];
const petrie = { topic, source: 'petrie-2000-adhesives', where: 'Table 10.10, p. 369' } as const;

const published = 'published number';
const formula = 'published formula, our number';
const solver = 'own derivation or solver';

export const cases: PublishedCase[] = [
  { ...seminarRow, id: 'volkersen-joint-number', what: 'joint number of a single lap', kind: published, given: `${seminarGiven}; overlap 30 mm`, unit: '', expected: 10.14, compute: () => seminar(30).jointNumber, tolerance: { relative: 0.001 }, because: 'printed to four digits' },
  { ...seminarRow, id: 'volkersen-useful-overlap', what: 'overlap beyond which the peak stops falling', kind: published, given: seminarGiven, unit: 'mm', expected: 14.8, compute: () => usefulOverlap(seminar(30).lambda) / MM, tolerance: { relative: 0.002 }, because: 'printed to three digits' },
  { ...seminarRow, id: 'volkersen-mean', what: 'mean shear of a single lap', kind: published, given: `${seminarGiven}; overlap 30 mm, width 25 mm, 6000 N`, unit: 'MPa', expected: 8, compute: () => seminar(30).mean / MPA, tolerance: { relative: 0.0005 }, because: 'exact quotient' },
  { ...seminarRow, id: 'volkersen-peak', what: 'peak shear of a single lap', kind: published, given: `${seminarGiven}; overlap 30 mm, width 25 mm, 6000 N`, unit: 'MPa', expected: 40.6, compute: () => seminar(30).peak / MPA, tolerance: { relative: 0.002 }, because: 'printed to three digits, with coth taken as one' },
  { ...seminarRow, id: 'volkersen-peak-wide', what: 'twice the width halves the peak', kind: published, given: `${seminarGiven}; overlap 30 mm, width 50 mm, 6000 N`, unit: 'MPa', expected: 20.3, compute: () => seminar(30, 6000, 50).peak / MPA, tolerance: { relative: 0.002 }, because: 'printed to three digits' },
  { ...seminarRow, id: 'volkersen-peak-long', what: 'twice the overlap does not lower the peak', kind: formula, where: 'lecture on joints, limit overlap', given: `${seminarGiven}; overlap 60 mm, width 25 mm, 6000 N`, unit: 'MPa', expected: 40.567, compute: () => seminar(60).peak / MPA, tolerance: { relative: 0.0005 }, because: 'arithmetic of the formula' },
  ...([[1, 1.0095], [3, 1.0843], [10, 1.8094]] as const).map(([overlap, ratio]): PublishedCase => ({
    ...seminarRow, id: `volkersen-short-${overlap}`, what: 'a short overlap shears almost evenly: peak over mean', kind: formula, given: `${seminarGiven}; overlap ${overlap} mm`, unit: '', expected: ratio, compute: () => { const { peak, mean } = seminar(overlap); return peak / mean; }, tolerance: { relative: 0.0005 }, because: 'arithmetic of the formula, five digits stated',
  })),
  { ...seminarRow, id: 'volkersen-unequal-stiff-end', what: 'unequal sheets: shear where the stiffer one stops', kind: formula, given: 'Et 70 and 210 kN/mm; adhesive G 1 GPa, 0.2 mm; overlap 20 mm; 200 N/mm', unit: 'MPa', expected: 46.3558, compute: () => unequal().atStart / MPA, tolerance: { relative: 0.0001 }, because: 'arithmetic of the formula' },
  { ...seminarRow, id: 'volkersen-unequal-solved', source: 'own-derivation', where: 'bond-solver.ts, shot boundary-value problem', what: 'unequal sheets: shear where the softer one stops', kind: solver, given: 'as the row above', unit: 'MPa', expected: unequalSolved().end / MPA, compute: () => unequal().atEnd / MPA, tolerance: { relative: 1e-6 }, because: 'error of the numerical steps' },
  { topic, id: 'scarf-shear', what: 'shear in a scarf bond', kind: formula, source: 'willberg-2023-lectures', where: 'lecture on joints, stresses of a scarf', given: 'slope 1 in 10, 100 MPa in the parts', unit: 'MPa', expected: 9.901, compute: () => scarfStress({ stress: 100 * MPA, angle: Math.atan(0.1) }).shear / MPA, tolerance: { relative: 0.001 }, because: 'arithmetic of the formula' },
  { topic, id: 'edge-moment-small-load', what: 'edge-moment factor under next to no load', kind: formula, source: 'goland-1944-cemented', where: 'edge-moment factor, limit of small load', given: '70 GPa, 1.6 mm sheets, overlap 12.7 mm, load 1 µN/mm', unit: '', expected: 1, compute: () => edgeMoment(bendable(1e-6)).factor, tolerance: { absolute: 1e-4 }, because: 'limit, reached within the tolerance' },
  { topic, id: 'edge-moment-large-load', what: 'edge-moment factor under a very large load', kind: formula, source: 'goland-1944-cemented', where: 'edge-moment factor, limit of large load', given: '70 GPa, 1.6 mm sheets, overlap 12.7 mm, load 1 MN/mm', unit: '', expected: 0.2612, compute: () => edgeMoment(bendable(1e6)).factor, tolerance: { absolute: 1e-4 }, because: '1/(1+2√2)' },
  ...[50, 200, 400].map((load): PublishedCase => ({
    topic, id: `edge-moment-solved-${load}`, what: 'edge-moment factor against a solved beam under tension', kind: solver, source: 'own-derivation', where: 'bond-solver.ts, two-piece beam with 150 mm arms', given: `70 GPa, ν 0.33, 1.6 mm sheets, overlap 12.7 mm, ${load} N/mm`, unit: '', expected: bendableSolved(load), compute: () => edgeMoment(bendable(load)).factor, tolerance: { relative: 0.0005 }, because: 'arms of finite length in the solution',
  })),
  { topic, id: 'edge-moment-value', what: 'moment at the edge of a single lap', kind: formula, source: 'goland-1944-cemented', where: 'edge moment', given: '70 GPa, ν 0.33, 1.6 mm sheets, overlap 12.7 mm, 200 N/mm', unit: 'N·mm/mm', expected: 103.785, compute: () => edgeMoment(bendable(200)).moment, tolerance: { relative: 0.0005 }, because: 'arithmetic of the formula' },
  { topic, id: 'edge-bending-stress', what: 'bending stress added at the edge of a single lap', kind: formula, source: 'goland-1944-cemented', where: 'edge moment', given: 'as the row above', unit: 'MPa', expected: 243.25, compute: () => edgeMoment(bendable(200)).bendingStress / MPA, tolerance: { relative: 0.0005 }, because: 'arithmetic of the formula' },
  { topic, id: 'goland-reissner-peak', what: 'peak shear of a single lap that bends', kind: formula, source: 'goland-1944-cemented', where: 'shear stress, flexible bond line', given: 'as the row above; adhesive G 1 GPa, 0.2 mm', unit: 'MPa', expected: 48.208, compute: () => bendingLapPeakShear({ ...bendable(200), layer: { shearModulus: 1e9, thickness: 0.2 * MM } }) / MPA, tolerance: { relative: 0.0005 }, because: 'arithmetic of the formula', note: 'Without bending the same joint would show 31.3 MPa.' },
  { topic, id: 'double-lap-plateau', what: 'most that a long double lap carries, adhesive yielding', kind: solver, source: 'own-derivation', where: 'bond-solver.ts, slip stepped from the middle, overlap 80 mm', given: 'inner sheet 140 kN/mm, outer ones 70 each; G 600 MPa, 0.15 mm, yield 35 MPa, plastic ten times elastic strain', unit: 'N/mm', expected: plasticSolved(80) / PER_MM, compute: () => doubleLapPlateau({ adhesive: paste, stiffness: { inner: 140e6, outer: 70e6 } }) / PER_MM, tolerance: { relative: 0.0001 }, because: 'error of the numerical steps', note: 'The formula is recalled from Hart-Smith, NASA CR-112235; its printed numbers could not be read.' },
  ...[20, 30, 40].map((overlap): PublishedCase => ({
    topic, id: `double-lap-plastic-${overlap}`, what: 'strength of a double lap of finite overlap, adhesive yielding', kind: solver, source: 'own-derivation', where: overlap === 20 ? 'equilibrium: yielded from end to end, 2 τ L' : 'bond-solver.ts, slip stepped from the middle', given: `as the row above, overlap ${overlap} mm`, unit: 'N/mm', expected: overlap === 20 ? 1400 : plasticSolved(overlap) / PER_MM, compute: () => plastic(overlap).strength / PER_MM, tolerance: { relative: 0.0005 }, because: 'error of the numerical steps',
  })),
  { topic, id: 'sleeve-axial-peak', what: 'peak shear of a sleeve bond under pull', kind: solver, source: 'own-derivation', where: 'bond-solver.ts, shot boundary-value problem', given: `${sleeveGiven}; E 80 and 70 GPa; 1500 N`, unit: 'MPa', expected: solvedPull() / MPA, compute: () => pulled(25).peak / MPA, tolerance: { relative: 0.0001 }, because: 'error of the numerical steps' },
  { topic, id: 'sleeve-torque-peak', what: 'peak shear of a sleeve bond under torque', kind: solver, source: 'own-derivation', where: 'bond-solver.ts, shot boundary-value problem', given: `${sleeveGiven}; G 20 and 26 GPa; 8 N·m`, unit: 'MPa', expected: solvedTwist() / MPA, compute: () => twisted().peak / MPA, tolerance: { relative: 0.0001 }, because: 'error of the numerical steps' },
  { topic, id: 'sleeve-bending-peak', what: 'peak shear of a sleeve bond in bending', kind: solver, source: 'own-derivation', where: 'bond-solver.ts, ring of 720 strips in a shot boundary-value problem', given: `${sleeveGiven}; E 80 and 70 GPa; 8 N·m`, unit: 'MPa', expected: solvedBend() / MPA, compute: () => bent().peak / MPA, tolerance: { relative: 0.0001 }, because: 'error of the numerical steps' },
  { topic, id: 'sleeve-long-overlap', what: 'a longer sleeve joint keeps its peak: 100 over 50 mm', kind: formula, source: 'pugno-2003-tubular', where: 'abstract: the peak does not vanish for long overlaps', given: `${sleeveGiven.replace(', overlap 25 mm', '')}; 1500 N`, unit: '', expected: 1, compute: () => pulled(100).peak / pulled(50).peak, tolerance: { relative: 0.001 }, because: 'the statement is of a limit' },
  { topic, id: 'coupon-metal', what: 'mean shear of the standard metal coupon', kind: formula, source: 'astm-2010-d1002', where: 'coupon of 25.4 by 12.7 mm', given: '6451.6 N on 25.4 by 12.7 mm', unit: 'MPa', expected: 20, compute: () => meanLapShear({ force: 6451.6, width: 25.4 * MM, overlap: 12.7 * MM }) / MPA, tolerance: { relative: 0.001 }, because: 'arithmetic', note: 'The sizes are printed; load and stress are ours.' },
  { topic, id: 'coupon-composite', what: 'mean shear of the standard composite coupon', kind: 'from memory', source: 'astm-2001-d5868', where: 'coupon of 25.4 by 25.4 mm', given: '6451.6 N on 25.4 by 25.4 mm', unit: 'MPa', expected: 10, compute: () => meanLapShear({ force: 6451.6, width: 25.4 * MM, overlap: 25.4 * MM }) / MPA, tolerance: { relative: 0.001 }, because: 'arithmetic', note: 'The overlap is recalled.' },
  { topic, id: 'bond-line-thinnest', what: 'thinnest bond line of the published optimum', kind: published, source: 'willberg-2023-lectures', where: 'lecture on joints, after Schürmann fig. 23.17', given: 'static and creep-rupture tests', unit: 'mm', expected: 0.05, compute: () => BEST_BOND_LINE.thinnest / MM, tolerance: { absolute: 1e-9 }, because: 'value carried over' },
  { topic, id: 'bond-line-thickest', what: 'thickest bond line of the published optimum', kind: published, source: 'willberg-2023-lectures', where: 'lecture on joints, after Schürmann fig. 23.18', given: 'static and creep-rupture tests', unit: 'mm', expected: 0.15, compute: () => BEST_BOND_LINE.thickest / MM, tolerance: { absolute: 1e-9 }, because: 'value carried over' },
  { ...petrie, id: 'toughened-over-plain', what: 'toughened over plain amine epoxy at room temperature', kind: formula, given: '17.9 over 8.6 MPa', unit: '', expected: 2.08, compute: () => tough.room / plain.room, tolerance: { relative: 0.002 }, because: 'quotient of two printed numbers' },
  { ...petrie, id: 'hot-plain', what: 'share of strength that a plain amine epoxy keeps at 75 °C', kind: formula, given: '4.4 over 8.6 MPa', unit: '', expected: 0.51, compute: () => plain.hot / plain.room, tolerance: { absolute: 0.005 }, because: 'quotient of two printed numbers, two digits' },
  { ...petrie, id: 'hot-toughened', what: 'share of strength that a toughened amine epoxy keeps at 75 °C', kind: formula, given: '5.5 over 17.9 MPa', unit: '', expected: 0.31, compute: () => tough.hot / tough.room, tolerance: { absolute: 0.005 }, because: 'quotient of two printed numbers, two digits' },
  { topic, id: 'insert-area-14', what: 'bond area of an insert in a 14 mm bore', kind: formula, source: 'rzadkowski-2021-tubes', where: 'geometry of the specimens', given: 'bore 14, insert 13.6, overlap 30 mm', unit: 'mm²', expected: 1300.6, compute: () => insert(14, 13.6, 30), tolerance: { relative: 0.001 }, because: 'arithmetic; the sizes are printed, the area is ours' },
  { topic, id: 'insert-area-18', what: 'bond area of an insert in an 18 mm bore', kind: formula, source: 'rzadkowski-2021-tubes', where: 'geometry of the specimens', given: 'bore 18, insert 17.6, overlap 30 mm', unit: 'mm²', expected: 1677.6, compute: () => insert(18, 17.6, 30), tolerance: { relative: 0.001 }, because: 'arithmetic; the sizes are printed, the area is ours' },
  { topic, id: 'insert-upper-bound', what: 'upper bound of the pull on a short insert', kind: formula, source: 'insert-test-plan', where: 'inputs of the plan', given: 'insert 9.32 mm, gap 0.20 mm, length 12.7 mm, 33 MPa', unit: 'kN', expected: 12.53, compute: () => (insert(9.72, 9.32, 12.7) * 33) / 1000, tolerance: { relative: 0.001 }, because: 'arithmetic', note: 'Upper bound only: the peak at the end of the bond is left out.' },
  { topic, id: 'overlap-rule-double', what: 'overlap of a double lap by rule', kind: published, source: 'mil-2002-hdbk17', where: 'vol. 3 ch. 12, rules D-11 and D-13', given: 'adherend 1 mm', unit: 'mm', expected: 30, compute: () => overlapByRule({ thickness: MM, joint: 'double lap' }) / MM, tolerance: { relative: 1e-9 }, because: 'a rule, exact' },
  { topic, id: 'overlap-rule-single', what: 'overlap of a single lap by rule', kind: published, source: 'mil-2002-hdbk17', where: 'vol. 3 ch. 12, rules D-11 and D-13', given: 'adherend 1 mm', unit: 'mm', expected: 80, compute: () => overlapByRule({ thickness: MM, joint: 'single lap' }) / MM, tolerance: { relative: 1e-9 }, because: 'a rule, exact' },
  { topic, id: 'scarf-rule', what: 'length of a scarf by rule', kind: published, source: 'mil-2002-hdbk17', where: 'vol. 3 ch. 12, rules D-11 and D-13', given: 'part 1 mm', unit: 'mm', expected: 50, compute: () => scarfLengthByRule(MM) / MM, tolerance: { relative: 1e-9 }, because: 'a rule, exact' },
];

export const missing: MissingCheck[] = [
  { topic, what: 'Peak shear of a tubular lap under pull or torque: no paper with printed numbers could be read (Lubkin and Reissner, Adams and Peppiatt, Pugno and Carpinteri)', instead: 'The same equation solved numerically in the test, and the published limit for long overlaps' },
  { topic, what: 'Peak shear of a sleeve bond in bending', instead: 'A ring of separate strips solved numerically in the test' },
  { topic, what: 'Printed strengths from Hart-Smith, NASA CR-112235, or from the bonded-joint chapter of MIL-HDBK-17-3', instead: 'The elastic-plastic equation stepped numerically in the test' },
  { topic, what: 'Printed shear peak of a Goland and Reissner lap', instead: 'Their formula with our number; the edge moment against a solved beam' },
  { topic, what: 'Peel stress at the end of any joint: not computed', instead: 'Named in the text as the weak direction' },
];
