import {
  circularPlate,
  leastWeb,
  loadedPlate,
  loadSpot,
  plateBendingHoleFactor,
  rectangularPlate,
  tongue,
  twoPlates,
  webs,
  type PlateEdge,
  type PlateLoad,
} from '../../shared/src/plate/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const rows = rowsFor('plate');

const TIMOSHENKO = { source: 'timoshenko-1959-plates', kind: 'from memory' } as const;
const plate = (ratio: number, edge: PlateEdge, load: PlateLoad) => rectangularPlate(ratio, edge, load);
const sized = (table: string, edge: string, load: string) => ({
  ...TIMOSHENKO,
  where: table,
  given: `${edge} on four edges, ${load}, ν 0.3`,
  unit: '',
});

/** Two faces of the beam of Gere's Example 6-2 without its core: b 200, faces 5 mm, 160 mm over all. */
const faces = () =>
  twoPlates({
    width: 0.2,
    bottom: { thickness: 0.005, youngsModulus: 72e9 },
    top: { thickness: 0.005, youngsModulus: 72e9 },
    gap: 0.15,
  });

const steel = { thickness: 0.01, youngsModulus: 200e9 };
/** One tongue, a tip force of one newton, 1 m long, 0.1 wide. */
const cantilever = (link: 'sliding' | 'tied' | 'bonded', both: boolean) =>
  tongue({
    width: 0.1,
    bottom: steel,
    ...(both ? { top: steel } : {}),
    gap: 10,
    length: 1,
    shearModulus: 77e9,
    link,
    plane: 'vertical',
    loads: [{ at: 1, force: 1 }],
  });
const EI = (200e9 * 0.1 * 0.01 ** 3) / 12;

/** A portal on its side: two equal webs of 10 mm, far apart, so that the solid plate ends are the rigid beams. */
const vierendeel = () =>
  webs(
    {
      plateWidth: 0.1,
      thickness: 0.002,
      cutoutWidth: 0.08,
      cutoutLength: 0.05,
      cutoutOffset: 0,
      youngsModulus: 47e9,
      shearModulus: 18e9,
    },
    { axial: 0, shear: 100, moment: 0, outOfPlane: 0 },
  )[0];

