import {
  bucklingStress,
  columnHeadStiffness,
  columnTransition,
  eulerLoad,
  movementAt,
  noseHit,
  patternPositions,
  plateOnColumns,
  rigidDiaphragm,
  rockingBoss,
  roundStandoff,
  wallStress,
  type EndFixity,
} from '../../shared/src/standoff/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';

const STIFF = 1e15;
/** Slender post: bending alone, in units of its own EI and L. */
const post = (foot: EndFixity, head: EndFixity, flexuralRigidity = 1, length = 1) =>
  columnHeadStiffness({ length, flexuralRigidity, shearRigidity: STIFF, axialRigidity: STIFF, foot, head });

type Common = Pick<PublishedCase, 'source' | 'where' | 'kind'>;
const row = (
  id: string,
  what: string,
  from: Common,
  number: Pick<PublishedCase, 'given' | 'unit' | 'expected' | 'compute' | 'tolerance' | 'because' | 'note'>,
): PublishedCase => ({ id, topic: 'standoff', what, ...from, ...number });

const EXACT = { tolerance: { relative: 1e-6 }, because: 'exact value of the closed form' } as const;
const GHALI: Common = {
  source: 'ghali-neville-structural',
  where: 'fixed-fixed member with an end offset',
  kind: 'published number',
};
const CHOPRA: Common = { source: 'chopra-2012-dynamics', where: 'eq. 1.3.5 and Example 1.1', kind: 'from memory' };
const BOUNDS: Common = { source: 'chopra-2012-dynamics', where: '§ 1.3, limits of a portal', kind: 'from memory' };
const ghali = { ...EXACT, given: 'EI 20 000 kN·m², L 10 m, offset 10 mm' };

/** The end of a beam over two posts turns as a spring 6EI_b/span at each head; with span 2h and ρ = I_b/4I_c, 12ρ EI_c/h. */
const portalRows = (
  [
    ['0', 0, 6],
    ['a quarter', 0.25, 96 / 7],
    ['1', 1, 19.5],
  ] as const
).map(([name, rho, expected]) =>
  row(`chopra-portal-rho-${rho}`, 'Two posts under a beam that bends', CHOPRA, {
    ...EXACT,
    given: `fixed feet, span 2h, beam to post ratio ${name}`,
    unit: 'EI/h³',
    expected,
    compute: () => 2 * post('fixed', 12 * rho).sway,
  }),
);

const springRows = (
  [
    [0, 3],
    [0.5, 4],
    [1, 4.8],
    [2, 6],
    [5, 8],
    [10, 9.428571429],
  ] as const
).map(([beta, expected]) =>
  row(
    `post-foot-spring-${beta}`,
    'Post with a springy foot, head held level',
    { source: 'own-derivation', where: 'slope-deflection: 12(β+1)/(β+4)', kind: 'own derivation or solver' },
    {
      ...EXACT,
      given: `foot stiffness ${beta} EI/h`,
      unit: 'EI/h³',
      expected,
      compute: () => post(beta, 'fixed').sway,
    },
  ),
);

const FEET = 0.3048;
const UFC: Common = {
  source: 'ufc-2005-seismic',
  where: 'design example, rigid roof of the sacristy',
  kind: 'published number',
};
const roof = () =>
  rigidDiaphragm([
    { x: 0, y: 3, stiffnessX: 0, stiffnessY: 5000 },
    { x: 10 * FEET, y: 3, stiffnessX: 0, stiffnessY: 21872 },
    { x: 1.5, y: 19.67 * FEET, stiffnessX: 2448, stiffnessY: 0 },
    { x: 1.5, y: 0, stiffnessX: 1450, stiffnessY: 0 },
  ]);
const roofGiven = 'relative stiffness 5000 and 21 872 ten feet apart, 2448 and 1450 at 19.67 ft';
const roofRow = (id: string, what: string, unit: string, expected: number, compute: () => number) =>
  row(id, what, UFC, {
    given: roofGiven,
    unit,
    expected,
    compute,
    tolerance: { relative: 5e-3 },
    because: 'printed to two or three digits',
  });
/** Share of wall i, 12.70 kip·ft in all: torque in kip·ft, lever in ft. */
const torsional = (wall: number, axis: 'x' | 'y', torque: number) =>
  Math.abs(roof().perTorque[wall]![axis]) * torque * FEET;

