import {
  rectangleShearCoefficient,
  rectangleTorsionConstant,
  rectangleTorsionModulus,
  roundShearCoefficient,
  roundTubeSection,
  solidRectangleSection,
  solidRoundSection,
  tubePeakShearStress,
} from '@frameworthy/shared/section';
import type { MissingCheck, PublishedCase } from './row.ts';

const boresi = roundTubeSection({ outerDiameter: 0.05, wall: 0.003 });
const gereTube = { outerDiameter: 0.1016, wall: 0.01016 };
const hollow = roundTubeSection({ outerDiameter: 0.05, wall: 0.01 });
const solid = solidRoundSection({ diameter: 0.05 });

const torsionTable = [
  [1, 0.141], [1.2, 0.166], [1.5, 0.196], [2, 0.229], [2.5, 0.249], [3, 0.263], [4, 0.281], [5, 0.291], [10, 0.312],
] as const; // prettier-ignore
const stressTable = [[1, 0.208], [1.5, 0.231], [2, 0.246], [3, 0.267], [4, 0.282], [8, 0.307], [10, 0.313]] as const; // prettier-ignore
const roark = [[1, 0.1408], [2, 0.2289], [4, 0.2809], [10, 0.3123]] as const; // prettier-ignore
const cowper = [
  ['thin round tube', 1, [0.5, 0.5263, 0.5306, 0.5455]],
  ['solid round bar', 0, [0.8571, 0.8824, 0.8864, 0.9]],
] as const;
const ratios = [0, 0.25, 0.3, 0.5] as const;

