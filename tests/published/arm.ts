import { bundleDiameter, largestTipForce, stripSection, stripSegments } from '@frameworthy/shared/arm';
import { armBending, variedSegments, type Layer } from '@frameworthy/shared/beam';
import { laminateResponse, type Ply } from '@frameworthy/shared/laminate';
import {
  roundEndedSection,
  solidRoundSection,
  thinClosedTorsionConstant,
  type Section,
} from '@frameworthy/shared/section';
import type { MissingCheck, PublishedCase } from './row.ts';
import { rowsFor } from './rows.ts';

/** Shear out of the way, for comparison with books that leave it out. */
const slender = (section: Section): Layer => ({
  section: { ...section, shearCoefficient: 1e12 },
  youngsModulus: 1e9,
  shearModulus: 1e9,
});
const deflection = (segments: Parameters<typeof armBending>[0]['segments']): number =>
  armBending({ segments, plane: 'vertical', tipForce: 1, steps: 1 }).tipDeflection;

/** A solid round cantilever whose diameter at the root is `ratio` times that at the tip, over one as thin as its tip. */
function cone(ratio: number): number {
  const layersAt = (share: number): Layer[] => [
    slender(solidRoundSection({ diameter: 0.01 * (ratio + (1 - ratio) * share) })),
  ];
  const uniform = [{ length: 1, layers: layersAt(1) }];
  return deflection(variedSegments({ length: 1, count: 400, layersAt })) / deflection(uniform);
}

/** A strip that tapers to a point, over one that keeps its width. */
function leaf(tipWidth: number): number {
  const shape = { length: 1, rootWidth: 0.02, thickness: 0.002, edges: 'square' } as const;
  const material = { youngsModulus: 1e9, shearModulus: 1e15, density: 1 };
  return (
    deflection(stripSegments({ ...shape, tipWidth }, material, 1000)) /
    deflection(stripSegments({ ...shape, tipWidth: 0.02 }, material))
  );
}

/** A cantilever `stiffness` times as stiff over `share` of its length from the root, over the uniform one. */
const stepped = (stiffness: number, share: number): number => {
  const bar = solidRoundSection({ diameter: 0.01 });
  const times = (factor: number): Layer =>
    slender({ ...bar, vertical: { ...bar.vertical, secondMomentOfArea: bar.vertical.secondMomentOfArea * factor } });
  return (
    deflection([
      { length: share, layers: [times(stiffness)] },
      { length: 1 - share, layers: [times(1)] },
    ]) / deflection([{ length: 1, layers: [times(1)] }])
  );
};

/** Gere 6-1: wood on steel, bent so that the steel is stretched; each layer as a ply without contraction across. */
const layer = (modulus: number, thickness: number): Ply => ({
  thickness,
  angle: 0,
  material: { modulusAlong: modulus, modulusAcross: modulus, shearModulus: modulus / 2, poissonRatio: 0 },
});
const woodOnSteel = laminateResponse([layer(10.342e9, 0.1524), layer(206.84e9, 0.0127)], {
  forces: [0, 0, 0],
  moments: [6779 / 0.1016, 0, 0],
});
const stressAt = (ply: number, at: 'lower' | 'upper'): number =>
  woodOnSteel.points.find((point) => point.ply === ply && point.at === at)!.stress[0] / 1e6;

/** Pytel 3.5: trapezoid by its middle line. */
const trapezoid = { enclosedArea: 0.016129, perimeter: 0.51303, wall: 0.009525 };
const trapezoidStiffness = (82.74e9 * thinClosedTorsionConstant(trapezoid)) / 1.8288;

/** Second moment of a half disc about its own centroid, over R⁴, taken out of a strip with round edges. */
function halfDisc(): number {
  const [width, height] = [0.03, 0.01];
  const radius = height / 2;
  const flat = width - height;
  const away = flat / 2 + (4 * radius) / (3 * Math.PI);
  const { secondMomentOfArea } = roundEndedSection({ width, height }).horizontal;
  const ends = secondMomentOfArea - (height * flat ** 3) / 12 - Math.PI * radius ** 2 * away ** 2;
  return ends / 2 / radius ** 4;
}

const arm = rowsFor('arm');
const beam = rowsFor('beam');

