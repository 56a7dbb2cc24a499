import {
  discOverlap,
  gapFromSpacing,
  motorLayout,
  overlapPowerFactor,
  ringGap,
  wireGauge,
} from '../../shared/src/layout/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const rows = rowsFor('layout');

/** Overlap of two equal discs of diameter 1 by counting strips across their common part. */
function countedOverlap(spacing: number): number {
  const strips = 200_000;
  const half = Math.sqrt(0.25 - (spacing / 2) ** 2);
  const width = (2 * half) / strips;
  const area = Array.from(
    { length: strips },
    (_, i) => 2 * Math.sqrt(0.25 - (-half + (i + 0.5) * width) ** 2) - spacing,
  ).reduce((sum, chord) => sum + chord * width, 0);
  return area / (Math.PI / 4);
}

const wires = [
  [10, 2.5882, 5.261],
  [12, 2.0525, 3.309],
  [14, 1.6277, 2.081],
  [16, 1.2908, 1.309],
  [18, 1.0237, 0.823],
  [20, 0.8118, 0.518],
  [22, 0.6438, 0.3255],
  [24, 0.5106, 0.2047],
] as const;

export const cases: PublishedCase[] = [
  ...rows(
    {
      kind: 'published formula, our number',
      source: 'tinney-2018-thrust',
      where: 'motor circle over propeller diameter 2.25',
      given: '',
      unit: '',
      tolerance: { relative: 0.001 },
      because: 'three digits',
      note: 'That the paper’s ratio is that of the diameters is our reading; the geometry is ours.',
    },
    [
      [
        'ring-gap-four',
        'Gap over diameter of four motors on a circle',
        0.591,
        () => ringGap({ circleRatio: 2.25, motors: 4 }),
        { given: 'four motors' },
      ],
      [
        'ring-gap-six',
        'Gap over diameter of six motors on a circle',
        0.125,
        () => ringGap({ circleRatio: 2.25, motors: 6 }),
        { given: 'six motors' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'lei-2020-micro',
      where: 'abstract: spacings tested',
      given: '',
      unit: '',
      tolerance: { absolute: 1e-12 },
      because: 'exact',
      note: 'The spacing is the paper’s; turning it into a gap is ours.',
    },
    [
      [
        'gap-closest-tested',
        'Gap over diameter at the closest spacing tested',
        0.1,
        () => gapFromSpacing(2.2),
        { given: 'spacing 2.2 radii' },
      ],
      [
        'gap-best-tested',
        'Gap over diameter at the spacing that did best',
        0.8,
        () => gapFromSpacing(3.6),
        { given: 'spacing 3.6 radii' },
      ],
      [
        'gap-widest-tested',
        'Gap over diameter at the widest spacing tested',
        1,
        () => gapFromSpacing(4),
        { given: 'spacing 4.0 radii' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'leishman-2006-helicopter',
      where: 'ch. 2, coaxial rotors sharing all their air',
      given: 'full overlap',
      unit: '',
      tolerance: { relative: 1e-9 },
      because: 'exact: the square root of two',
    },
    [
      [
        'overlap-full',
        'Induced power of two rotors in one place',
        Math.SQRT2,
        () => overlapPowerFactor(discOverlap({ spacing: 0, diameter: 0.127 })),
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'area added up in strips',
      given: '',
      unit: '',
      tolerance: { relative: 1e-6 },
      because: 'error of the strips',
    },
    [0.1, 0.5, 0.75, 0.95].map(
      (s) =>
        [
          `overlap-strips-${s}`,
          'Overlap of two equal discs',
          countedOverlap(s),
          () => discOverlap({ spacing: s, diameter: 1 }),
          { given: `spacing ${s} D` },
        ] as const,
    ),
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'diagonal of a rectangle',
      given: '',
      unit: 'mm',
      tolerance: { relative: 1e-9 },
      because: 'exact: right triangles of whole numbers',
    },
    [
      [
        'wheelbase-3-4-5',
        'Wheelbase of a wide frame',
        250,
        () => motorLayout({ propellerDiameter: 0.13, tipGap: 0.02, shape: 'wide', stretch: 4 / 3 }).wheelbase * 1e3,
        { given: '130 mm propellers, 20 mm gap, 4/3 as wide as long' },
      ],
      [
        'wheelbase-square',
        'Wheelbase of a square',
        100 * Math.SQRT2,
        () => motorLayout({ propellerDiameter: 0.08, tipGap: 0.02, shape: 'true-x', stretch: 3 }).wheelbase * 1e3,
        { given: '80 mm propellers, 20 mm gap' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'common practice',
      source: 'common-practice',
      where: 'wheelbase of 5-inch frames, 205 to 245 mm',
      given: '127 mm propellers, 25 mm gap',
      unit: 'mm',
      tolerance: { absolute: 20 },
      because: 'half the range',
    },
    [
      [
        'wheelbase-practice',
        'Wheelbase of a 5-inch true X',
        225,
        () => motorLayout({ propellerDiameter: 0.127, tipGap: 0.025, shape: 'true-x', stretch: 1 }).wheelbase * 1e3,
      ],
    ],
  ),
  ...wires.flatMap(([gauge, diameter, area]) =>
    rows(
      {
        kind: 'from memory',
        source: 'astm-b258-gauge',
        where: 'table of sizes',
        given: `gauge ${gauge}`,
        unit: 'mm',
        tolerance: { relative: 0.001 },
        because: 'the table prints four digits',
      },
      [
        [`wire-diameter-${gauge}`, 'Diameter of a wire by gauge', diameter, () => wireGauge(gauge).diameter * 1e3],
        [`wire-area-${gauge}`, 'Area of a wire by gauge', area, () => wireGauge(gauge).area * 1e6, { unit: 'mm²' }],
      ],
    ),
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'astm-b258-gauge',
      where: 'copper at 20 °C',
      given: '',
      unit: 'Ω/km',
      tolerance: { relative: 0.001 },
      because: 'four digits',
    },
    (
      [
        [12, 5.211],
        [16, 13.17],
        [20, 33.31],
      ] as const
    ).map(
      ([gauge, resistance]) =>
        [
          `wire-resistance-${gauge}`,
          'Resistance of copper wire',
          resistance,
          () => wireGauge(gauge).resistancePerLength * 1e3,
          { given: `gauge ${gauge}` },
        ] as const,
    ),
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'layout',
    what: 'Thrust or hover power against the gap between propellers, as a table',
    instead: 'What the papers’ abstracts say, side by side in the article, and no formula for gaps above zero.',
  },
  {
    topic: 'layout',
    what: 'Unsteady thrust at a gap of a twentieth of the diameter',
    instead: 'Recalled only; it stands in the article as recalled and is not tested.',
  },
  {
    topic: 'layout',
    what: 'Level of noise against gap and place of the listener',
    instead:
      'Two stated differences, about +10 dBA below closing rotors and about −4 dBA with one half a diameter downstream, quoted and not computed.',
  },
  {
    topic: 'layout',
    what: 'Power of partly overlapping small propellers, measured',
    instead: 'Momentum theory of the common area, with its known end at full overlap.',
  },
];