export const cases: PublishedCase[] = [
  {
    id: 'boresi-example-6-1-torsion-constant',
    topic: 'section',
    what: 'Torsion constant of a round tube',
    kind: 'published number',
    source: 'boresi-2003-mechanics',
    where: 'Example 6.1',
    given: 'outer radius 25 mm, inner radius 22 mm',
    unit: 'm⁴',
    expected: 2.4562e-7,
    compute: () => boresi.torsionConstant,
    tolerance: { relative: 0.001 },
    because: 'the book works with rounded intermediate figures',
  },
  {
    id: 'boresi-example-6-1-shear-stress',
    topic: 'section',
    what: 'Torsion stress of a round tube',
    kind: 'published number',
    source: 'boresi-2003-mechanics',
    where: 'Example 6.1',
    given: 'as above, torque 500 N·m',
    unit: 'MPa',
    expected: 50.89,
    compute: () => (500 * 0.025) / boresi.torsionConstant / 1e6,
    tolerance: { relative: 0.001 },
    because: 'the book prints four digits',
  },
  {
    id: 'gere-example-5-13-peak-shear',
    topic: 'section',
    what: 'Peak shear stress of a round tube under a force across it',
    kind: 'published number',
    source: 'gere-2004-mechanics',
    where: 'Example 5-13, p. 345',
    given: 'diameters 101.6 and 81.28 mm, force 6672.3 N (4 in, 3.2 in, 1500 lbf)',
    unit: 'MPa',
    expected: 4.535,
    compute: () => tubePeakShearStress(gereTube, 6672.3) / 1e6,
    tolerance: { relative: 0.002 },
    because: 'the book prints 658 psi',
  },
  ...(
    [
      [
        'stress',
        'Hollow over solid shaft: torsion stress, equal outside diameter',
        1.149,
        () => solid.torsionConstant / hollow.torsionConstant,
      ],
      ['mass', 'Hollow over solid shaft: mass, equal outside diameter', 0.64, () => hollow.area / solid.area],
    ] as const
  ).map(([id, what, expected, compute]): PublishedCase => ({
    id: `gere-example-3-3-${id}`,
    topic: 'section',
    what,
    kind: 'published number',
    source: 'gere-2004-mechanics',
    where: 'Example 3-3, p. 200',
    given: 'bore 0.6 of the outside diameter',
    unit: '',
    expected,
    compute,
    tolerance: { relative: 0.001 },
    because: 'the book prints three digits',
  })),
  ...torsionTable.map(([ratio, expected]): PublishedCase => ({
    id: `timoshenko-rectangle-torsion-${ratio}`,
    topic: 'section',
    what: 'Torsion constant of a rectangle over a·b³',
    kind: 'published number',
    source: 'timoshenko-1970-elasticity',
    where: '§ 109, table',
    given: `a/b = ${ratio}`,
    unit: '',
    expected,
    compute: () => rectangleTorsionConstant(ratio, 1) / ratio,
    tolerance: { absolute: 0.0006 },
    because: 'the table prints three decimals',
  })),
  ...stressTable.map(([ratio, expected]): PublishedCase => ({
    id: `rectangle-torsion-stress-${ratio}`,
    topic: 'section',
    what: 'Torsion modulus of a rectangle over a·b²',
    kind: 'published number',
    source: 'timoshenko-1970-elasticity',
    where: '§ 109, table',
    given: `a/b = ${ratio}`,
    unit: '',
    expected,
    compute: () => rectangleTorsionModulus(ratio, 1) / ratio,
    tolerance: { absolute: 0.001 },
    because: 'the table prints three decimals; at a/b = 10 it is also printed as 0.312',
  })),
  ...roark.map(([ratio, expected]): PublishedCase => ({
    id: `roark-rectangle-torsion-${ratio}`,
    topic: 'section',
    what: 'Series for the torsion constant against the one-line engineering formula',
    kind: 'published formula, our number',
    source: 'young-2002-roark',
    where: 'Table 10.1, solid rectangle',
    given: `a/b = ${ratio}, a·b³[1/3 − 0.21(b/a)(1 − b⁴/12a⁴)]`,
    unit: '',
    expected,
    compute: () => rectangleTorsionConstant(ratio, 1) / ratio,
    tolerance: { relative: 0.005 },
    because: 'the one-line formula is an approximation of the series within half a per cent',
  })),
  ...cowper.flatMap(([what, bore, row]) =>
    row.map((expected, i): PublishedCase => ({
      id: `cowper-${bore === 1 ? 'tube' : 'bar'}-${ratios[i]}`,
      topic: 'section',
      what: `Shear coefficient, ${what}`,
      kind: 'published formula, our number',
      source: 'cowper-1966-shear',
      where: 'table of coefficients',
      given: `Poisson’s ratio ${ratios[i]}`,
      unit: '',
      expected,
      compute: () => roundShearCoefficient(bore, ratios[i]!),
      tolerance: { absolute: 1e-4 },
      because: 'the closed forms of the two limits, four decimals',
    })),
  ),
  ...[0.8333, 0.8475, 0.8497, 0.8571].map((expected, i): PublishedCase => ({
    id: `cowper-rectangle-${ratios[i]}`,
    topic: 'section',
    what: 'Shear coefficient, rectangle',
    kind: 'published formula, our number',
    source: 'cowper-1966-shear',
    where: 'table of coefficients',
    given: `Poisson’s ratio ${ratios[i]}`,
    unit: '',
    expected,
    compute: () => rectangleShearCoefficient(ratios[i]!),
    tolerance: { absolute: 1e-4 },
    because: 'four decimals of the closed form',
  })),
  {
    id: 'cowper-thick-tube',
    topic: 'section',
    what: 'Shear coefficient of a thick round tube',
    kind: 'published formula, our number',
    source: 'cowper-1966-shear',
    where: 'table of coefficients',
    given: 'bore ratio 0.8, Poisson’s ratio 0.3',
    unit: '',
    expected: 0.5411,
    compute: () => roundShearCoefficient(0.8, 0.3),
    tolerance: { absolute: 1e-4 },
    because: 'four decimals of the closed form',
  },
  {
    id: 'strip-second-moment',
    topic: 'section',
    what: 'Second moment of a drilled bar, by subtraction',
    kind: 'from memory',
    source: 'shigley-2011-design',
    where: 'Example 8-7, part (d)',
    given: 'bar 15 × 200 mm, two 16 mm holes 60 mm either side of the middle',
    unit: 'mm⁴',
    expected: 8.26e6,
    compute: () => {
      const bar = solidRectangleSection({ width: 0.015, height: 0.2 });
      const hole = solidRectangleSection({ width: 0.015, height: 0.016 });
      return (bar.vertical.secondMomentOfArea - 2 * (hole.vertical.secondMomentOfArea + hole.area * 0.06 ** 2)) * 1e12;
    },
    tolerance: { relative: 0.002 },
    because: 'three digits are remembered',
  },
];

export const missing: MissingCheck[] = [
  {
    topic: 'section',
    what: 'Second moments of a round tube with a cross hole, as a printed number',
    instead: 'An independent numerical integration over the drilled section, as a property test.',
  },
  {
    topic: 'section',
    what: 'Torsion constant of a strip with round edges',
    instead: 'Saint-Venant’s rule, exact at the circle and within a tenth of the long strip, as property tests.',
  },
];
