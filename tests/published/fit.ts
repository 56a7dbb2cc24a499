import { SEAT_DIAMETERS } from '../../shared/src/fastener/index.ts';
import {
  findCollisions,
  freeMargins,
  nutAcrossCorners,
  NUTS,
  patternScrew,
  shortestBody,
  shortestStandoff,
  swayShortening,
  tiltedBox,
  type FitBody,
  type FitItem,
} from '../../shared/src/fit/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

const MM = 1e-3;
const rows = rowsFor('fit');
const DEGREE = Math.PI / 180;

const part = (name: string, x: number, length: number, width: number, rest: Partial<FitItem> = {}): FitItem => ({
  name,
  kind: 'other',
  length: length * MM,
  width: width * MM,
  height: 10 * MM,
  x: x * MM,
  y: 0,
  z: 0,
  mass: 0,
  ...rest,
});
const posts = (...stations: number[]) => stations.flatMap((x) => [18, -18].map((y) => ({ x: x * MM, y: y * MM })));
const body: FitBody = {
  plate: {
    length: 0.15,
    width: 45 * MM,
    nose: { width: 40 * MM, length: 20 * MM },
    tail: { width: 36 * MM, length: 30 * MM },
  },
  standoffDiameter: 5 * MM,
  clearance: { columns: 1.5 * MM, items: 1 * MM, edge: 1 * MM, height: 0 },
};
const camera: Partial<FitItem> = {
  kind: 'camera',
  height: 14 * MM,
  tilt: 30 * DEGREE,
  lens: { reach: 6 * MM, diameter: 9 * MM },
};
const row = {
  name: 'row',
  standoffs: posts(35, -25),
  items: [part('transmitter', -50, 33, 30), part('stack', 5, 36, 36), part('camera', 50, 14, 14, camera)],
};
const single = (item: FitItem) => ({ name: 'single', standoffs: posts(40, -40), items: [item] });
const needed = (thread: 'M2' | 'M3') =>
  patternScrew({
    pattern: '30.5x30.5',
    thread,
    hole: 4 * MM,
    boardSide: 36 * MM,
    across: nutAcrossCorners('M3'),
    height: NUTS.M3.height,
  }).needed;
const usual = () =>
  shortestStandoff(
    { ...body, clearance: { ...body.clearance, height: 1.5 * MM } },
    single(part('stack', 0, 36, 36, { height: 18 * MM })),
    { hanging: 1 * MM, rise: 0 },
  ).byStack.sold!;
const diagonal = { length: 4 * MM, height: 3 * MM, tilt: Math.atan2(3, 4) };

