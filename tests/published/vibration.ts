import {
  cantileverEigenvalue,
  naturalFrequency,
  propellerLines,
  quickTipFrequency,
  uniformCantileverFrequency,
} from '../../shared/src/vibration/index.ts';
import { STANDARD_GRAVITY } from '../../shared/src/quantity/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';

const topic = 'vibration';
const GIGA = 1e9;
type Shared = Omit<PublishedCase, 'topic' | 'id' | 'what' | 'expected' | 'compute' | 'given'> & { given?: string };
const rows = (
  shared: Shared,
  list: readonly (readonly [string, string, string, number, () => number])[],
): PublishedCase[] =>
  list.map(([id, what, given, expected, compute]) => ({ topic, ...shared, id, what, given, expected, compute }));

const notes = {
  kind: 'published number',
  source: 'beam-vibration-laboratory',
  where: 'theory, table of end conditions; the same in blevins-1979-frequency, table 8-1',
  unit: '1',
  tolerance: { relative: 1e-4 },
  because: 'four decimals printed',
} as const;

/** How much the quick rule stands above the exact equation, in per cent. */
const overestimate = (massRatio: number): number => {
  const beam = { flexuralRigidity: 1, length: 1 };
  return (
    100 *
    (quickTipFrequency({ ...beam, beamMass: 1, tipMass: massRatio }) /
      uniformCantileverFrequency({ ...beam, massPerLength: 1, mode: 1, massRatio }) -
      1)
  );
};

const tower = { flexuralRigidity: 27.579e9 * 2.50136, length: 91.44, beamMass: 0, tipMass: 271940 };
const towerAngular = () => quickTipFrequency(tower) * 2 * Math.PI;

const shaftMass = 450 / STANDARD_GRAVITY;
const shaftDiameter = 0.1;

