import {
  boxBody,
  circleMoments,
  cylinderBody,
  discBody,
  halfDiscMoments,
  inertiaAboutPoint,
  polygonMoments,
  principalAxes,
  rodBody,
  subtractAreas,
  transferAreaMoment,
  triangleInequality,
  type InertiaTensor,
} from '../../shared/src/mass/index.ts';
import { QUANTITY_KINDS } from '../../shared/src/quantity/index.ts';
import type { PublishedCase } from './row.ts';

const topic = 'mass';
const MM = 1e-3;
const MM4 = 1e-12;
const LB = QUANTITY_KINDS.mass.find(({ symbol }) => symbol === 'lb')?.factor ?? 0;
const IN = QUANTITY_KINDS.length.find(({ symbol }) => symbol === 'in')?.factor ?? 0;
const LB_IN2 = LB * IN ** 2;

/** The part of the drawing program's print: pounds and inches. */
const print: InertiaTensor = { xx: 15.9, yy: 11.43, zz: 25.12, xy: -9.43, xz: -0.6, yz: 0.99 };
const scaled = (tensor: InertiaTensor, by: number) =>
  Object.fromEntries(Object.entries(tensor).map(([key, value]) => [key, value * by])) as unknown as InertiaTensor;
const atOrigin = () => {
  const offset = { x: -4.92 * IN, y: 2.65 * IN, z: -0.61 * IN };
  return scaled(inertiaAboutPoint({ inertia: scaled(print, LB_IN2), mass: 1.23 * LB, offset }), 1 / LB_IN2);
};
const printRow = {
  topic,
  kind: 'published number',
  source: 'robot-arm-cad-print',
  given:
    '1.23 lb; centre of mass at (−4.92, 2.65, −0.61) in; tensor about it 15.90, 11.43, 25.12, −9.43, −0.60, 0.99 lb·in²',
  unit: 'lb·in²',
} as const;
const transfer = (
  key: keyof InertiaTensor,
  expected: number,
  tolerance: PublishedCase['tolerance'],
): PublishedCase => ({
  ...printRow,
  id: `cad-print-at-origin-${key}`,
  what: `Tensor moved from the centre of mass to the origin: ${key}`,
  where: 'moments at the output coordinate system',
  expected,
  compute: () => atOrigin()[key],
  tolerance,
  because: 'all inputs are printed to two decimals, and the offsets enter squared',
  note: 'The print gives products with the positive sign, ∫xy dm, as the package does.',
});
const principal = (rank: 0 | 1 | 2, expected: number): PublishedCase => ({
  ...printRow,
  id: `cad-print-principal-${rank + 1}`,
  what: `Principal moment ${rank + 1} at the centre of mass`,
  where: 'principal moments at the centre of mass',
  expected,
  compute: () => principalAxes(scaled(print, LB_IN2))[rank].moment / LB_IN2,
  tolerance: { absolute: 0.01 },
  because: 'the tensor is printed to two decimals',
});

/** Pytel's plate: a triangle, apex down at the origin, half a disc on top, a round hole between. Millimetres. */
const composite = () => {
  const triangle = polygonMoments([
    { x: 0, y: 0 },
    { x: 45 * MM, y: 100 * MM },
    { x: -45 * MM, y: 100 * MM },
  ]);
  const cap = halfDiscMoments({ centre: { x: 0, y: 100 * MM }, radius: 45 * MM });
  const hole = circleMoments({ centre: { x: 0, y: 100 * MM }, radius: 20 * MM });
  // Adding the half disc is taking away a negative area.
  const negative = { ...cap, area: -cap.area, aboutX: -cap.aboutX, aboutY: -cap.aboutY, product: -cap.product };
  return subtractAreas(triangle, [negative, hole]);
};
const compositeRow = {
  topic,
  kind: 'published number',
  source: 'pytel-2012-mechanics',
  where: 'Appendix A, Ex. A.2, p. 486',
  given:
    'triangle 90 by 100 mm, apex at the origin; half disc of radius 45 mm on top; hole of radius 20 mm at height 100 mm',
  tolerance: { relative: 2e-4 },
  because: 'the book takes 0.1098 R⁴ for the half disc and prints four or five digits',
} as const;

const battery = () => boxBody({ mass: 0.2, length: 75 * MM, width: 35 * MM, height: 30 * MM }).inertia;
const solidRow = {
  topic,
  kind: 'from memory',
  source: 'meriam-2012-dynamics',
  where: 'Table D/4',
  unit: 'kg·m²',
  tolerance: { relative: 2e-4 },
  because: 'expected values are stated to four digits',
} as const;
const boxRow = { ...solidRow, given: '0.2 kg, 75 by 35 by 30 mm' } as const;
const tube = () => cylinderBody({ mass: 0.02, outerRadius: 7 * MM, innerRadius: 6 * MM, length: 0.1 }).inertia;
const tubeRow = { ...solidRow, given: '20 g, outer radius 7 mm, inner radius 6 mm, 100 mm long' } as const;

