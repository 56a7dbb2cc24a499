import { armBending, armTwist, rigidity, tubeBuckling, type ArmSegment, type Layer } from '@frameworthy/shared/beam';
import { roundTubeSection, solidRectangleSection, solidRoundSection, type Section } from '@frameworthy/shared/section';
import type { MissingCheck, PublishedCase } from './row.ts';

const layer = (section: Section, youngsModulus: number, shearModulus = youngsModulus / 2.6): Layer => ({
  section,
  youngsModulus,
  shearModulus,
});
/** Shear out of the way, for comparison with books that leave it out. */
const slender = (section: Section): Section => ({ ...section, shearCoefficient: 1e12 });
const unit = solidRoundSection({ diameter: 0.01 });
const stiffened = (factor: number): Section => ({
  ...slender(unit),
  vertical: { ...unit.vertical, secondMomentOfArea: unit.vertical.secondMomentOfArea * factor },
});
const tip = (segments: readonly ArmSegment[], tipForce: number): number =>
  armBending({ segments, plane: 'vertical', tipForce, steps: 1 }).tipDeflection;

const boresi = roundTubeSection({ outerDiameter: 0.05, wall: 0.003 });

/** Beer: rectangle of height h, E/G = 2.6, κ = 5/6. */
function beerMultiplier(ratio: number): number {
  const height = 0.01;
  const section = { ...solidRectangleSection({ width: 0.01, height }), shearCoefficient: 5 / 6 };
  const length = height / ratio;
  const elastic = length ** 3 / (3 * 1e9 * section.vertical.secondMomentOfArea);
  return tip([{ length, layers: [layer(section, 1e9, 1e9 / 2.6)] }], 1) / elastic;
}

/** Gere's sandwich: faces and core as two layers about one axis. */
const face = solidRectangleSection({ width: 0.2, height: 0.16 });
const core = solidRectangleSection({ width: 0.2, height: 0.15 });
const faces: Section = {
  ...face,
  area: face.area - core.area,
  vertical: {
    secondMomentOfArea: face.vertical.secondMomentOfArea - core.vertical.secondMomentOfArea,
    extremeFibre: 0.08,
  },
};
const sandwich: ArmSegment = { length: 1, layers: [layer(faces, 72e9), layer(core, 0.8e9)] };
const sandwichStress = (i: number): number =>
  armBending({ segments: [sandwich], plane: 'vertical', tipForce: 0, tipMoment: 3000 }).stations[0]!.stress[i]! / 1e6;

const buckling = (slenderness: number) => tubeBuckling({ radius: slenderness, wall: 1, youngsModulus: 1e9 }).knockDown;
const worked = tubeBuckling({ radius: 1.5, wall: 0.005, youngsModulus: 70e9, poissonRatio: 0.3 });

