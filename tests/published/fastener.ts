import { INCH, POUND_FORCE, PSI } from '../../shared/src/quantity/index.ts';
import {
  cautiousPullOut,
  clearanceHole,
  frustumStiffness,
  insertHold,
  insertPullOut,
  insertThreadArea,
  jointLoadFactor,
  majorLimits,
  parallelShare,
  pitchTolerance,
  preloadBand,
  SCREW_MATERIALS,
  screwedJoint,
  SEAT_DIAMETERS,
  separationForce,
  tappedHole,
  THREAD_LIMITS,
  threadShearArea,
} from '../../shared/src/fastener/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const rows = rowsFor('fastener');
const SQUARE_INCH = INCH ** 2;
const KSI = 1e3 * PSI;

const soft = [
  ['#2', 0.0037, 63],
  ['#4', 0.00604, 102],
  ['#6', 0.00909, 154],
  ['#8', 0.014, 237],
  ['#10', 0.02, 338],
  ['1/4 in', 0.0364, 615],
] as const;
const inserts = [
  [0.0157, 1335, 785, 424],
  [0.0302, 2567, 1510, 815],
  [0.0329, 2797, 1645, 888],
  [0.0669, 5687, 3345, 1806],
  [0.0945, 8033, 4725, 2552],
  [0.1726, 14_671, 8630, 4660],
] as const;
const innerThreads = [
  [0.105, 0.086, 2110, 1241],
  [0.155, 0.112, 4056, 2386],
  [0.205, 0.164, 7856, 4621],
  [0.297, 0.19, 13_185, 7756],
] as const;

const cone = frustumStiffness({
  youngsModulus: 10e6 * PSI,
  holeDiameter: 0.25 * INCH,
  seatDiameter: 0.5 * INCH,
  thickness: 0.5 * INCH,
  angle: (25 * Math.PI) / 180,
});
const RECALLED = 'The limits were read, the formulas that lead to them are recalled from ISO 965-1.';
const quarterInch = (30e6 * PSI * (Math.PI / 4) * (0.25 * INCH) ** 2) / INCH;