const chopraPosts = () => {
  const beam = {
    length: 144 * 0.0254,
    flexuralRigidity: 199.95e9 * 3.446e-5,
    shearRigidity: STIFF,
    axialRigidity: STIFF,
    foot: 'fixed',
    head: 'fixed',
  } as const;
  const columns = [
    [5, 5],
    [5, -5],
    [-5, 5],
    [-5, -5],
  ].map(([x, y]) => ({ ...beam, x: x!, y: y! }));
  return 1 / plateOnColumns({ columns, force: { x: 1, y: 0, z: 0 }, at: { x: 0, y: 0, z: 0 } }).displacement.x;
};
const KIP_PER_INCH = 175126.8;

const ROARK: Common = { source: 'young-2002-roark', where: 'Table 11.2, cases 20 and 21', kind: 'from memory' };
const bossRows = (
  [
    ['supported', 0.1, 1.403, 9.478],
    ['supported', 0.2, 0.82, 4.621],
    ['supported', 0.3, 0.501, 2.947],
    ['supported', 0.5, 0.169, 1.489],
    ['fixed', 0.1, 1.149, 9.36],
    ['fixed', 0.2, 0.595, 4.41],
    ['fixed', 0.3, 0.32, 2.66],
    ['fixed', 0.5, 0.081, 1.146],
  ] as const
).flatMap(([edge, ratio, alpha, beta]) => {
  const boss = () => rockingBoss({ bossRadius: ratio, plateRadius: 1, edge });
  const common = {
    given: `edge ${edge}, boss over plate radius ${ratio}, ν 0.3`,
    unit: '–',
    tolerance: { relative: 0.01 },
    because: 'the handbook is a table by numerical work, printed to three decimals',
  };
  return [
    row(`roark-boss-${edge}-${ratio}-turn`, 'Turn of a boss that rocks in a plate', ROARK, {
      ...common,
      expected: alpha,
      compute: () => boss().alpha,
    }),
    row(`roark-boss-${edge}-${ratio}-stress`, 'Stress round a boss that rocks in a plate', ROARK, {
      ...common,
      expected: beta,
      compute: () => boss().beta,
    }),
  ];
});

const parabola = { source: 'pytel-2012-mechanics', where: 'Example 10.2, p. 375', kind: 'published number' } as const;
/** The old code's factor of safety over Johnson's stress, and 23/12 over Euler's. */
const allowable = (slenderness: number) => {
  const [youngsModulus, yieldStrength] = [200e9, 380e6];
  const ratio = slenderness / columnTransition(youngsModulus, yieldStrength);
  const safety = ratio < 1 ? 5 / 3 + (3 * ratio) / 8 - ratio ** 3 / 8 : 23 / 12;
  const stress = bucklingStress({ effectiveLength: slenderness, radiusOfGyration: 1, youngsModulus, yieldStrength });
  return (stress * 15.5e-3) / safety / 1e3;
};
const pytelRows = (
  [
    [142.9, 782],
    [79.37, 2161],
    [55.56, 2710],
  ] as const
).map(([slenderness, expected]) =>
  row(
    `pytel-10-2-slenderness-${Math.round(slenderness)}`,
    'Column by Johnson’s parabola or Euler, with the code’s safety',
    parabola,
    {
      given: `E 200 GPa, yield 380 MPa, 15 500 mm², slenderness ${slenderness}`,
      unit: 'kN',
      expected,
      compute: () => allowable(slenderness),
      tolerance: { relative: 2e-3 },
      because: 'printed to three or four digits',
    },
  ),
);
const gere = () => {
  const ratio = 93.385 / columnTransition(199.9e9, 248.2e6);
  const safety = 5 / 3 + (3 * ratio) / 8 - ratio ** 3 / 8;
  return (
    (bucklingStress({ effectiveLength: 93.385, radiusOfGyration: 1, youngsModulus: 199.9e9, yieldStrength: 248.2e6 }) *
      0.011355) /
    safety /
    4448.2216
  );
};

