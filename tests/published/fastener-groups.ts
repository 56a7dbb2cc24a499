import {
  fastenerGroup,
  netSectionStress,
  PROPERTY_CLASSES,
  screwStrength,
  shearOutStress,
} from '../../shared/src/joint/index.ts';
import { solidRectangleSection } from '../../shared/src/section/index.ts';
import { columnHeadStiffness } from '../../shared/src/standoff/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const corner = [
  [75, 60],
  [75, -60],
  [-75, 60],
  [-75, -60],
].map(([x, y]) => ({ x: x! / 1e3, y: y! / 1e3 }));
const worst = () =>
  Math.max(...fastenerGroup(corner, { force: { x: 0, y: -16e3 }, at: { x: 0.425, y: 0 } }).map((f) => f.total));

/** Bar 15 × 200 mm bent in its plane, two holes of 16 mm at 60 mm either side. */
const barStress = () => {
  const bar = solidRectangleSection({ width: 0.015, height: 0.2 }).vertical;
  const hole = solidRectangleSection({ width: 0.015, height: 0.016 });
  const inertia = bar.secondMomentOfArea - 2 * (hole.vertical.secondMomentOfArea + hole.area * 0.06 ** 2);
  return (16e3 * 0.35 * bar.extremeFibre) / inertia;
};

const strengthOf = (diameter: number, pitch: number) =>
  screwStrength({ diameter: diameter / 1e3, pitch: pitch / 1e3 }, PROPERTY_CLASSES['8.8']);
const lug = { force: 1, thickness: 0.004 };

/** What is left of the worked example of a screw group, and the last of a post's springy feet. */
export const cases: readonly PublishedCase[] = [
  ...rowsFor('joint')(
    {
      source: 'shigley-2011-design',
      where: 'Example 8-7, part (b), pp. 457-458',
      kind: 'published number',
      given: 'screws at (±75, ±60) mm, 16 kN at 425 mm, minor area 144 mm²',
      unit: 'MPa',
      tolerance: { relative: 0.005 },
      because: 'the book prints three digits',
    },
    [['shigley-8-7-shear', 'Shear stress of the most loaded screw', 146, () => worst() / 144e-6 / 1e6]],
  ),
  ...rowsFor('joint')(
    {
      source: 'en-2005-1993-1-8',
      where: 'Table 3.4, tabulated',
      kind: 'published number',
      given: '',
      unit: 'kN',
      tolerance: { relative: 0.005 },
      because: 'the tables print three digits; the factors of the code are put in by hand',
      note: 'Pitches are the usual ones, recalled.',
    },
    [
      [
        'steelwork-shear-M12',
        'Shear strength of a class 8.8 screw',
        27.5,
        () => (0.85 * strengthOf(12, 1.75).shear) / 1.25 / 1e3,
        { given: 'M12, with the 0.85 that the code takes off for its wide hole, over 1.25' },
      ],
      ...(
        [
          [16, 2, 90.4],
          [20, 2.5, 141],
          [24, 3, 203],
          [30, 3.5, 323],
        ] as const
      ).map(
        ([size, pitch, expected]) =>
          [
            `steelwork-tension-M${size}`,
            'Tensile strength of a class 8.8 screw',
            expected,
            () => (0.9 * strengthOf(size, pitch).tension) / 1.25 / 1e3,
            { given: `M${size}, the code’s 0.9 over 1.25` },
          ] as const,
      ),
    ],
  ),
  ...rowsFor('joint')(
    {
      source: 'willberg-2023-lectures',
      where: 'combined shear-out and tension',
      kind: 'published formula, our number',
      given: 'd 8, t 4, e 24, w 40 mm; strengths 500 tension, 110 MPa shear',
      unit: 'N',
      tolerance: { relative: 1e-9 },
      because: 'exact',
      note: 'Half of the net section and one of the two planes, from the edge of the hole.',
    },
    [
      [
        'laminate-mixed',
        'Limit of a laminate with one screw that tears on one side and shears on the other',
        40800,
        () =>
          (500e6 / netSectionStress({ ...lug, width: 0.04, diameter: 0.008 }) +
            110e6 / shearOutStress({ ...lug, shearLength: 0.02 })) /
          2,
      ],
    ],
  ),
  ...rowsFor('section')(
    {
      source: 'shigley-2011-design',
      where: 'Example 8-7, part (d)',
      kind: 'from memory',
      given: 'bar 15 × 200 mm, two 16 mm holes 60 mm either side of the middle, 16 kN × 350 mm',
      unit: 'MPa',
      tolerance: { relative: 0.002 },
      because: 'three digits are remembered',
    },
    [['shigley-8-7-bar', 'Bending stress of a drilled bar', 67.8, () => barStress() / 1e6]],
  ),
  ...rowsFor('standoff')(
    {
      source: 'own-derivation',
      where: 'slope-deflection: 12(β+1)/(β+4), β without end',
      kind: 'own derivation or solver',
      given: 'foot stiffness 10⁹ EI/h',
      unit: 'EI/h³',
      tolerance: { relative: 1e-6 },
      because: 'limit of the closed form',
    },
    [
      [
        'post-foot-spring-stiff',
        'Post with a foot nearly fixed, head held level',
        12,
        () =>
          columnHeadStiffness({
            length: 1,
            flexuralRigidity: 1,
            shearRigidity: 1e15,
            axialRigidity: 1e15,
            foot: 1e9,
            head: 'fixed',
          }).sway,
      ],
    ],
  ),
];

export const missing: readonly MissingCheck[] = [
  {
    topic: 'joint',
    what: 'Stiffness of a screw through two metal plates by the two short forms that airframe makers print: 36.6 and 12.1 MN/m for the same joint',
    instead:
      'only the form for bolted carbon is used; that three printed forms differ by a factor of three bounds what any is worth',
  },
];