export const cases: PublishedCase[] = [
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'right triangle with sides 3, 4 and 5',
      given: '4 × 3 mm box, turned until its diagonal lies level',
      unit: 'mm',
      tolerance: { absolute: 1e-9 },
      because: 'exact',
    },
    [
      ['tilted-diagonal', 'Plan length is the diagonal', 5, () => tiltedBox(diagonal).planLength / MM],
      [
        'tilted-altitude',
        'Height is twice the altitude of the triangle',
        4.8,
        () => tiltedBox(diagonal).height / MM,
        { note: 'Twice the area of the box over its diagonal: 2 · 12 / 5.' },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'corners turned one by one in Python, largest and smallest taken',
      given: '14 × 14 mm camera at 30°, lens 6 mm long and 9 mm thick',
      unit: 'mm',
      tolerance: { absolute: 1e-6 },
      because: 'six decimals kept',
    },
    [
      [
        'camera-plan',
        'Plan length of the tilted camera',
        19.124356,
        () => tiltedBox({ ...camera, length: 14 * MM, height: 14 * MM, tilt: 30 * DEGREE }).planLength / MM,
      ],
      [
        'camera-reach',
        'Reach of its lens ahead of the middle',
        13.50833,
        () => tiltedBox({ length: 14 * MM, height: 14 * MM, tilt: 30 * DEGREE, lens: camera.lens! }).reach / MM,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'arvo-1990-boxes',
      where: 'transforming boxes: half extents are sums of absolute products',
      given: 'square of side 1, turned by 45°',
      unit: '',
      tolerance: { relative: 1e-9 },
      because: 'exact',
    },
    [
      [
        'square-at-45',
        'Plan length over side',
        Math.SQRT2,
        () => tiltedBox({ length: 0.01, height: 0.01, tilt: 45 * DEGREE }).planLength / 0.01,
      ],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'awtar-2007-flexures',
      where: 'kinematic coefficient of a beam with a guided end',
      given: 'δ/L = 0.02, elastic S',
      unit: '',
      tolerance: { relative: 1e-9 },
      because: 'exact; the S shortens more than a link as long as δ is small',
    },
    [['sway-shortening', 'Descent times L over δ²', 0.6, () => (swayShortening(0.02, 1) * 1) / 0.02 ** 2]],
  ),
  ...rows(
    {
      kind: 'own derivation or solver',
      source: 'own-derivation',
      where: 'right triangle with sides 3, 4 and 5; linear programme in Python (scipy 1.17.1, HiGHS)',
      given: '',
      unit: 'mm',
      tolerance: { absolute: 1e-6 },
      because: 'exact, six decimals kept',
    },
    [
      [
        'folded-link',
        'Descent of a folded link',
        20,
        () => swayShortening(40 * MM, 50 * MM) / MM,
        { given: '50 mm long, moved 40 mm', note: '50 less the third side of the triangle, 30.' },
      ],
      [
        'corner-to-post',
        'Corner of a part to a standoff',
        12.5,
        () => freeMargins(body, single(part('p', 18, 20, 18))).toStandoffs!.gap / MM,
        { given: 'corner 12 mm and 9 mm from the axis of a 5 mm standoff', note: '15 less 2.5.' },
      ],
      [
        'way-out',
        'Shortest way for a stack out of two standoffs',
        2,
        () => findCollisions(body, single(part('p', 20, 36, 36)))[0]!.move / MM,
        {
          given: '36 mm stack 20 mm ahead of the middle, 5 mm standoffs at 40 mm, 1.5 mm of air',
          note: '20 + 18 + 2.5 + 1.5 less 40.',
        },
      ],
      [
        'shortest-plate',
        'Shortest plate of five movers in a row',
        101.71625939,
        () => shortestBody(body, row)!.length / MM,
        {
          given: 'transmitter, rear standoffs, stack, front standoffs, tilted camera; both ends of the plate narrow',
          note: 'The constraints were written a second time by hand for the programme.',
        },
      ],
    ],
  ),
  ...rows(
    {
      kind: 'published number',
      source: 'mcad-2019-nuts',
      where: 'METRIC_NUT_THICKNESS, METRIC_NUT_AC_WIDTHS, METRIC_BOLT_CAP_DIAMETERS',
      given: '',
      unit: 'mm',
      tolerance: { absolute: 1e-9 },
      because: 'a table value',
    },
    [
      ['nut-height-M2', 'Height of a nut', 1.6, () => NUTS.M2.height / MM, { given: 'M2' }],
      ['nut-height-M3', 'Height of a nut', 2.4, () => NUTS.M3.height / MM, { given: 'M3' }],
      ['nut-height-M4', 'Height of a nut', 3.2, () => NUTS.M4.height / MM, { given: 'M4' }],
      [
        'nut-corners-M3',
        'Nut across its corners',
        6.4,
        () => nutAcrossCorners('M3') / MM,
        {
          given: 'M3',
          tolerance: { absolute: 0.05 },
          because: 'the table rounds up to a tenth',
          note: 'For M2 the table has 4.38, between the least of the standard and the sharp corners, 4.62, that are used here.',
        },
      ],
      [
        'nut-corners-M4',
        'Nut across its corners',
        8.1,
        () => nutAcrossCorners('M4') / MM,
        { given: 'M4', tolerance: { absolute: 0.05 }, because: 'the table rounds to a tenth' },
      ],
      ['cap-head-M3', 'Cap head', 5.5, () => SEAT_DIAMETERS.M3['cap-head'] / MM, { given: 'M3' }],
      ['cap-head-M4', 'Cap head', 7, () => SEAT_DIAMETERS.M4['cap-head'] / MM, { given: 'M4' }],
    ],
  ),
  ...rows(
    {
      kind: 'from memory',
      source: 'iso-1979-273',
      where: 'table of clearance holes, fine series',
      given: '',
      unit: 'mm',
      tolerance: { absolute: 1e-9 },
      because: 'a table value',
    },
    [
      ['pattern-needs-M2', 'Hole that a board needs', 2.2, () => needed('M2') / MM, { given: 'M2 screws' }],
      ['pattern-needs-M3', 'Hole that a board needs', 3.2, () => needed('M3') / MM, { given: 'M3 screws' }],
    ],
  ),
  ...rows(
    {
      kind: 'common practice',
      source: 'common-practice',
      where: 'stacks of 14 to 22 mm over their mounts and nuts stand under standoffs of 18 to 28 mm',
      given: 'stack of 18 mm, 1 mm hanging, 1.5 mm of air, no hit',
      unit: 'mm',
      tolerance: { absolute: 5 },
      because: 'the range',
    },
    [['usual-stack', 'Shortest standoff over a usual stack', 23, () => usual() / MM]],
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'fit',
    what: 'A published or measured arrangement of electronics in a small frame, with its gaps',
    instead: 'Distances by hand, a linear programme in another language, and what must hold for any arrangement.',
  },
  {
    topic: 'fit',
    what: 'A published table of board patterns and outlines',
    instead: 'Spacings, holes and outlines of common practice; measure your boards.',
  },
  {
    topic: 'fit',
    what: 'Measured descent of a top plate in a nose-first hit',
    instead: 'Geometry of a swaying beam, and the sway of the checked standoff model.',
  },
  {
    topic: 'fit',
    what: 'ISO 4032 and Graphics Gems at hand',
    instead:
      'Recalled formulas and widths, named as recalled; an open parts library for heights of nuts and cap heads.',
  },
];