/** Nose-first hit of an ordinary body, in the trade's own sizes, at two lengths. */
const speedOfYield = (length: number) => {
  const size = { outerDiameter: 0.005, bore: 0.003 };
  const beam = roundStandoff({
    ...size,
    length,
    youngsModulus: 69e9,
    shearModulus: 26e9,
    foot: 'fixed',
    head: 'fixed',
  });
  const columns = patternPositions({ pattern: 'four', foreAft: 0.09, across: 0.035 }).map((place) => ({
    ...beam,
    ...place,
  }));
  const hit = noseHit({
    columns,
    mass: 0.65,
    pitchRadius: 0.048,
    yawRadius: 0.068,
    centreOfMass: { x: 0, y: 0, z: 0.02 - length },
    at: { x: 0.06, y: 0, z: 0.003 },
    contactStiffness: 100e3,
    speed: 5,
  });
  const stress = Math.max(
    ...hit.plate.columns.map(({ footMoment, headMoment, axial }) =>
      wallStress({ ...size, moment: Math.max(footMoment, headMoment), axial }),
    ),
  );
  return { speed: (5 * 276e6) / stress, sway: -movementAt(hit.plate, { x: 0, y: 0, z: 0 }).x };
};
const PRACTICE: Common = {
  source: 'common-practice',
  where: 'long standoffs and nose-first hits',
  kind: 'common practice',
};