export const cases: readonly PublishedCase[] = [
  ...rows(
    {
      ...sized('§ 30, Table 8', 'supported', 'uniform load'),
      tolerance: { relative: 0.003 },
      because: 'printed to three digits',
    },
    (
      [
        [1, 0.00406],
        [1.2, 0.00564],
        [1.5, 0.00772],
        [2, 0.01013],
        [3, 0.01223],
      ] as const
    ).map(([ratio, expected]) => [
      `supported-uniform-${ratio}`,
      `Deflection of a supported plate, long over short side ${ratio}`,
      expected,
      () => plate(ratio, 'supported', 'uniform').deflection,
      // The value that stands in public finite-element tests, with its table named.
      ratio === 1 ? { kind: 'published number' as const, unit: 'qa⁴/D' } : { unit: 'qa⁴/D' },
    ]),
  ),
  ...rows(
    {
      ...sized('§ 30, Table 8', 'supported', 'uniform load'),
      unit: 'qa²',
      tolerance: { relative: 0.003 },
      because: 'printed to three digits',
    },
    (
      [
        [1, 0.0479, 0.0479],
        [1.5, 0.0812, 0.0498],
        [2, 0.1017, 0.0464],
        [3, 0.1189, 0.0406],
      ] as const
    ).flatMap(([ratio, across, along]) => [
      [
        `supported-uniform-across-${ratio}`,
        `Moment across a supported plate, sides ${ratio} to 1`,
        across,
        () => plate(ratio, 'supported', 'uniform').across,
      ] as const,
      [
        `supported-uniform-along-${ratio}`,
        `Moment along a supported plate, sides ${ratio} to 1`,
        along,
        () => plate(ratio, 'supported', 'uniform').along,
      ] as const,
    ]),
  ),
  ...rows(
    {
      ...sized('Table 35', 'fixed', 'uniform load'),
      kind: 'published number',
      tolerance: { relative: 0.015 },
      because: 'the table is of 1915 and printed to three digits; a Ritz solution gives 0.001265, 0.0229 and -0.0513',
    },
    [
      [
        'fixed-uniform-square',
        'Deflection of a square fixed plate',
        0.00126,
        () => plate(1, 'fixed', 'uniform').deflection,
        { unit: 'qa⁴/D' },
      ],
      [
        'fixed-uniform-square-middle',
        'Moment in the middle of a square fixed plate',
        0.0231,
        () => plate(1, 'fixed', 'uniform').across,
        { unit: 'qa²' },
      ],
      [
        'fixed-uniform-square-edge',
        'Moment at the edge of a square fixed plate',
        -0.0513,
        () => plate(1, 'fixed', 'uniform').edge,
        { unit: 'qa²' },
      ],
    ],
  ),
  ...rows(
    {
      ...sized('Table 35', 'fixed', 'uniform load'),
      tolerance: { relative: 0.005 },
      because: 'printed to three digits',
    },
    (
      [
        [1.5, 0.0022, -0.0757, 0.0368],
        [2, 0.00254, -0.0829, 0.0412],
      ] as const
    ).flatMap(([ratio, deflection, edge, across]) => [
      [
        `fixed-uniform-${ratio}`,
        `Deflection of a fixed plate, sides ${ratio} to 1`,
        deflection,
        () => plate(ratio, 'fixed', 'uniform').deflection,
        { unit: 'qa⁴/D' },
      ] as const,
      [
        `fixed-uniform-edge-${ratio}`,
        `Moment at the long edge of a fixed plate, sides ${ratio} to 1`,
        edge,
        () => plate(ratio, 'fixed', 'uniform').edge,
        { unit: 'qa²' },
      ] as const,
      [
        `fixed-uniform-across-${ratio}`,
        `Moment across a fixed plate, sides ${ratio} to 1`,
        across,
        () => plate(ratio, 'fixed', 'uniform').across,
        { unit: 'qa²' },
      ] as const,
    ]),
  ),
  ...rows(
    {
      ...sized('Table 23', 'supported', 'force in the middle'),
      unit: 'Pa²/D',
      tolerance: { relative: 0.004 },
      because:
        'printed to four digits; the series itself gives 0.01356 and 0.01693 where the table has 0.01353 and 0.01690',
    },
    (
      [
        [1, 0.0116],
        [1.2, 0.01353],
        [2, 0.01651],
        [3, 0.0169],
        [1e6, 0.01695],
      ] as const
    ).map(([ratio, expected]) => [
      `supported-centre-${ratio}`,
      `Deflection of a supported plate under a force, sides ${ratio} to 1`,
      expected,
      () => plate(ratio, 'supported', 'centre').deflection,
    ]),
  ),
  ...rows(
    {
      ...sized('Table 37', 'fixed', 'force in the middle'),
      tolerance: { relative: 0.01 },
      because: 'printed to three digits; ours is the series of its § 44 with fourteen terms',
    },
    [
      [
        'fixed-centre-square',
        'Deflection of a square fixed plate under a force',
        0.0056,
        () => plate(1, 'fixed', 'centre').deflection,
        { unit: 'Pa²/D' },
      ],
      [
        'fixed-centre-square-edge',
        'Moment at its edge',
        -0.1257,
        () => plate(1, 'fixed', 'centre').edge,
        { unit: 'P' },
      ],
      [
        'fixed-centre-2',
        'Deflection of a fixed plate twice as long as wide',
        0.00722,
        () => plate(2, 'fixed', 'centre').deflection,
        { unit: 'Pa²/D' },
      ],
      ['fixed-centre-2-edge', 'Moment at its edge', -0.1674, () => plate(2, 'fixed', 'centre').edge, { unit: 'P' }],
    ],
  ),
  ...rows(
    {
      source: 'young-2002-roark',
      kind: 'from memory',
      where: 'Table 11.4, cases 1b and 8b',
      given: 'force on a small spot in the middle, ν 0.3',
      unit: '',
      tolerance: { absolute: 0.01 },
      because: 'the handbook prints three decimals of numerical work of the 1930s',
    },
    (
      [
        ['supported', 1, 0.435],
        ['supported', 1.4, 0.789],
        ['supported', 2, 0.958],
        ['fixed', 1, -0.238],
        ['fixed', 1.2, -0.078],
        ['fixed', 1.4, 0.011],
        ['fixed', 2, 0.067],
      ] as const
    ).map(([edge, ratio, expected]) => [
      `roark-spot-${edge}-${ratio}`,
      `Moment under a force on a ${edge} plate, β at sides ${ratio} to 1`,
      expected,
      () => plate(ratio, edge, 'centre').across,
    ]),
  ),
  ...rows(
    {
      ...TIMOSHENKO,
      where: '§ 19',
      given: 'round plate, force in the middle, ν 0.3',
      unit: 'Pa²/D',
      tolerance: { relative: 3e-4 },
      because: 'four digits of a closed form',
    },
    [
      [
        'round-fixed-centre',
        'Deflection of a fixed round plate under a force',
        0.01989,
        () => circularPlate('fixed', 'centre').deflection,
      ],
      [
        'round-supported-centre',
        'Deflection of a supported round plate under a force',
        0.0505,
        () => circularPlate('supported', 'centre').deflection,
      ],
    ],
  ),
  ...rows(
    {
      ...TIMOSHENKO,
      where: '§§ 16 and 19',
      given: 'round plate, ν 0.3',
      unit: '',
      tolerance: { relative: 5e-4 },
      because: 'four digits of a closed form',
    },
    [
      [
        'round-ratio',
        'Supported over fixed, force in the middle',
        2.538,
        () => circularPlate('supported', 'centre').deflection / circularPlate('fixed', 'centre').deflection,
      ],
      [
        'round-uniform-ratio',
        'Supported over fixed, uniform load: (5+ν)/(1+ν)',
        4.077,
        () => circularPlate('supported', 'uniform').deflection / circularPlate('fixed', 'uniform').deflection,
      ],
    ],
  ),
  ...rows(
    {
      source: 'young-2002-roark',
      kind: 'from memory',
      where: '§ 11.1, after Westergaard',
      given: 'plate 2 mm',
      unit: 'mm',
      tolerance: { relative: 1e-4 },
      because: 'four digits of the formula',
    },
    [
      ['spot-small', 'Radius that a spot of 0.5 mm counts with', 0.7476, () => loadSpot(0.5e-3, 2e-3) * 1e3],
      ['spot-large', 'Radius that a spot of 3 mm counts with', 3, () => loadSpot(3e-3, 2e-3) * 1e3],
    ],
  ),
  ...rows(
    {
      source: 'goodier-1936-holes',
      kind: 'from memory',
      where: 'plate bent one way, small hole: (5+3ν)/(3+ν), ν 0.3',
      given: 'hole 100 times the thickness, plate a thousand holes wide',
      unit: '',
      tolerance: { relative: 0.01 },
      because: 'the handbook’s short form tends to 1.79',
    },
    [
      [
        'hole-thin-plate',
        'Peak at a wide hole in a thin plate',
        1.788,
        () => plateBendingHoleFactor({ width: 100, thickness: 1e-3, holeDiameter: 0.1 }),
      ],
    ],
  ),
  ...rows(
    {
      source: 'pilkey-2008-peterson',
      kind: 'from memory',
      where: 'hole in a plate in bending, limit of a thick plate',
      given: 'hole a hundredth of the thickness',
      unit: '',
      tolerance: { relative: 0.02 },
      because: 'the handbook’s short form tends to 2.98',
    },
    [
      [
        'hole-thick-plate',
        'Peak at a narrow hole in a thick plate',
        3,
        () => plateBendingHoleFactor({ width: 1, thickness: 0.1, holeDiameter: 1e-3 }),
      ],
    ],
  ),
  ...rows(
    {
      source: 'gere-2004-mechanics',
      kind: 'published number',
      where: 'Example 6-2, p. 402',
      given: 'two faces 200 × 5 mm, 160 mm over all, 72 GPa, 3 kN·m',
      unit: '',
      tolerance: { relative: 1e-3 },
      because: 'printed to four or five digits',
    },
    [
      [
        'sandwich-faces',
        'Second moment of two plates that act as one',
        12.017,
        () => (faces().together / 72e9) * 1e6,
        { unit: '10⁻⁶ m⁴' },
      ],
      [
        'sandwich-face-stress',
        'Stress of the faces by themselves',
        19.97,
        () => (3000 * 0.08 * 72e9) / faces().together / 1e6,
        { unit: 'MPa' },
      ],
    ],
  ),
  ...rows(
    {
      source: 'ghali-neville-structural',
      kind: 'from memory',
      where: 'cantilever and member with one end kept parallel',
      given: 'two equal plates, far apart, tip force',
      unit: 'FL³/EI of one',
      tolerance: { relative: 1e-3 },
      because: 'closed form; the plates stretch a little',
    },
    [
      ['tongue-one', 'Movement of a tongue of one plate', 1 / 3, () => cantilever('sliding', false).deflection * EI],
      ['tongue-sliding', 'The same of two plates that slide', 1 / 6, () => cantilever('sliding', true).deflection * EI],
      [
        'tongue-tied',
        'The same of two plates kept parallel at the end',
        1 / 24,
        () => cantilever('tied', true).deflection * EI,
      ],
    ],
  ),
  ...rows(
    {
      source: 'ghali-neville-structural',
      kind: 'published formula, our number',
      where: 'fixed-fixed member with an end offset, M = VL/2',
      given: 'two webs 10 mm wide beside a cutout 50 mm long, 100 N across',
      unit: 'N·m',
      tolerance: { relative: 1e-9 },
      because: 'closed form',
    },
    [['web-portal', 'End moment of one web', 1.25, () => vierendeel().moment]],
  ),
  ...rows(
    {
      source: 'willberg-2023-lectures',
      kind: 'published number',
      where: 'after figures 22.2-22.4: side distance 2.5 d',
      given: 'M3 hole of 3.2 mm in a plate of 2 mm',
      unit: 'mm',
      tolerance: { relative: 1e-9 },
      because: 'the rule as it is printed, to the hole’s edge',
    },
    [
      [
        'web-beside-hole',
        'Least web between a screw hole and a cutout',
        6.4,
        () => leastWeb(0.002, 0.0032).width * 1e3,
      ],
    ],
  ),
  ...rows(
    {
      source: 'timoshenko-1959-plates',
      kind: 'published formula, our number',
      where: '§ 30, Table 8, square: 0.00406 qa⁴/D',
      given: 'supported square of 40 mm, 2 mm, 47 GPa, ν 0.3, 100 N spread',
      unit: 'mm',
      tolerance: { relative: 2e-3 },
      because: 'coefficient of three digits',
    },
    [
      [
        'supported-square-sized',
        'Deflection of a small carbon square',
        0.01887,
        () =>
          loadedPlate({
            shape: { width: 0.04, length: 0.04 },
            edge: 'supported',
            force: 100,
            thickness: 0.002,
            youngsModulus: 47e9,
          }).deflection * 1e3,
      ],
    ],
  ),
];

export const missing: readonly MissingCheck[] = [
  {
    topic: 'plate',
    what: 'A measured bending stiffness of a frame’s tongue with one and with two plates',
    instead:
      'cantilevers and parallel members of structural textbooks, a stiffness-matrix solution in the property tests',
  },
  {
    topic: 'plate',
    what: 'Stress in the webs of a plate with a cutout as a worked number',
    instead: 'the portal formula, equilibrium of both webs as a property, and a stiffness-matrix solution',
  },
  {
    topic: 'plate',
    what: 'A measured strength of a thin carbon strip with a hole in bending',
    instead: 'the handbook’s elastic factor, and the point-stress rule of laminates in tension',
  },
  {
    topic: 'plate',
    what: 'A printed rule for the least width of a web in a frame plate',
    instead: 'a rule of thumb of the trade, marked so; beside screw holes the printed side distance of laminates',
  },
];