export const cases: readonly PublishedCase[] = [
  ...rows(notes, [
    [
      'cantilever-1',
      'first eigenvalue of a cantilever',
      'clamped-free',
      1.8751,
      () => cantileverEigenvalue({ mode: 1 }),
    ],
    [
      'cantilever-2',
      'second eigenvalue of a cantilever',
      'clamped-free',
      4.694,
      () => cantileverEigenvalue({ mode: 2 }),
    ],
    [
      'cantilever-3',
      'third eigenvalue of a cantilever',
      'clamped-free',
      7.8547,
      () => cantileverEigenvalue({ mode: 3 }),
    ],
  ]),
  ...rows(
    {
      ...notes,
      note: 'A tip mass without end holds the end in place but lets it turn: the second mode becomes the first of a clamped-pinned beam.',
    },
    [
      [
        'clamped-pinned-1',
        'tip that cannot move: first clamped-pinned eigenvalue',
        'tip mass 10⁹ times the beam’s, second root',
        3.9266,
        () => cantileverEigenvalue({ mode: 2, massRatio: GIGA }),
      ],
      [
        'clamped-pinned-2',
        'tip that cannot move: second clamped-pinned eigenvalue',
        'tip mass 10⁹ times the beam’s, third root',
        7.0685,
        () => cantileverEigenvalue({ mode: 3, massRatio: GIGA }),
      ],
      [
        'clamped-pinned-3',
        'tip that cannot move: third clamped-pinned eigenvalue',
        'tip mass 10⁹ times the beam’s, fourth root',
        10.2101,
        () => cantileverEigenvalue({ mode: 4, massRatio: GIGA }),
      ],
    ],
  ),
  ...rows(
    {
      ...notes,
      note: 'Mass and inertia without end hold the end altogether: two roots fall to zero, the third is the first of a clamped-clamped beam.',
    },
    [
      [
        'clamped-clamped-1',
        'tip that cannot move or turn: first clamped-clamped eigenvalue',
        'mass and inertia ratio 10⁹, third root',
        4.73,
        () => cantileverEigenvalue({ mode: 3, massRatio: GIGA, inertiaRatio: GIGA }),
      ],
      [
        'clamped-clamped-2',
        'tip that cannot move or turn: second clamped-clamped eigenvalue',
        'mass and inertia ratio 10⁹, fourth root',
        7.8532,
        () => cantileverEigenvalue({ mode: 4, massRatio: GIGA, inertiaRatio: GIGA }),
      ],
      [
        'clamped-clamped-3',
        'tip that cannot move or turn: third clamped-clamped eigenvalue',
        'mass and inertia ratio 10⁹, fifth root',
        10.9956,
        () => cantileverEigenvalue({ mode: 5, massRatio: GIGA, inertiaRatio: GIGA }),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'gurgoze-1996-eigenfrequencies',
      where: 'cantilever with tip mass; table as remembered, also in rao-2011-vibrations',
      unit: '1',
      tolerance: { relative: 1e-4 },
      because: 'five decimals remembered and solved again',
    },
    (
      [
        [0.1, 1.72274],
        [0.25, 1.57375],
        [0.5, 1.41996],
        [1, 1.24792],
        [2, 1.0762],
        [5, 0.87002],
        [10, 0.73578],
      ] as const
    ).map(
      ([massRatio, expected]) =>
        [
          `tip-mass-${massRatio}`,
          'first eigenvalue of a cantilever with a tip mass',
          `tip mass ${massRatio} times the beam’s`,
          expected,
          () => cantileverEigenvalue({ mode: 1, massRatio }),
        ] as const,
    ),
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: '33/140 rule (thomson-1998-vibration, from memory) against the exact equation',
      unit: '%',
      tolerance: { absolute: 0.01 },
      because: 'the error was computed once with a separate program to 0.001 %',
    },
    (
      [
        [0, 1.465],
        [0.1, 0.725],
        [0.25, 0.346],
        [1, 0.053],
        [5, 0.003],
      ] as const
    ).map(
      ([massRatio, expected]) =>
        [
          `quick-rule-${massRatio}`,
          'how much the 33/140 rule is too high',
          `tip mass ${massRatio} times the beam’s`,
          expected,
          () => overestimate(massRatio),
        ] as const,
    ),
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'rao-2011-vibrations',
      where: 'Example 2.1, water tank on a column',
      unit: 'rad/s, s, 10⁵ N/m',
      tolerance: { relative: 1e-3 },
      because: 'four digits remembered, converted from inch units',
    },
    [
      [
        'rao-2-1-angular',
        'angular frequency of a tank on a column',
        'I 2.50136 m⁴, E 27.579 GPa, L 91.44 m, 271 940 kg',
        0.9977,
        towerAngular,
      ],
      [
        'rao-2-1-stiffness',
        'stiffness of the column, as force over movement at its top, in 10⁵ N/m',
        'I 2.50136 m⁴, E 27.579 GPa, L 91.44 m',
        2.7069,
        () => towerAngular() ** 2 * (tower.tipMass / 1e5),
      ],
      [
        'rao-2-1-period',
        'period of a tank on a column',
        'I 2.50136 m⁴, E 27.579 GPa, L 91.44 m, 271 940 kg',
        6.298,
        () => (2 * Math.PI) / towerAngular(),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'sarkar-2004-machines',
      where: 'Illustration 11.1, p. 290',
      unit: 'Hz',
      tolerance: { relative: 1.5e-3 },
      because: 'the worksheet of the example takes π as 3.147 and prints 34.99 and 888.8 Hz',
    },
    [
      [
        'sarkar-11-1-transverse',
        'shaft with a weight at its end, sideways',
        'D 100 mm, L 1.10 m, W 450 N, E 200 GPa',
        34.99,
        () =>
          quickTipFrequency({
            flexuralRigidity: (200e9 * Math.PI * shaftDiameter ** 4) / 64,
            length: 1.1,
            beamMass: 0,
            tipMass: shaftMass,
          }),
      ],
      [
        'sarkar-11-1-axial',
        'shaft with a weight at its end, along it',
        'D 100 mm, L 1.10 m, W 450 N, E 200 GPa',
        888.8,
        () => naturalFrequency((200e9 * Math.PI * shaftDiameter ** 2) / 4 / 1.1, shaftMass),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'common-practice',
      where: 'definition',
      unit: 'Hz',
      tolerance: { relative: 1e-12 },
      because: 'counting',
    },
    [
      [
        'once-per-turn-27000',
        'once per turn',
        '27 000 rev/min',
        450,
        () => propellerLines((27000 * Math.PI) / 30, 3).oncePerRev,
      ],
      [
        'blade-pass-27000',
        'blade pass',
        '27 000 rev/min, 3 blades',
        1350,
        () => propellerLines((27000 * Math.PI) / 30, 3).bladePass,
      ],
      [
        'once-per-turn-6000',
        'once per turn',
        '6000 rev/min',
        100,
        () => propellerLines((6000 * Math.PI) / 30, 2).oncePerRev,
      ],
      [
        'blade-pass-6000',
        'blade pass',
        '6000 rev/min, 2 blades',
        200,
        () => propellerLines((6000 * Math.PI) / 30, 2).bladePass,
      ],
    ],
  ),
];

export const missing: readonly MissingCheck[] = [
  {
    topic,
    what: 'Eigenvalues of a beam held by pins at both ends, nπ.',
    instead:
      'Not a limit of an arm: its root does not let go. Clamped-free, clamped-pinned and clamped-clamped are checked.',
  },
  {
    topic,
    what: 'A published frequency of a stepped or sleeved arm with a motor at its tip, with shear and rotary inertia.',
    instead:
      'The exact equation of the uniform beam with tip mass and inertia, and a general eigenvalue solver on the same matrices.',
  },
  {
    topic,
    what: 'A measured frequency of a small frame’s arm with its dimensions.',
    instead: 'Nothing: the page says how to tap the arm and compare.',
  },
  {
    topic,
    what: 'Published coupled frequencies of a beam that bends and twists under a mass set off from its axis.',
    instead: 'A massless beam with the same tip has two closed-form frequencies; the model is held against them.',
  },
];