const flagged = (
  id: string,
  what: string,
  moments: readonly [number, number, number],
  expected: number,
): PublishedCase => {
  const [xx, yy, zz] = moments;
  return {
    id,
    topic,
    what,
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: '1 − (I₁ + I₂)/I₃ of a published measurement (student-model-data; quadrotor builder 2014; student notes)',
    given: `${xx}, ${yy}, ${zz} kg·m²`,
    unit: '-',
    expected,
    compute: () => triangleInequality({ xx, yy, zz, xy: 0, xz: 0, yz: 0 }).shortfall,
    tolerance: { absolute: 1e-4 },
    because: 'arithmetic on three printed digits',
  };
};

export const cases: PublishedCase[] = [
  transfer('xx', 25.0, { absolute: 0.01 }),
  transfer('yy', 41.67, { absolute: 0.01 }),
  transfer('zz', 63.54, { absolute: 0.01 }),
  transfer('xy', -25.47, { absolute: 0.01 }),
  transfer('xz', 3.09, { absolute: 0.01 }),
  transfer('yz', -0.99, { absolute: 0.01 }),
  principal(0, 3.92),
  principal(1, 23.34),
  principal(2, 25.19),
  {
    id: 'pytel-a1-centroidal',
    topic,
    what: 'Parallel axis of an area, moved to the centroid',
    kind: 'published number',
    source: 'pytel-2012-mechanics',
    where: 'Appendix A, Ex. A.1, p. 486',
    given: 'A 2000 mm², 40e6 mm⁴ about an axis 90 mm away',
    unit: 'mm⁴',
    expected: 23.8e6,
    compute: () => transferAreaMoment({ secondMoment: 40e6 * MM4, area: 2000e-6, from: 90 * MM, to: 0 }) / MM4,
    tolerance: { relative: 1e-9 },
    because: 'exact',
  },
  {
    id: 'pytel-a1-other-axis',
    topic,
    what: 'Parallel axis of an area, moved away again',
    kind: 'published number',
    source: 'pytel-2012-mechanics',
    where: 'Appendix A, Ex. A.1, p. 486',
    given: 'A 2000 mm², 40e6 mm⁴ about an axis 90 mm away; new axis 70 mm away',
    unit: 'mm⁴',
    expected: 33.6e6,
    compute: () => transferAreaMoment({ secondMoment: 40e6 * MM4, area: 2000e-6, from: 90 * MM, to: 70 * MM }) / MM4,
    tolerance: { relative: 1e-9 },
    because: 'exact',
  },
  {
    ...compositeRow,
    id: 'pytel-a2-centroid',
    what: 'Centroid of a plate with a hole',
    unit: 'mm',
    expected: 86.11,
    compute: () => composite().centroid.y / MM,
  },
  {
    ...compositeRow,
    id: 'pytel-a2-centroidal',
    what: 'Second moment of a plate with a hole, about its centroid',
    unit: 'mm⁴',
    expected: 7.745e6,
    compute: () => composite().aboutX / MM4,
  },
  {
    ...compositeRow,
    id: 'pytel-a2-about-apex',
    what: 'Second moment of a plate with a hole, about the apex',
    unit: 'mm⁴',
    expected: 55.377e6,
    compute: () => {
      const { area, aboutX, centroid } = composite();
      return transferAreaMoment({ secondMoment: aboutX, area, from: 0, to: centroid.y }) / MM4;
    },
  },
  { ...boxRow, id: 'box-about-length', what: 'Box about its length', expected: 3.542e-5, compute: () => battery().xx },
  { ...boxRow, id: 'box-about-width', what: 'Box about its width', expected: 1.0875e-4, compute: () => battery().yy },
  { ...boxRow, id: 'box-about-height', what: 'Box about its height', expected: 1.1417e-4, compute: () => battery().zz },
  { ...tubeRow, id: 'tube-about-axis', what: 'Tube about its axis', expected: 8.5e-7, compute: () => tube().zz },
  { ...tubeRow, id: 'tube-across', what: 'Tube across its axis', expected: 1.7092e-5, compute: () => tube().xx },
  {
    ...solidRow,
    id: 'disc-about-axis',
    what: 'Thin disc about its axis',
    given: '5 g, radius 65 mm',
    expected: 1.0563e-5,
    compute: () => discBody({ mass: 0.005, radius: 0.065 }).inertia.zz,
  },
  {
    ...solidRow,
    id: 'rod-across',
    what: 'Slender rod across its length',
    given: '15 g, 90 mm',
    expected: 1.0125e-5,
    compute: () => rodBody({ mass: 0.015, length: 0.09 }).inertia.zz,
  },
  flagged(
    'triangle-460-mm',
    'Triangle inequality: a measured 460 mm craft falls short',
    [0.0176, 0.0176, 0.0362],
    0.0276,
  ),
  flagged(
    'triangle-eight-rotors',
    'Triangle inequality: a measured eight-rotor craft falls far short',
    [0.024, 0.024, 0.1051],
    0.5433,
  ),
  flagged(
    'triangle-builder-2014',
    'Triangle inequality: a measured quadrotor that passes',
    [0.0112, 0.0112, 0.0199],
    0,
  ),
  flagged(
    'triangle-student-notes',
    'Triangle inequality: a small measured quadrotor that passes',
    [2.549e-3, 4.028e-3, 5.279e-3],
    0,
  ),
];