export const cases: PublishedCase[] = [
  ...rows(
    {
      kind: 'published number',
      source: 'chambers-1995-tm106943',
      where: 'Table II',
      given: '',
      unit: 'lbf',
      tolerance: { absolute: 1 },
      because: 'the table is in whole pounds, from rounded areas',
    },
    soft.map(
      ([size, area, expected]) =>
        [
          `soft-preload-${size.replace(/\W/g, '')}`,
          'Preload meant of a soft screw',
          expected,
          () => preloadBand({ stressArea: area * SQUARE_INCH, yieldStrength: 26 * KSI }).nominal / POUND_FORCE,
          { given: `${size}, 0.65 of 26 ksi` },
        ] as const,
    ),
  ),
  ...inserts.flatMap(([area, hard, middle, low]) =>
    rows(
      {
        kind: 'published number',
        source: 'chambers-1995-tm106943',
        where: 'Tables IV and V',
        given: '',
        unit: 'lbf',
        tolerance: { relative: 0.001 },
        because: 'the table is in whole pounds',
      },
      (
        [
          [85, hard],
          [50, middle],
          [27, low],
        ] as const
      ).map(
        ([shear, expected]) =>
          [
            `insert-${area}-${shear}`,
            'Pull-out of an insert from its parent',
            expected,
            () => insertPullOut({ shearArea: area * SQUARE_INCH, shearStrength: shear * KSI }) / POUND_FORCE,
            { given: `${area} in², ${shear} ksi in shear` },
          ] as const,
      ),
    ),
  ),
  ...innerThreads.flatMap(([engagement, diameter, hard, middle]) =>
    rows(
      {
        kind: 'published number',
        source: 'chambers-1995-tm106943',
        where: 'Table III',
        given: '',
        unit: 'lbf',
        tolerance: { relative: 0.001 },
        because: 'the table is in whole pounds',
        note: 'The scanned equation reads 3/4; only 7/8 gives the table.',
      },
      (
        [
          [85, hard],
          [50, middle],
        ] as const
      ).map(
        ([shear, expected]) =>
          [
            `insert-thread-${engagement}-${shear}`,
            'Strength of an insert’s inner thread',
            expected,
            () =>
              insertPullOut({
                shearArea: insertThreadArea({ engagement: engagement * INCH, diameter: diameter * INCH }),
                shearStrength: shear * KSI,
              }) / POUND_FORCE,
            { given: `${engagement} in on ${diameter} in, ${shear} ksi` },
          ] as const,
      ),
    ),
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'nasa-2021-std5020',
      where: 'A.12.3, pp. 78-79',
      given: '1/4 in screw, 1/2 in head, two 1/2 in aluminium parts, 25° cones',
      unit: '',
      tolerance: { relative: 0.001 },
      because: 'three digits',
      note: 'The standard prints 0.314; moduli of 30 and 10 million psi and a bolt length of 1 in are our reading of it.',
    },
    [
      [
        'joint-load-factor',
        'Share of an outside pull that the screw feels',
        0.314,
        () => jointLoadFactor({ screw: quarterInch, clamped: cone / 2, loadingPlane: 1 }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'nasa-2021-std5020',
      where: 'A.12.3, pp. 78-79',
      given: '2090 lbf of preload, load factor 0.157',
      unit: 'lbf',
      tolerance: { relative: 0.001 },
      because: 'four digits',
    },
    [
      [
        'separation-force',
        'Pull at which a clamped joint gapes',
        2479,
        () => separationForce(2090 * POUND_FORCE, 0.157) / POUND_FORCE,
      ],
      [
        'separation-total',
        'The same with the margin’s 3135 lbf on top',
        6198,
        () => separationForce((2090 + 3135) * POUND_FORCE, 0.157) / POUND_FORCE,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'nasa-2021-std5020',
      where: 'A.12.2',
      given: 'one screw half as stiff again as the other',
      unit: '%',
      tolerance: { absolute: 1e-9 },
      because: 'exact',
    },
    [['parallel-share', 'Share of the stiffer of two screws', 60, () => 100 * parallelShare(1.5e6, 1e6)]],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'lee-1992-tm108377',
      where: 'load inside the stack',
      given: 'pull at the mid-planes, clamped parts three times as stiff as the screw',
      unit: '',
      tolerance: { absolute: 1e-12 },
      because: 'exact; a network of springs gives the same',
    },
    [
      [
        'load-inside-stack',
        'Share of the pull that the screw feels',
        0.125,
        () => jointLoadFactor({ screw: 1e6, clamped: 3e6, loadingPlane: 0.5 }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'fed-h28-21',
      where: 'worked examples',
      given: 'MJ6.5 × 1, 4h6h',
      unit: 'mm',
      tolerance: { absolute: 1e-5 },
      because: 'the example prints five decimals',
    },
    [
      [
        'thread-pitch-diameter',
        'Largest pitch diameter',
        5.85048,
        () => tappedHole({ diameter: 6.5e-3, pitch: 1e-3 }).pitchDiameter * 1e3,
      ],
      [
        'thread-pitch-diameter-least',
        'Least pitch diameter, 0.071 below',
        5.77948,
        () => tappedHole({ diameter: 6.5e-3, pitch: 1e-3 }).pitchDiameter * 1e3 - 0.071,
      ],
      [
        'thread-tapped-pitch-largest',
        'Largest pitch diameter of the tapped hole, 0.095 above',
        5.94548,
        () => tappedHole({ diameter: 6.5e-3, pitch: 1e-3 }).pitchDiameter * 1e3 + 0.095,
      ],
      [
        'thread-tolerance-grade-4',
        'Tolerance of the pitch diameter, grade 4',
        0.08681,
        () => pitchTolerance({ diameter: 29e-3, pitch: 1.25e-3 }, 4) * 1e3,
        { given: 'pitch 1.25 mm, mean diameter 29 mm' },
      ],
      [
        'thread-pitch-29',
        'Largest pitch diameter, 0.028 of allowance off',
        28.1601,
        () => tappedHole({ diameter: 29e-3, pitch: 1.25e-3 }).pitchDiameter * 1e3 - 0.028,
        { given: '29 × 1.25' },
      ],
      [
        'thread-minor-27',
        'Least minor diameter of a tapped hole',
        25.376,
        () => tappedHole({ diameter: 27e-3, pitch: 1.5e-3 }).minorDiameter * 1e3,
        { given: 'M27 × 1.5', tolerance: { absolute: 0.001 }, because: 'three decimals' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'fed-h28-21',
      where: 'M27 × 1.5, limits',
      given: 'tolerances 0.200 and 0.300 mm recalled',
      unit: 'mm',
      tolerance: { absolute: 0.001 },
      because: 'three decimals',
      note: 'The limits were read, the tolerances that lead to them are recalled.',
    },
    [
      [
        'thread-tapped-pitch-27',
        'Largest pitch diameter of a tapped hole',
        26.226,
        () => tappedHole({ diameter: 27e-3, pitch: 1.5e-3 }).pitchDiameter * 1e3 + 0.2,
      ],
      [
        'thread-major-27',
        'Largest outside diameter of a screw',
        26.968,
        () => majorLimits({ diameter: 27e-3, pitch: 1.5e-3 }).largest * 1e3,
        { given: 'M27 × 1.5, 6g', note: RECALLED },
      ],
      [
        'thread-major-27-least',
        'Least outside diameter of a screw',
        26.732,
        () => majorLimits({ diameter: 27e-3, pitch: 1.5e-3 }).least * 1e3,
        {
          given: 'M27 × 1.5, 6g',
          tolerance: { absolute: 0.004 },
          because: 'the table rounds the tolerance of 0.233 mm to a preferred number, 0.236',
          note: RECALLED,
        },
      ],
      [
        'thread-tapped-minor-27',
        'Largest minor diameter of a tapped hole',
        25.676,
        () => tappedHole({ diameter: 27e-3, pitch: 1.5e-3 }).minorDiameter * 1e3 + 0.3,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'fed-h28-2',
      where: 'thread shear areas',
      given: 'M3, 6H/6g',
      unit: 'mm²/mm',
      tolerance: { relative: 0.001 },
      because: 'four digits',
      note: 'The limits of the thread are recalled from ISO 965.',
    },
    [
      [
        'tapped-shear-area',
        'Shear area of the tapped thread for each millimetre',
        5.547,
        () => threadShearArea(THREAD_LIMITS.M3).tapped * 1e3,
      ],
      [
        'screw-shear-area',
        'Shear area of the screw’s thread for each millimetre',
        3.903,
        () => threadShearArea(THREAD_LIMITS.M3).screw * 1e3,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'barrett-1990-fastener',
      where: 'pull-out of a tapped hole',
      given: 'M3, 6 mm, 200 MPa',
      unit: 'N',
      tolerance: { relative: 0.001 },
      because: 'four digits',
      note: 'About half of what the thread’s shear area gives: a bound, not a rival.',
    },
    [
      [
        'cautious-pull-out',
        'Cautious pull-out of a tapped hole',
        3361,
        () => cautiousPullOut({ pitchDiameter: 2.675e-3, engagement: 6e-3, shearStrength: 200e6 }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'chambers-1995-tm106943',
      where: 'Tables III to V',
      given: 'insert 4.5 mm outside, 5 mm long, in 25 MPa',
      unit: 'N',
      tolerance: { relative: 0.001 },
      because: 'four digits',
      note: 'The formulas are of a tapped hole and of an insert’s inner thread: that they serve its outside is our step.',
    },
    [
      [
        'insert-hold-most',
        'Pull-out of an insert from a print, at most',
        1546,
        () => insertHold({ insertDiameter: 4.5e-3, insertLength: 5e-3, parentShearStrength: 25e6 }, 3e-3).high,
      ],
      [
        'insert-hold-least',
        'The same by the cautious rule',
        589,
        () => insertHold({ insertDiameter: 4.5e-3, insertLength: 5e-3, parentShearStrength: 25e6 }, 3e-3).low,
        { source: 'barrett-1990-fastener', where: 'pull-out of a tapped hole', because: 'three digits' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'iso-1979-273',
      where: 'table of clearance holes',
      given: '',
      unit: 'mm',
      tolerance: { absolute: 1e-9 },
      because: 'a table value',
    },
    (
      [
        ['M2', 2.2, 2.4, 2.6],
        ['M2.5', 2.7, 2.9, 3.1],
        ['M3', 3.2, 3.4, 3.6],
        ['M4', 4.3, 4.5, 4.8],
      ] as const
    ).flatMap(([thread, fine, medium, coarse]) =>
      (
        [
          ['fine', fine],
          ['medium', medium],
          ['coarse', coarse],
        ] as const
      ).map(
        ([series, expected]) =>
          [
            `clearance-${thread}-${series}`,
            'Clearance hole',
            expected,
            () => clearanceHole(thread, series) * 1e3,
            { given: `${thread}, ${series}` },
          ] as const,
      ),
    ),
  ),
  ...rows(
    {
      kind: 'common practice',
      source: 'common-practice',
      where: 'M3 by feel, 0.5 to 1.0 N·m',
      given: 'M3 10.9 button head on carbon, into aluminium',
      unit: 'N·m',
      tolerance: { absolute: 0.35 },
      because: 'the range and a little, since feel is no torque wrench',
    },
    [
      [
        'torque-by-feel',
        'Torque advised for an M3 screw on carbon',
        0.75,
        () =>
          screwedJoint({
            limits: THREAD_LIMITS.M3,
            material: SCREW_MATERIALS['10.9'],
            torque: 0.6,
            torqueCoefficient: 0.2,
            engagement: 6e-3,
            tappedShearStrength: 200e6,
            seatDiameter: SEAT_DIAMETERS.M3['button-head'],
            holeDiameter: 3.2e-3,
            plateStrength: 150e6,
          }).advisedTorque,
      ],
    ],
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'fastener',
    what: 'Tables of ISO 965, ISO 273, ISO 4762, ISO 7380-1 and ISO 7089 at hand',
    instead: 'Recalled limits, holes, heads and washers, named as recalled.',
  },
  {
    topic: 'fastener',
    what: 'Measured stripping load of M2 to M4 threads in aluminium standoffs',
    instead: 'The standard’s shear area with a stated shear strength, and a cautious handbook rule as the lower bound.',
  },
  {
    topic: 'fastener',
    what: 'Pressure through the thickness at which a carbon plate crushes or creeps under a screw head',
    instead: 'One cautious number of common practice that the reader may change.',
  },
  {
    topic: 'fastener',
    what: 'Pull-through and turning load of press nuts in carbon plate',
    instead: 'Pressure under the flange alone; no number for the knurl.',
  },
  {
    topic: 'fastener',
    what: 'Measured pull-out and turning load of threaded inserts in printed plastic or carbon laminate',
    instead:
      'Two handbook rules for the pull-out, a factor of 2.6 apart, the lower one counted on; no number for turning.',
  },
  {
    topic: 'fastener',
    what: 'Outside diameter by which the report arrives at the shear areas of its inserts (Tables IV and V)',
    instead: 'The areas as printed, for the rows; the cylinder round the insert, as our step, in the calculator.',
  },
];
