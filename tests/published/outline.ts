import { innerEndGap, leastEdgeDistance, plateArea } from '../../shared/src/outline/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const rows = rowsFor('outline');
const MM = 1e-3;

/** A sheet of paper as a plate. */
const sheet = (length: number, width: number, chamfer = 0) => ({
  name: 'sheet',
  shape: {
    kind: 'chamfered' as const,
    centre: { x: 0, y: 0 },
    length: length * MM,
    width: width * MM,
    chamfer: chamfer * MM,
  },
  z: 0,
  thickness: MM,
});

/** Eight equal sides: a square with its corners cut off by s/(2+√2). */
const octagon = sheet(100, 100, 100 / (2 + Math.SQRT2));

export const cases: PublishedCase[] = [
  ...rows(
    {
      kind: 'from memory',
      source: 'iso-2007-216',
      where: 'A series',
      given: '',
      unit: 'm²',
      tolerance: { relative: 1e-3 },
      because: 'the sides are rounded to whole millimetres',
      note: 'An A0 sheet has an area of one square metre; each next size is half of it.',
    },
    [
      [
        'area-a0',
        'Area of a rectangular plate: an A0 sheet',
        1,
        () => plateArea(sheet(1189, 841), []),
        { given: '1189 × 841 mm' },
      ],
      [
        'area-a4',
        'Area of a rectangular plate: an A4 sheet',
        1 / 16,
        () => plateArea(sheet(297, 210), []),
        {
          given: '297 × 210 mm',
          tolerance: { relative: 4e-3 },
          because: 'half a millimetre on either side is 0.4 % of the area',
        },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'known areas and distances of plane geometry, worked out independently',
      given: '',
      unit: 'mm',
      tolerance: { relative: 1e-9 },
      because: 'exact',
    },
    [
      [
        'area-octagon',
        'Area of a plate with cut corners: a regular octagon',
        // 2 (1 + √2) side², side = 100 (√2 − 1).
        2 * (1 + Math.SQRT2) * (100 * (Math.SQRT2 - 1)) ** 2,
        () => plateArea(octagon, []) * 1e6,
        { given: '100 mm across the flats', unit: 'mm²' },
      ],
      [
        'edge-octagon',
        'Edge distance of a hole in the middle of a regular octagon',
        48.5,
        () => leastEdgeDistance(octagon, [{ at: { x: 0, y: 0 }, diameter: 3 * MM }]) / MM,
        { given: '100 mm across the flats, hole 3 mm' },
      ],
      [
        'inner-gap-square',
        'Where arms of a true X just touch: half their width from the middle',
        0,
        () => innerEndGap({ distance: 7 * MM, width: 14 * MM, angle: Math.PI / 2 }) / MM,
        { given: '14 mm tubes at 90°, ends 7 mm from the middle', tolerance: { absolute: 1e-12 } },
      ],
      [
        'inner-gap-opposite',
        'Gap of two arms in one line: twice the distance of their ends',
        10,
        () => innerEndGap({ distance: 5 * MM, width: 14 * MM, angle: Math.PI }) / MM,
        { given: '14 mm tubes at 180°, ends 5 mm from the middle' },
      ],
    ],
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'outline',
    what: 'A published drawing of a small airframe with its dimensions, to draw again',
    instead: 'The saved file is measured: its motors stand as far apart on paper as the layout puts them.',
  },
];