export const cases: PublishedCase[] = [
  {
    id: 'boresi-example-6-1-twist',
    topic: 'beam',
    what: 'Twist of a round tube per length',
    kind: 'published number',
    source: 'boresi-2003-mechanics',
    where: 'Example 6.1',
    given: 'outer radius 25 mm, inner 22 mm, torque 500 N·m, shear modulus 77 GPa',
    unit: 'rad/m',
    expected: 0.02644,
    compute: () => armTwist({ segments: [{ length: 1, layers: [layer(boresi, 200e9, 77e9)] }], torque: 500 }),
    tolerance: { relative: 0.001 },
    because: 'the book prints four digits',
  },
  ...(
    [
      [0.1, 1.0078],
      [0.2, 1.0312],
      [0.5, 1.195],
    ] as const
  ).map(([ratio, expected]): PublishedCase => ({
    id: `beer-example-11-10-shear-${ratio}`,
    topic: 'beam',
    what: 'Cantilever with shear deflection over one without',
    kind: 'published formula, our number',
    source: 'beer-2012-mechanics',
    where: 'Example 11.10, p. 723',
    given: `rectangle, height over length ${ratio}, E/G = 2.6`,
    unit: '',
    expected,
    compute: () => beerMultiplier(ratio),
    tolerance: { absolute: 1e-4 },
    because: 'four decimals of the closed form',
  })),
  {
    id: 'gere-goodno-9-7-1-stepped-cantilever',
    topic: 'beam',
    what: 'Stepped cantilever, root half twice as stiff, over the uniform one',
    kind: 'from memory',
    source: 'gere-2009-mechanics',
    where: 'Problem 9.7-1',
    given: 'two equal lengths, second moments 2 : 1',
    unit: '',
    expected: 0.5625,
    compute: () => {
      const half = (factor: number): ArmSegment => ({ length: 0.5, layers: [layer(stiffened(factor), 1e9)] });
      return tip([half(2), half(1)], 1) / tip([half(1), half(1)], 1);
    },
    tolerance: { relative: 1e-6 },
    because: 'exact; shear is made negligible, not nil',
  },
  {
    id: 'beer-example-11-11-stepped-shaft',
    topic: 'beam',
    what: 'Twist of a stepped shaft over that of the thin half’s shaft',
    kind: 'published number',
    source: 'beer-2012-mechanics',
    where: 'Example 11.11, p. 724',
    given: 'two equal lengths, diameters d and 2d',
    unit: '',
    expected: 17 / 32,
    compute: () => {
      const part = (diameter: number): ArmSegment => ({
        length: 0.5,
        layers: [layer(solidRoundSection({ diameter }), 1e9)],
      });
      return (
        armTwist({ segments: [part(0.02), part(0.01)], torque: 1 }) /
        armTwist({ segments: [part(0.01), part(0.01)], torque: 1 })
      );
    },
    tolerance: { relative: 1e-9 },
    because: 'exact',
  },
  {
    id: 'gere-example-6-2-rigidity',
    topic: 'beam',
    what: 'Flexural rigidity of two layers about one axis',
    kind: 'published number',
    source: 'gere-2004-mechanics',
    where: 'Example 6-2, p. 402',
    given: 'sandwich 200 × 160 mm, core 150 mm, moduli 72 and 0.8 GPa',
    unit: 'kN·m²',
    expected: 910.2,
    compute: () => rigidity(sandwich, 'vertical').flexural / 1e3,
    tolerance: { relative: 0.001 },
    because: 'the book prints four digits',
  },
  ...(
    [
      [0, 'face', 18.98],
      [1, 'core', 0.1978],
    ] as const
  ).map(([i, name, expected]): PublishedCase => ({
    id: `gere-example-6-2-${name}-stress`,
    topic: 'beam',
    what: `Outer stress of the ${name} of a sandwich`,
    kind: 'published number',
    source: 'gere-2004-mechanics',
    where: 'Example 6-2, p. 402',
    given: 'as above, moment 3000 N·m',
    unit: 'MPa',
    expected,
    // The core's own outer fibre stands at its half height, the printed value too.
    compute: () => sandwichStress(i),
    tolerance: { relative: 0.001 },
    because: 'the book prints three or four digits',
  })),
  ...(
    [
      [10, 0.8384, 0.8689],
      [50, 0.6782, 0.7389],
      [100, 0.581, 0.66],
      [300, 0.4042, 0.5166],
    ] as const
  ).flatMap(([slenderness, axial, bending]) =>
    (
      [
        ['axial', axial],
        ['bending', bending],
      ] as const
    ).map(([load, expected]): PublishedCase => ({
      id: `sp8007-knock-down-${load}-${slenderness}`,
      topic: 'beam',
      what: `Knock-down of thin-tube buckling, ${load}`,
      kind: slenderness === 100 ? 'published number' : 'published formula, our number',
      source: 'nasa-1968-sp8007',
      where: load === 'axial' ? 'eq. 5, p. 5' : 'eq. 9-10, p. 7',
      given: `radius over wall ${slenderness}`,
      unit: '',
      expected,
      compute: () => buckling(slenderness)[load],
      tolerance: { absolute: slenderness === 100 ? 5e-4 : 1e-4 },
      because: slenderness === 100 ? 'three decimals are quoted' : 'four decimals of the closed form',
    })),
  ),
  ...(
    [
      ['axial-stress', 'Buckling stress under axial load', 'MPa', 57.1, () => worked.axialStress / 1e6],
      ['bending', 'Bending moment at which the wall buckles', 'MN·m', 2.58, () => worked.bucklingMoment / 1e6],
      [
        'ovalisation',
        'Bending moment at which the section flattens',
        'MN·m',
        2.72,
        () => worked.ovalisationMoment / 1e6,
      ],
    ] as const
  ).map(([id, what, unitText, expected, compute]): PublishedCase => ({
    id: `sp8007-worked-${id}`,
    topic: 'beam',
    what,
    kind: 'published number',
    source: 'nasa-1968-sp8007',
    where: 'worked case of a public engineering specification that follows the report',
    given: 'radius 1.5 m, wall 5 mm, 70 GPa, Poisson’s ratio 0.3',
    unit: unitText,
    expected,
    compute,
    tolerance: { relative: 0.002 },
    because: 'the specification prints three digits',
  })),
];

export const missing: MissingCheck[] = [
  {
    topic: 'beam',
    what: 'Deflection or failure load of a carbon tube arm, measured, with section and load',
    instead: 'Closed forms of isotropic beams.',
  },
];
