import {
  CHARACTERISTIC_LENGTHS,
  finiteWidthFactor,
  heywoodFactor,
  kirschStress,
  meanStressRatio,
  notchedStrengthRatio,
  orthotropicHoleFactor,
  stripHoleFactor,
  tubeHoleAxialFactor,
  tubeHoleBendingFactor,
} from '@frameworthy/shared/joint';
import type { MissingCheck, PublishedCase } from './row.ts';

type Shared = Omit<PublishedCase, 'id' | 'what' | 'expected' | 'compute' | 'topic' | 'unit' | 'given'>;
type Row = [id: string, expected: number, compute: () => number, given: string];
const rows = (what: string, shared: Shared, list: Row[]): PublishedCase[] =>
  list.map(([id, expected, compute, given]) => ({
    topic: 'joint',
    unit: '',
    ...shared,
    what,
    id,
    expected,
    compute,
    given,
  }));

const tenths = [0.1, 0.2, 0.3, 0.4, 0.5] as const;
const diameters = [2, 2.5, 3, 4, 5, 6.35, 10, 25.4] as const;
const point = (diameter: number, length: number = CHARACTERISTIC_LENGTHS.point, holeFactor = 3): number =>
  notchedStrengthRatio({ holeDiameter: diameter * 1e-3, characteristicLength: length, holeFactor });
const mean = (diameter: number, length: number = CHARACTERISTIC_LENGTHS.mean, holeFactor = 3): number =>
  meanStressRatio({ holeDiameter: diameter * 1e-3, characteristicLength: length, holeFactor });
/** Camanho's laminate: hole mm, measured strength MPa, point and mean stress calibrated on 6 mm. */
const measured = [[2, 555.7, 639.7, 587.6], [4, 480.6, 505.7, 490.9], [8, 375.7, 400.7, 406.3], [10, 373.7, 376.6, 384.4]] as const; // prettier-ignore