export const cases: PublishedCase[] = [
  ...arm(
    {
      kind: 'from memory',
      source: 'kravitz-1967-packing',
      where: 'table of smallest containers',
      given: 'wires of diameter 1',
      unit: '',
      tolerance: { absolute: 1e-3 },
      because: 'three decimals are remembered; the paper was not at hand',
    },
    (
      [
        [2, 2],
        [3, 2.1547],
        [4, 2.4142],
        [5, 2.7013],
        [6, 3],
        [7, 3],
      ] as const
    ).map(([count, expected]) => [
      `circles-in-a-circle-${count}`,
      `Smallest circle round ${count} equal circles`,
      expected,
      () => bundleDiameter(count, 1),
      { source: count > 4 ? 'graham-1998-packings' : 'kravitz-1967-packing' },
    ]),
  ),
  ...arm(
    {
      kind: 'from memory',
      source: 'shigley-2011-design',
      where: 'leaf springs: triangular against straight',
      given: 'cantilever of constant thickness, width falling evenly to nothing at the force',
      unit: '',
      tolerance: { relative: 2e-3 },
      because: 'the tip is kept at a ten-thousandth of the root so that it stays a section',
    },
    [
      ['triangular-leaf-deflection', 'Tip deflection of a triangular strip over a straight one', 1.5, () => leaf(2e-6)],
      [
        'triangular-leaf-strength',
        'Largest tip force at mid-span over that at the root, triangular strip',
        1,
        () => {
          const force = (width: number, lever: number): number =>
            largestTipForce({
              plane: stripSection({ width, thickness: 0.002, edges: 'square' }).vertical,
              lever,
              strength: 1e8,
            });
          return force(0.01, 0.5) / force(0.02, 1);
        },
        { tolerance: { relative: 1e-9 }, because: 'exact: the strip of even strength', given: 'the same strip' },
      ],
    ],
  ),
  ...beam(
    {
      kind: 'from memory',
      source: 'gere-2009-mechanics',
      where: 'Problems of § 9.7, tapered cantilever of solid round section',
      given: 'force at the thin end, diameter at the root twice that at the tip; δ = PL³/(24 E I_tip)',
      unit: '',
      tolerance: { relative: 1e-4 },
      because: 'four hundred even segments stand in for the cone',
    },
    [
      [
        'gere-goodno-9-7-cone',
        'Tapered round cantilever over the uniform one as thin as its tip',
        3 / 24,
        () => cone(2),
      ],
    ],
  ),
  ...beam(
    {
      kind: 'published formula, our number',
      source: 'gere-2009-mechanics',
      where: '§ 9.7, nonprismatic beams',
      given: 'δ = (P/3E){[L³ − (L−a)³]/I_root + (L−a)³/I_tip}, root part three times as stiff over a',
      unit: '',
      tolerance: { relative: 1e-6 },
      because: 'exact; shear is made negligible, not nil',
    },
    (
      [
        [0.25, 0.61458333],
        [0.75, 0.34375],
      ] as const
    ).map(([share, expected]) => [
      `stepped-cantilever-${share}`,
      `Stepped cantilever over the uniform one, step at ${share} of its length`,
      expected,
      () => stepped(3, share),
    ]),
  ),
  ...rowsFor('section')(
    {
      kind: 'published number',
      source: 'pytel-2012-mechanics',
      where: 'Example 3.5, p. 91',
      given: 'trapezoid, middle line 152.4 and 101.6 mm wide, 127 mm high, wall 9.525 mm, 82.74 GPa, 1.8288 m long',
      unit: 'kN·m/rad',
      tolerance: { relative: 0.002 },
      because: 'the book prints 7.736·10⁶ lb·in/rad',
    },
    [
      [
        'pytel-3-5-torsional-stiffness',
        'Torsional stiffness of a thin trapezoidal tube',
        874,
        () => trapezoidStiffness / 1e3,
      ],
      [
        'pytel-3-5-torque',
        'Torque that twists it by half a degree',
        7.627,
        () => (trapezoidStiffness * Math.PI) / 360e3,
        { unit: 'kN·m', because: 'converted from the figure that the book prints' },
      ],
    ],
  ),
  ...rowsFor('section')(
    {
      kind: 'published number',
      source: 'pytel-2012-mechanics',
      where: 'Example A.2, p. 486, half disc of the composite area',
      given: 'second moment about its own centroid over R⁴, taken from a strip with round edges',
      unit: '',
      tolerance: { absolute: 1e-4 },
      because: 'the book prints 0.1098',
    },
    [['pytel-a-2-half-disc', 'Round edge of a strip: half disc about its own centroid', 0.1098, halfDisc]],
  ),
  ...rowsFor('laminate')(
    {
      kind: 'published number',
      source: 'gere-2004-mechanics',
      where: 'Example 6-1, p. 400',
      given: 'wood 101.6 × 152.4 mm, 10.342 GPa, on steel 101.6 × 12.7 mm, 206.84 GPa, moment 6779 N·m',
      unit: 'MPa',
      tolerance: { relative: 0.002 },
      because: 'the book prints −1305, 251, 5028 and 7622 psi',
    },
    [
      ['gere-6-1-wood-top', 'Two layers about their common neutral axis: wood, top', -9, () => stressAt(0, 'lower')],
      ['gere-6-1-wood-bottom', 'Wood, bottom', 1.733, () => stressAt(0, 'upper')],
      ['gere-6-1-steel-top', 'Steel, top', 34.66, () => stressAt(1, 'lower')],
      ['gere-6-1-steel-bottom', 'Steel, bottom', 52.54, () => stressAt(1, 'upper')],
    ],
  ),
];

export const missing: MissingCheck[] = [
  {
    topic: 'arm',
    what: 'Stiffness of one arm measured once as a tube and once as a strip of plate, with sizes and material',
    instead: 'Closed forms of uniform, stepped and tapered beams, and limits as property tests.',
  },
];
