import { plateOnColumns, rockingBoss, type Column, type PlateOnColumns } from '../../shared/src/standoff/index.ts';
import type { PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const rows = rowsFor('standoff');

/** A bolt group as posts under a rigid plate: stiff along, so that a load in the plate's plane rocks nothing. */
const group = (places: readonly (readonly [number, number])[], force: number, lever: number): PlateOnColumns => {
  const bolt = {
    length: 0.01,
    flexuralRigidity: 1,
    shearRigidity: 1e15,
    axialRigidity: 1e15,
    foot: 'fixed',
    head: 'fixed',
  } as const;
  const columns: Column[] = places.map(([x, y]) => ({ ...bolt, x: x / 1e3, y: y / 1e3 }));
  return plateOnColumns({ columns, force: { x: 0, y: -force, z: 0 }, at: { x: lever, y: 0, z: 0 } });
};
const corners = (x: number, y: number) =>
  [
    [x, y],
    [x, -y],
    [-x, y],
    [-x, -y],
  ] as const;
const shears = (plate: PlateOnColumns) => plate.columns.map(({ shear }) => shear);
const shigley = () => shears(group(corners(75, 60), 16e3, 0.425));
const bhandari = () => shears(group(corners(100, 75), 10e3, 0.5));
const bracket = () => shears(group([...corners(40, 70), [40, 0], [-40, 0]], 120e3, 0.2));
/** A torque alone: force at the lever less the same force at the centroid. */
const torsional = (places: Parameters<typeof group>[0], force: number, lever: number) => {
  const [far, near] = [group(places, force, lever), group(places, force, 0)];
  return Math.max(
    ...far.columns.map((c, i) => Math.hypot(c.shearX - near.columns[i]!.shearX, c.shearY - near.columns[i]!.shearY)),
  );
};

const rocking = (
  edge: 'supported' | 'fixed',
  list: readonly (readonly [ratio: number, alpha: number, beta: number])[],
): PublishedCase[] =>
  list.flatMap(([ratio, alpha, beta]) =>
    rows(
      {
        source: 'young-2002-roark',
        where: 'Table 11.2, cases 20 and 21',
        kind: 'from memory',
        given: `edge ${edge}, boss over plate radius ${ratio}, ν 0.3`,
        unit: '',
        tolerance: ratio < 0.55 ? { relative: 0.01 } : { absolute: 6e-4 },
        because:
          ratio < 0.55
            ? 'the handbook is a table by numerical work, printed to three decimals'
            : 'three decimals of the handbook limit the comparison',
      },
      [
        [
          `roark-boss-${edge}-${ratio}-turn`,
          'Turn of a boss that rocks in a plate',
          alpha,
          () => rockingBoss({ bossRadius: ratio, plateRadius: 1, edge }).alpha,
        ],
        [
          `roark-boss-${edge}-${ratio}-stress`,
          'Stress round a boss that rocks in a plate',
          beta,
          () => rockingBoss({ bossRadius: ratio, plateRadius: 1, edge }).beta,
        ],
      ],
    ),
  );

/** Screw groups and posts under a rigid plate are one problem; and the ratios of the handbook that stand nowhere else. */
export const cases: readonly PublishedCase[] = [
  ...rows(
    {
      source: 'shigley-2011-design',
      where: 'Example 8-7, pp. 457-458',
      kind: 'published number',
      given: 'posts at (±75, ±60) mm under a rigid plate, 16 kN at 425 mm',
      unit: 'kN',
      tolerance: { relative: 0.003 },
      because: 'the book prints three digits',
    },
    [
      ['plate-shigley-near', 'Shear of the nearer posts', 21, () => Math.max(...shigley()) / 1e3],
      ['plate-shigley-far', 'Shear of the farther posts', 14.8, () => Math.min(...shigley()) / 1e3],
      [
        'plate-shigley-torsional',
        'Part of it that comes from turning',
        17.7,
        () => torsional(corners(75, 60), 16e3, 0.425) / 1e3,
      ],
    ],
  ),
  ...rows(
    {
      source: 'bhandari-2010-machine',
      where: 'Example 7.3, p. 233',
      kind: 'published formula, our number',
      given: 'posts at (±100, ±75) mm under a rigid plate, 10 kN at 500 mm',
      unit: 'N',
      tolerance: { relative: 1e-4 },
      because: 'five digits of the method',
    },
    [
      ['plate-bhandari-worst', 'Shear of the worst post', 12093.4, () => Math.max(...bhandari())],
      ['plate-bhandari-least', 'Shear of the others', 8139.4, () => Math.min(...bhandari())],
    ],
  ),
  ...rows(
    {
      source: 'shigley-2011-design',
      where: 'elastic method of Example 8-7',
      kind: 'published formula, our number',
      given: 'six posts, x ±40, y 0 and ±70 mm, 120 kN at 200 mm',
      unit: 'kN',
      tolerance: { relative: 1e-3 },
      because: 'four digits of the method',
      note: 'Places, force and lever are those of a published example of the AS 4100 elastic method, which stops at the sum of squares; the forces are ours, by the book’s method.',
    },
    [
      ['plate-six-corner', 'Shear of a corner post of six', 78.14, () => Math.max(...bracket()) / 1e3],
      [
        'plate-six-torsional',
        'Part of it that comes from turning',
        66.27,
        () => torsional([...corners(40, 70), [40, 0], [-40, 0]], 120e3, 0.2) / 1e3,
      ],
    ],
  ),
  ...rocking('supported', [
    [0.15, 1.058, 6.252],
    [0.25, 0.641, 3.625],
    [0.4, 0.301, 2.062],
    [0.6, 0.084, 1.067],
    [0.7, 0.035, 0.731],
    [0.8, 0.01, 0.449],
  ]),
  ...rocking('fixed', [
    [0.15, 0.813, 6.08],
    [0.25, 0.439, 3.37],
    [0.4, 0.167, 1.73],
    [0.6, 0.035, 0.749],
    [0.7, 0.013, 0.467],
    [0.8, 0.003, 0.262],
  ]),
];
