import {
  agility,
  cylinderBody,
  fourMotors,
  hoverSplit,
  inertiaFromPivot,
  inertiaFromTwist,
  inertiaOnPlatform,
  massProperties,
  pivotPeriod,
  pointBody,
  radiusOfGyration,
  rodBody,
} from '../../shared/src/mass/index.ts';
import type { MissingCheck, PublishedCase } from './row.ts';

const topic = 'mass';
const MM = 1e-3;

const bifilar = () => inertiaFromTwist({ mass: 1.5, period: 40 / 20, radius: 0.12, wireLength: 1.25, gravity: 9.81 });
const trifilar = () => inertiaFromTwist({ mass: 1, period: 170 / 50, radius: 0.25, wireLength: 2.5, gravity: 9.81 });
const rod = () => radiusOfGyration(rodBody({ mass: 1, length: 1.2 }).inertia.yy, 1);
const khurmi = { topic, kind: 'published number', source: 'khurmi-2005-machines' } as const;

const builder = {
  topic,
  kind: 'published number',
  source: 'quadrotor-builder-2014-swing',
  where: 'measurement notes',
  unit: 'kg·m²',
} as const;
const student = {
  topic,
  kind: 'published number',
  source: 'student-notes-bifilar',
  where: 'bifilar measurements',
  unit: 'kg·m²',
  tolerance: { relative: 3e-3 },
  because: 'spacing and period are printed to three or four digits and enter squared',
} as const;
/** By the full spacing of the wires, as the notes have it. */
const studentSwing = (mass: number, wireLength: number, spacing: number, period: number) =>
  inertiaFromTwist({ mass, period, radius: spacing / 2, wireLength, gravity: 9.8 });

/** Four motors and propellers on a 460 mm craft, arm 228 mm, each with its own inertia. */
const ring = () => {
  const motor = cylinderBody({ mass: 0.054, outerRadius: 16 * MM, length: 19.3 * MM });
  const places = [0.228, -0.228].flatMap((r) => [
    { x: r, y: 0, z: 0 },
    { x: 0, y: r, z: 0 },
  ]);
  const tips = massProperties(places.map((position) => ({ body: pointBody(0.065), position })));
  return { motor, tips };
};
const share = {
  topic,
  kind: 'published formula, our number',
  source: 'student-model-data',
  where: 'model data table',
  given: 'four motors of 54 g (radius 16 mm, height 19.3 mm) with propellers of 11 g, 228 mm from the middle',
  tolerance: { relative: 1e-3 },
  because: 'arithmetic on printed inputs; the sum itself is ours',
} as const;

const even = () => {
  const motors = fourMotors({ wheelbase: 0.225, armAngle: Math.PI / 4, height: 0 });
  const properties = massProperties([
    ...motors.map(({ position }) => ({ body: pointBody(0.1), position })),
    { body: rodBody({ mass: 0.1, length: 0.1 }), position: { x: 0, y: 0, z: 0 } },
  ]);
  return { motors, properties };
};
const own = {
  topic,
  kind: 'own derivation or solver',
  source: 'own-derivation',
  tolerance: { relative: 1e-9 },
  because: 'the same statics by hand',
} as const;
const evenGiven =
  'wheelbase 225 mm, true X, a 100 g point at each motor, a 100 g rod of 100 mm fore and aft, 15 N a motor, 13.5 mm torque per thrust';
const evenAgility = () => agility({ ...even(), fullThrust: 15, torquePerThrust: 0.0135 });
const offset = () => {
  const motors = fourMotors({ wheelbase: 0.25, armAngle: Math.atan2(3, 4), height: 0.02 });
  return hoverSplit({ motors, mass: 0.7, centre: { x: 0.01, y: 0.005, z: -0.01 }, fullThrust: 12 }).thrusts;
};
const offsetGiven = '0.7 kg; motors at (±100, ±75) mm; centre of mass at (10, 5) mm';