export const cases: readonly PublishedCase[] = [
  row('ghali-offset-shear', 'Shear of a member with an end pushed aside', GHALI, {
    ...ghali,
    unit: 'kN',
    expected: 2.4,
    compute: () => (post('fixed', 'fixed', 20e6, 10).sway * 0.01) / 1e3,
  }),
  row('ghali-offset-moment', 'End moment of a member with an end pushed aside', GHALI, {
    ...ghali,
    unit: 'kN·m',
    expected: 12,
    compute: () => (-post('fixed', 'fixed', 20e6, 10).coupling * 0.01) / 1e3,
  }),
  ...portalRows,
  row('chopra-portal-rigid-beam', 'Two posts under a rigid beam', CHOPRA, {
    ...EXACT,
    given: 'fixed feet, beam rigid',
    unit: 'EI/h³',
    expected: 24,
    compute: () => 2 * post('fixed', 'fixed').sway,
  }),
  row('portal-pinned-feet', 'Two posts, pinned feet, rigid beam', BOUNDS, {
    ...EXACT,
    given: 'pinned feet, beam rigid',
    unit: 'EI/h³',
    expected: 6,
    compute: () => 2 * post('pinned', 'fixed').sway,
  }),
  row('portal-pinned-heads', 'Two posts, fixed feet, pinned heads', BOUNDS, {
    ...EXACT,
    given: 'fixed feet, pinned heads',
    unit: 'EI/h³',
    expected: 6,
    compute: () => 2 * post('fixed', 'pinned').sway,
  }),
  row('portal-pinned-feet-beam', 'Two posts, pinned feet, beam as stiff as a post over twice the span', BOUNDS, {
    ...EXACT,
    given: 'span 2h, head spring 3EI/h',
    unit: 'EI/h³',
    expected: 3,
    compute: () => 2 * post('pinned', 3).sway,
  }),
  row(
    'chopra-1-2-four-posts',
    'Four clamped posts under a rigid plate',
    { source: 'chopra-2012-dynamics', where: 'Example 1.2', kind: 'from memory' },
    {
      given: 'E 29 000 ksi, I 82.8 in⁴, h 144 in',
      unit: 'kip/in',
      expected: 38.58,
      compute: () => chopraPosts() / KIP_PER_INCH,
      tolerance: { relative: 2e-3 },
      because: 'the book prints 38.58; its own inputs give 38.60',
    },
  ),
  ...springRows,
  roofRow('ufc-centre-x', 'Centre of rigidity, across the long walls', 'ft', 8.14, () => roof().centre.x / FEET),
  roofRow('ufc-centre-y', 'Centre of rigidity, across the short walls', 'ft', 12.35, () => roof().centre.y / FEET),
  roofRow('ufc-torsion-sum', 'Stiffness against turning', 'ft²', 759294, () => roof().torsion / FEET ** 2),
  roofRow('ufc-torsional-long', 'Torsional share of a long wall', 'kip', 0.68, () => torsional(1, 'y', 12.7)),
  roofRow('ufc-torsional-short', 'Torsional share of a short wall', 'kip', 0.3, () => torsional(2, 'x', 12.7)),
  roofRow('ufc-lengthwise-long', 'Torsional share of a long wall, lengthwise case', 'kip', 1.529, () =>
    torsional(1, 'y', 28.52),
  ),
  roofRow('ufc-lengthwise-short', 'Torsional share of a short wall, lengthwise case', 'kip', 0.673, () =>
    torsional(2, 'x', 28.52),
  ),
  ...bossRows,
  row(
    'hibbeler-13-3-euler',
    'Euler load of a column',
    { source: 'hibbeler-mechanics', where: 'Example 13.3, p. 669', kind: 'published number' },
    {
      given: 'E 70 GPa, I 61.3e-6 m⁴, L 5 m, K 2',
      unit: 'kN',
      expected: 424,
      compute: () => eulerLoad(10, 70e9 * 61.3e-6) / 1e3,
      tolerance: { relative: 5e-3 },
      because: 'printed to three digits',
    },
  ),
  ...(
    [
      [100, 98.3],
      [200, 116.9],
    ] as const
  ).map(([load, side]) =>
    row(
      `beer-10-1-strut-${load}`,
      'Square strut sized against buckling',
      { source: 'beer-2012-mechanics', where: 'Example 10.01, p. 638', kind: 'published number' },
      {
        given: `E 13 GPa, L 2 m, safety 2.5, ${load} kN, printed side ${side} mm`,
        unit: 'kN',
        expected: load,
        compute: () => eulerLoad(2, (13e9 * (side * 1e-3) ** 4) / 12) / 2.5e3,
        tolerance: { relative: 5e-3 },
        because: 'the side is printed to three digits and enters to the fourth power',
      },
    ),
  ),
  ...pytelRows,
  row(
    'gere-11-5-johnson',
    'Column by the code’s parabola',
    { source: 'gere-2004-mechanics', where: 'Example 11-5, p. 804', kind: 'published number' },
    {
      given: 'slenderness 93.385, E 199.9 GPa, yield 248.2 MPa, 11 355 mm²',
      unit: 'kip',
      expected: 243,
      compute: gere,
      tolerance: { relative: 5e-3 },
      because: 'printed to three digits',
    },
  ),
  row(
    'popov-11-2-slender',
    'Length at which Euler’s formula begins to hold',
    { source: 'popov-engineering-mechanics', where: 'Example 11-2, p. 589', kind: 'published number' },
    {
      given: 'E 200 GPa, proportional limit 250 MPa, 60 × 100 mm, pinned, 1539 mm',
      unit: 'MPa',
      expected: 250,
      compute: () => eulerLoad(1.539, (200e9 * 0.1 * 0.06 ** 3) / 12) / 0.006 / 1e6,
      tolerance: { relative: 2e-3 },
      because: 'length printed to four digits',
    },
  ),
  row(
    'johnson-euler-touch',
    'The two column formulas touch at half the yield strength',
    { source: 'shigley-2011-design', where: 'chapter 4, columns', kind: 'from memory' },
    {
      given: 'slenderness √(2π²E/σy), E 69 GPa, yield 276 MPa',
      unit: 'MPa',
      expected: 138,
      compute: () =>
        bucklingStress({
          effectiveLength: columnTransition(69e9, 276e6) * 0.999999,
          radiusOfGyration: 1,
          youngsModulus: 69e9,
          yieldStrength: 276e6,
        }) / 1e6,
      tolerance: { relative: 1e-5 },
      because: 'identity; taken a millionth to Johnson’s side',
    },
  ),
  row('nose-hit-35-against-22-speed', 'Speed that bends a standoff, 22 mm over 35 mm', PRACTICE, {
    given: 'four M3 standoffs 5 mm outside, 650 g, hard nose',
    unit: '–',
    expected: 1.6,
    compute: () => speedOfYield(0.022).speed / speedOfYield(0.035).speed,
    tolerance: { absolute: 0.4 },
    because: 'plainly worse: anything from 1.2 to 2 times',
  }),
  row('nose-hit-35-against-22-sway', 'Sway in the same hit, 35 mm over 22 mm', PRACTICE, {
    given: 'four M3 standoffs 5 mm outside, 650 g, hard nose',
    unit: '–',
    expected: 3.5,
    compute: () => speedOfYield(0.035).sway / speedOfYield(0.022).sway,
    tolerance: { absolute: 2 },
    because: 'plainly worse: anything from 1.5 to 5.5 times',
  }),
];

export const missing: readonly MissingCheck[] = [
  {
    topic: 'standoff',
    what: 'A measured sway of a small frame’s top plate under a known force',
    instead: 'posts and portals of buildings, the same equations at another size',
  },
  {
    topic: 'standoff',
    what: 'A rigid plate on posts with shear deformation and all six movements, worked in print',
    instead:
      'an independent beam-element model solved with a general-purpose linear algebra library, in the property tests',
  },
  {
    topic: 'standoff',
    what: 'Preload at which the face of a screwed standoff lifts, and the screw’s tension after that',
    instead: 'equilibrium of the ring, written out beside the formula',
  },
];