export const cases: PublishedCase[] = [
  ...rows(
    'Stress beside a hole in a wide sheet',
    {
      kind: 'published formula, our number',
      source: 'pilkey-2008-peterson',
      where: 'eq. 4.7',
      tolerance: { relative: 1e-4 },
      because: 'digits of the formula',
    },
    (
      [
        [1, 3],
        [1.1, 2.4377],
        [1.25, 1.9344],
        [1.5, 1.5185],
        [2, 1.21875],
        [3, 1.0741],
      ] as const
    ).map(([r, e]): Row => [`kirsch-${r}`, e, () => kirschStress(1 / r), `${r} radii from the centre`]),
  ),
  ...rows(
    'Hole in a strip, net factor',
    {
      kind: 'published formula, our number',
      source: 'young-2002-roark',
      where: 'Table 17.1, central hole, axial',
      tolerance: { relative: 1e-4 },
      because: 'digits of the formula',
    },
    tenths.map((x, i): Row => [
      `roark-strip-${x}`,
      [2.7221, 2.5082, 2.3491, 2.2357, 2.1588][i]!,
      () => stripHoleFactor(x),
      `hole over width ${x}`,
    ]),
  ),
  ...rows(
    'Hole in a strip against the exact series',
    {
      kind: 'from memory',
      source: 'howland-1930-strip',
      where: 'table of stresses',
      tolerance: { relative: 0.005 },
      because: 'the cubic is a fit within half a per cent',
    },
    tenths.map((x, i): Row => [
      `howland-strip-${x}`,
      [2.727, 2.512, 2.352, 2.244, 2.16][i]!,
      () => stripHoleFactor(x),
      `hole over width ${x}`,
    ]),
  ),
  ...rows(
    'Hole in a strip, short form',
    {
      kind: 'from memory',
      source: 'heywood-1952-photoelasticity',
      where: 'short form',
      tolerance: { absolute: 5e-4 },
      because: 'exact; the expected values carry three decimals',
    },
    tenths.map((x, i): Row => [
      `heywood-strip-${x}`,
      [2.729, 2.512, 2.343, 2.216, 2.125][i]!,
      () => heywoodFactor(x),
      `hole over width ${x}`,
    ]),
  ),
  ...rows(
    'Hole in a strip, chart reading',
    {
      kind: 'published number',
      source: 'bhandari-2010-machine',
      where: 'Example 5.1, fig. 5.2, p. 143',
      tolerance: { relative: 0.005 },
      because: 'read from a chart',
    },
    [['bhandari-5-1-strip', 2.16, () => stripHoleFactor(0.5), 'hole 15, width 30 mm']],
  ),
  ...rows(
    'Peak stress at a hole in a strip, ksi',
    {
      kind: 'published number',
      source: 'gere-2004-mechanics',
      where: '§ 2.10, problem 1',
      tolerance: { relative: 0.015 },
      because: 'the book reads its factors from a chart',
    },
    (
      [
        [1, 6.24],
        [2, 6.99],
      ] as const
    ).map(([d, e]): Row => [
      `gere-2-10-${d}`,
      e,
      () => (stripHoleFactor(d / 6) * 3) / ((6 - d) * 0.25),
      `strip 6 × 0.25 in, hole ${d} in, 3 kip`,
    ]),
  ),
  ...rows(
    'Cross hole in a tube under axial load',
    {
      kind: 'published formula, our number',
      source: 'pilkey-2008-peterson',
      where: 'chart 4.66',
      tolerance: { relative: 1e-4 },
      because: 'digits of the fit',
    },
    (
      [
        [0, 0.1, 3.1563], [0, 0.2, 3.5397], [0.6, 0.1, 3.1714], [0.6, 0.2, 3.4985], [0.9, 0.1, 3.1203], [0.9, 0.2, 3.3677],
      ] as const
    ).map(([q, x, e]): Row => [`peterson-tube-axial-${q}-${x}`, e, () => tubeHoleAxialFactor({ holeRatio: x, boreRatio: q }), `bore ratio ${q}, hole ratio ${x}`]), // prettier-ignore
  ),
  ...rows(
    'Cross hole in a tube in bending',
    {
      kind: 'published formula, our number',
      source: 'pilkey-2008-peterson',
      where: 'chart 4.107',
      tolerance: { relative: 2e-4 },
      because: 'digits of the fit',
    },
    (
      [
        [0, 0.1, 2.74],
        [0, 0.15, 2.833],
        [0.6, 0.1, 2.792],
        [0.6, 0.15, 2.899],
      ] as const
    ).map(([q, x, e]): Row => [
      `peterson-tube-bending-${q}-${x}`,
      e,
      () => tubeHoleBendingFactor({ holeRatio: x, boreRatio: q }),
      `bore ratio ${q}, hole ratio ${x}`,
    ]),
  ),
  ...rows(
    'Cross hole in a tube in bending, against a table of net factors',
    {
      kind: 'from memory',
      source: 'shigley-2011-design',
      where: 'Table A-16',
      tolerance: { relative: 0.013 },
      because: 'the table prints two or three digits',
    },
    (
      [
        [0, 0.1, 2.735],
        [0.6, 0.1, 2.776],
        [0.6, 0.15, 2.899],
      ] as const
    ).map(([q, x, e]): Row => [
      `shigley-a16-${q}-${x}`,
      e,
      () => tubeHoleBendingFactor({ holeRatio: x, boreRatio: q }),
      `bore ratio ${q}, hole ratio ${x}`,
    ]),
  ),
  ...rows(
    'Cross hole in a tube of arm size',
    {
      kind: 'published formula, our number',
      source: 'pilkey-2008-peterson',
      where: 'charts 4.66 and 4.107',
      tolerance: { relative: 5e-4 },
      because: 'digits of the fits',
    },
    [
      [
        'peterson-arm-axial',
        3.352,
        () => tubeHoleAxialFactor({ holeRatio: 3 / 16, boreRatio: 14 / 16 }),
        'tube 16 × 14 mm, hole 3 mm, axial',
      ],
      [
        'peterson-arm-bending',
        3.188,
        () => tubeHoleBendingFactor({ holeRatio: 3 / 16, boreRatio: 14 / 16 }),
        'tube 16 × 14 mm, hole 3 mm, bending',
      ],
    ],
  ),
  ...rows(
    'Hole in a wide orthotropic sheet',
    {
      kind: 'published formula, our number',
      source: 'lekhnitskii-1968-plates',
      where: 'circular hole',
      tolerance: { relative: 2e-4 },
      because: 'four digits of the formula',
      note: 'The complex roots behind these factors are printed in sharma-2011-stress; their sum plus one is the factor.',
    },
    [
      [
        'lekhnitskii-0',
        6.75,
        () => orthotropicHoleFactor({ modulusX: 181e9, modulusY: 10.3e9, shearModulus: 7.17e9, poissonRatio: 0.28 }),
        'T300/5208 ply, load along the fibre',
      ],
      [
        'lekhnitskii-90',
        2.372,
        () =>
          orthotropicHoleFactor({
            modulusX: 10.3e9,
            modulusY: 181e9,
            shearModulus: 7.17e9,
            poissonRatio: (0.28 * 10.3) / 181,
          }),
        'T300/5208 ply, load across the fibre',
      ],
      [
        'lekhnitskii-cross-ply',
        4.915,
        () =>
          orthotropicHoleFactor({ modulusX: 95.991e9, modulusY: 95.991e9, shearModulus: 7.17e9, poissonRatio: 0.0302 }),
        'T300/5208, 0/90',
      ],
    ],
  ),
  ...rows(
    'Hole in a wide orthotropic sheet, from the printed complex roots',
    {
      // The source prints the roots; their sum, which is what we can compare, is ours.
      kind: 'published formula, our number',
      source: 'sharma-2011-stress',
      where: 'table of complex parameters',
      tolerance: { relative: 2e-4 },
      because: 'the roots are printed with four decimals',
    },
    [
      [
        'sharma-roots-0',
        0.8566 + 4.8936,
        () =>
          orthotropicHoleFactor({ modulusX: 181e9, modulusY: 10.3e9, shearModulus: 7.17e9, poissonRatio: 0.28 }) - 1,
        'ply along the fibre: sum of the roots',
      ],
      [
        'sharma-roots-90',
        0.2043 + 1.1674,
        () =>
          orthotropicHoleFactor({
            modulusX: 10.3e9,
            modulusY: 181e9,
            shearModulus: 7.17e9,
            poissonRatio: (0.28 * 10.3) / 181,
          }) - 1,
        'ply across the fibre: sum of the roots',
      ],
      [
        'sharma-roots-cross-ply',
        0.2747 + 3.6403,
        () =>
          orthotropicHoleFactor({
            modulusX: 95.991e9,
            modulusY: 95.991e9,
            shearModulus: 7.17e9,
            poissonRatio: 0.0302,
          }) - 1,
        '0/90: sum of the roots',
      ],
    ],
  ),
  ...rows(
    'Hole in a wide quasi-isotropic sheet',
    {
      kind: 'from memory',
      source: 'lekhnitskii-1968-plates',
      where: 'isotropic case',
      tolerance: { relative: 1e-4 },
      because: 'exact but for the rounded constants',
    },
    [
      [
        'lekhnitskii-quasi-isotropic',
        3,
        () =>
          orthotropicHoleFactor({ modulusX: 69.676e9, modulusY: 69.676e9, shearModulus: 26.88e9, poissonRatio: 0.296 }),
        'T300/5208, 0/±45/90',
      ],
    ],
  ),
  ...rows(
    'Strength of a laminate with a hole, point stress',
    {
      kind: 'from memory',
      source: 'whitney-1974-stress',
      where: 'point stress criterion',
      tolerance: { relative: 2e-4 },
      because: 'four decimals of the criterion',
    },
    diameters.map((d, i): Row => [
      `point-stress-${d}`,
      [0.8238, 0.7746, 0.7314, 0.6623, 0.6112, 0.5615, 0.4852, 0.3951][i]!,
      () => point(d),
      `hole ${d} mm, d0 1.016 mm`,
    ]),
  ),
  ...rows(
    'Strength of a laminate with a hole, mean stress',
    {
      kind: 'from memory',
      source: 'whitney-1974-stress',
      where: 'average stress criterion',
      tolerance: { relative: 2e-4 },
      because: 'four decimals of the criterion',
    },
    diameters.map((d, i): Row => [
      `mean-stress-${d}`,
      [0.8104, 0.7782, 0.7498, 0.7023, 0.6641, 0.6231, 0.5495, 0.4362][i]!,
      () => mean(d),
      `hole ${d} mm, a0 3.81 mm`,
    ]),
  ),
  ...rows(
    'Strength of an orthotropic laminate with a hole',
    {
      kind: 'from memory',
      source: 'konish-1975-approximate',
      where: 'terms for K other than 3',
      tolerance: { relative: 5e-4 },
      because: 'four decimals of the criterion',
    },
    [
      [
        'konish-point',
        0.6238,
        () => point(6.35, CHARACTERISTIC_LENGTHS.point, 4.915),
        'hole 6.35 mm, K 4.915, point stress',
      ],
      [
        'konish-mean',
        0.6184,
        () => mean(6.35, CHARACTERISTIC_LENGTHS.mean, 4.915),
        'hole 6.35 mm, K 4.915, mean stress',
      ],
    ],
  ),
  ...rows(
    'Finite-width correction',
    {
      kind: 'from memory',
      source: 'tan-1988-finite',
      where: 'isotropic form',
      tolerance: { relative: 1e-4 },
      because: 'five digits of the formula',
    },
    [
      [
        'tan-finite-width',
        0.96948,
        () => 1 / finiteWidthFactor(1 / 6),
        'hole a sixth of the width, infinite over finite',
      ],
    ],
  ),
  ...measured.flatMap(([d, strength, byPoint, byMean]) => [
    ...rows(
      'Open-hole strength of IM7/8552, model calibrated at 6 mm, MPa',
      {
        kind: 'from memory',
        source: 'whitney-1974-stress',
        where: 'point stress criterion on measured strengths',
        tolerance: { relative: 0.001 },
        because: 'digits of the arithmetic',
      },
      [
        [
          `open-hole-point-${d}`,
          byPoint,
          () => 845.1 * 0.96948 * point(d, 0.8351e-3),
          `hole ${d} mm, width six holes, d0 0.835 mm`,
        ],
        [
          `open-hole-mean-${d}`,
          byMean,
          () => 845.1 * 0.96948 * mean(d, 2.0813e-3),
          `hole ${d} mm, width six holes, a0 2.081 mm`,
        ],
      ],
    ),
    ...rows(
      'Open-hole strength of IM7/8552 against the test, MPa',
      {
        kind: 'from memory',
        source: 'camanho-2007-open-hole',
        where: 'test series',
        tolerance: { relative: 0.16 },
        because: 'the criterion is known to miss this series by up to 15 per cent',
      },
      [
        [
          `open-hole-measured-${d}`,
          strength,
          () => 845.1 * 0.96948 * point(d, 0.8351e-3),
          `hole ${d} mm, d0 fitted at 6 mm`,
        ],
      ],
    ),
  ]),
];

export const missing: MissingCheck[] = [
  {
    topic: 'joint',
    what: 'Open-hole strengths of a small carbon tube',
    instead: 'The plate criterion with the default length of one millimetre.',
  },
  {
    topic: 'joint',
    what: 'Test points of Whitney and Nuismer 1974',
    instead: 'The criterion itself and one later test series, from memory.',
  },
];