export const cases: PublishedCase[] = [
  {
    ...khurmi,
    id: 'khurmi-4-9-radius',
    what: 'Bifilar suspension: radius of gyration',
    where: 'Ex. 4.9, p. 89',
    given: '1.5 kg, wires 1.25 m long, 120 mm from the centre, 20 swings in 40 s',
    unit: 'mm',
    expected: 107,
    compute: () => radiusOfGyration(bifilar(), 1.5) / MM,
    tolerance: { relative: 5e-3 },
    because: 'the book prints three digits',
  },
  {
    ...khurmi,
    id: 'khurmi-4-9-inertia',
    what: 'Bifilar suspension: moment of inertia',
    where: 'Ex. 4.9, p. 89',
    given: '1.5 kg, wires 1.25 m long, 120 mm from the centre, 20 swings in 40 s',
    unit: 'kg·m²',
    expected: 0.0172,
    compute: bifilar,
    tolerance: { relative: 5e-3 },
    because: 'the book prints three digits',
  },
  {
    ...khurmi,
    id: 'khurmi-4-10-trifilar',
    what: 'Trifilar suspension: radius of gyration',
    where: 'Ex. 4.10, p. 90',
    given: 'wires 2.5 m long at 250 mm, 50 swings in 170 s',
    unit: 'mm',
    expected: 268,
    compute: () => radiusOfGyration(trifilar(), 1) / MM,
    tolerance: { relative: 5e-3 },
    because: 'the book prints three digits',
    note: 'The book cuts 267.98 to 267 where rounding gives 268.',
  },
  {
    ...khurmi,
    id: 'khurmi-4-7-rod',
    what: 'Slender rod: radius of gyration',
    where: 'Ex. 4.7, p. 85',
    given: 'rod 1.2 m long',
    unit: 'm',
    expected: 0.3464,
    compute: rod,
    tolerance: { relative: 3e-4 },
    because: 'the book prints four digits',
  },
  {
    ...khurmi,
    id: 'khurmi-4-7-period',
    what: 'Rod on a pivot: period',
    where: 'Ex. 4.7, p. 85',
    given: 'rod 1.2 m long, pivot 50 mm from its end',
    unit: 's',
    expected: 1.758,
    compute: () => pivotPeriod({ radiusOfGyration: rod(), distance: 0.55, gravity: 9.81 }),
    tolerance: { relative: 3e-3 },
    because: 'the book rounds on the way',
  },
  {
    ...khurmi,
    id: 'khurmi-4-7-shortest',
    what: 'Rod on a pivot: shortest possible period',
    where: 'Ex. 4.7, p. 85',
    given: 'rod 1.2 m long, pivot at its radius of gyration',
    unit: 's',
    expected: 1.67,
    compute: () => pivotPeriod({ radiusOfGyration: rod(), distance: rod(), gravity: 9.81 }),
    tolerance: { relative: 3e-3 },
    because: 'the book prints three digits',
  },
  {
    topic,
    kind: 'published number',
    source: 'slinger-2025-inertia',
    id: 'slinger-bifilar',
    what: 'Bifilar suspension of a small craft',
    where: 'worked measurement',
    given: '0.98 kg, wires 1.55 m long at 0.175 m, 9 swings in 16.5 s',
    unit: 'kg·m²',
    expected: 0.0161,
    compute: () => inertiaFromTwist({ mass: 0.98, period: 16.5 / 9, radius: 0.175, wireLength: 1.55 }),
    tolerance: { relative: 1e-2 },
    because: 'the author quotes 0.0161 where the readings give 0.0162',
  },
  {
    topic,
    kind: 'published formula, our number',
    source: 'iowa-state-bifilar-note',
    id: 'iowa-state-bifilar',
    what: 'Bifilar suspension written with the full spacing and the angular frequency',
    where: 'J = m g D²/(4 h ω²)',
    given: '0.98 kg, wires 1.55 m long, 0.35 m apart, 9 swings in 16.5 s',
    unit: 'kg·m²',
    expected: (0.98 * 9.81 * 0.35 ** 2) / (4 * 1.55 * ((2 * Math.PI * 9) / 16.5) ** 2),
    compute: () => inertiaFromTwist({ mass: 0.98, period: 16.5 / 9, radius: 0.175, wireLength: 1.55, gravity: 9.81 }),
    tolerance: { relative: 1e-12 },
    because: 'the same law in other letters',
  },
  {
    ...builder,
    id: 'builder-2014-roll',
    what: 'Bifilar suspension of a quadrotor: roll',
    given: '0.958 kg, wires 0.51 m long at 0.235 m, 80 swings from 2.555 to 55.231 s',
    expected: 0.0112,
    compute: () =>
      inertiaFromTwist({ mass: 0.958, period: (55.231 - 2.555) / 80, radius: 0.235, wireLength: 0.51, gravity: 9.81 }),
    tolerance: { relative: 5e-3 },
    because: 'the notes print three digits',
  },
  {
    ...builder,
    id: 'builder-2014-yaw',
    what: 'Bifilar suspension of a quadrotor: yaw',
    given: '0.958 kg, wires 0.70 m long at 0.235 m, period 1.0297 s',
    expected: 0.0199,
    compute: () => inertiaFromTwist({ mass: 0.958, period: 1.0297, radius: 0.235, wireLength: 0.7, gravity: 9.81 }),
    tolerance: { relative: 5e-3 },
    because: 'the notes print three digits',
  },
  {
    ...student,
    id: 'student-notes-pitch',
    what: 'Bifilar suspension of a small quadrotor: pitch',
    given: '0.705 kg, wires 0.40 m long, 0.177 m apart, period 0.86225 s',
    expected: 2.549e-3,
    compute: () => studentSwing(0.705, 0.4, 0.177, 0.86225),
  },
  {
    ...student,
    id: 'student-notes-roll',
    what: 'Bifilar suspension of a small quadrotor: roll',
    given: '0.705 kg, wires 0.35 m long, 0.265 m apart, period 0.67675 s',
    expected: 4.028e-3,
    compute: () => studentSwing(0.705, 0.35, 0.265, 0.67675),
  },
  {
    ...student,
    id: 'student-notes-yaw',
    what: 'Bifilar suspension of a small quadrotor: yaw',
    given: '0.705 kg, wires 0.28 m long, 0.148 m apart, period 1.241 s',
    expected: 5.279e-3,
    compute: () => studentSwing(0.705, 0.28, 0.148, 1.241),
  },
  {
    ...student,
    id: 'student-notes-tiny',
    what: 'Bifilar suspension of a tiny quadrotor',
    given: '0.0683 kg, wires 0.29 m long, 0.068 m apart, period 0.9335 s',
    expected: 5.895e-5,
    compute: () => studentSwing(0.0683, 0.29, 0.068, 0.9335),
    note: 'The catalogue says 6.9e-5; the measurement lies 15 % under it.',
  },
  {
    topic,
    kind: 'published formula, our number',
    source: 'bannwarth-2016-pendulum',
    id: 'bannwarth-platform',
    what: 'Trifilar platform, its own share taken off',
    where: 'r² g/(4π² L) · ((mp + m) T² − mp Tp²)',
    given: 'craft 0.65 kg, platform 0.30 kg, wires 1.0 m long at 0.20 m, periods 1.00 and 0.80 s',
    unit: 'kg·m²',
    expected: ((0.2 ** 2 * 9.81) / (4 * Math.PI ** 2)) * (0.95 - 0.3 * 0.64),
    compute: () =>
      inertiaOnPlatform({
        mass: 0.65,
        period: 1,
        platformMass: 0.3,
        platformPeriod: 0.8,
        radius: 0.2,
        wireLength: 1,
        gravity: 9.81,
      }),
    tolerance: { relative: 1e-12 },
    because: 'the same law, worked out beside the package',
  },
  {
    topic,
    kind: 'published formula, our number',
    source: 'bannwarth-2016-pendulum',
    id: 'bannwarth-compound',
    what: 'Compound pendulum, moved to the centre of mass',
    where: 'm g r T²/4π² − m r²',
    given: 'rod of 1 kg, 1.2 m long, pivot 50 mm from its end, period of the book’s formula',
    unit: 'kg·m²',
    expected: 1.2 ** 2 / 12,
    compute: () =>
      inertiaFromPivot({
        mass: 1,
        distance: 0.55,
        gravity: 9.81,
        period: 2 * Math.PI * Math.sqrt((0.12 + 0.55 ** 2) / (9.81 * 0.55)),
      }),
    tolerance: { relative: 1e-9 },
    because: 'a rod must give back its own inertia',
  },
  {
    ...share,
    id: 'tips-yaw',
    what: 'Yaw inertia of motors and propellers as points',
    unit: 'kg·m²',
    expected: 0.013516,
    compute: () => ring().tips.inertia.zz,
  },
  {
    ...share,
    id: 'tips-yaw-share',
    what: 'Their share of the measured yaw inertia, 0.0362 kg·m²',
    unit: '%',
    expected: 37.3,
    compute: () => (ring().tips.inertia.zz / 0.0362) * 100,
    tolerance: { relative: 2e-3 },
    because: 'stated to three digits',
  },
  {
    ...share,
    id: 'tips-roll',
    what: 'Inertia of motors and propellers about a diagonal',
    unit: 'kg·m²',
    expected: 0.006758,
    compute: () => ring().tips.inertia.xx,
  },
  {
    ...share,
    id: 'tips-roll-share',
    what: 'Their share of the measured roll inertia, 0.0176 kg·m²',
    unit: '%',
    expected: 38.4,
    compute: () => (ring().tips.inertia.xx / 0.0176) * 100,
    tolerance: { relative: 2e-3 },
    because: 'stated to three digits',
  },
  {
    ...share,
    id: 'motor-across',
    what: 'One motor’s own inertia across its shaft',
    unit: 'kg·m²',
    expected: 5.132e-6,
    compute: () => ring().motor.inertia.xx,
  },
  {
    ...share,
    id: 'motor-axial',
    what: 'One motor’s own inertia about its shaft',
    unit: 'kg·m²',
    expected: 6.912e-6,
    compute: () => ring().motor.inertia.zz,
  },
  {
    ...own,
    id: 'agility-roll-by-hand',
    what: 'Roll acceleration of four points and a rod',
    where: 'α = 2 T y / (4 m y²)',
    given: evenGiven,
    unit: 'rad/s²',
    expected: (2 * 15) / (0.4 * (0.1125 / Math.SQRT2)),
    compute: () => evenAgility().roll,
  },
  {
    ...own,
    id: 'agility-pitch-by-hand',
    what: 'Pitch acceleration of four points and a rod',
    where: 'α = 2 T x / (4 m x² + m L²/12)',
    given: evenGiven,
    unit: 'rad/s²',
    expected: (2 * 15 * (0.1125 / Math.SQRT2)) / (0.4 * (0.1125 ** 2 / 2) + (0.1 * 0.1 ** 2) / 12),
    compute: () => evenAgility().pitch,
  },
  {
    ...own,
    id: 'agility-yaw-by-hand',
    what: 'Yaw acceleration of four points and a rod',
    where: 'α = 2 T κ / (4 m r² + m L²/12)',
    given: evenGiven,
    unit: 'rad/s²',
    expected: (2 * 15 * 0.0135) / (0.4 * 0.1125 ** 2 + (0.1 * 0.1 ** 2) / 12),
    compute: () => evenAgility().yaw,
  },
  ...[0, 1, 2, 3].map<PublishedCase>((i) => {
    const [sx, sy] = (
      [
        [1, 1],
        [1, -1],
        [-1, -1],
        [-1, 1],
      ] as const
    )[i] ?? [1, 1];
    return {
      ...own,
      id: `hover-split-motor-${i + 1}`,
      what: `Hover thrust of motor ${i + 1} with the centre of mass off the middle`,
      where: 'T = m g/4 · (1 + cx x/a² + cy y/b²), cx 10, cy 5, a 100, b 75 mm',
      given: offsetGiven,
      unit: 'N',
      expected: ((0.7 * 9.80665) / 4) * (1 + sx * (10 / 100) + sy * (5 / 75)),
      compute: () => offset()[i] ?? Number.NaN,
    };
  }),
];

export const missing: MissingCheck[] = [
  {
    topic,
    what: 'one craft with its part table and its measured inertia tensor',
    instead: 'published measurements without parts, published solids without a craft, and sums by hand',
  },
  {
    topic,
    what: 'a published hover thrust of each motor against an offset of the centre of mass',
    instead: 'statics by hand',
  },
  {
    topic,
    what: 'a measured roll, pitch or yaw acceleration of a craft whose inertia is known',
    instead: 'Euler’s equations from rest, checked by hand on four points and a rod',
  },
];
