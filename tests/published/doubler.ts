import {
  doubledTube,
  layeredSection,
  leadInLength,
  leastSleeveWall,
  padDoubler,
  rootMoment,
  shareReached,
  tubeDoubler,
} from '../../shared/src/doubler/index.ts';
import { solvePatch } from './bond-solver.ts';
import type { MissingCheck, PublishedCase } from './row.ts';

const topic = 'doubler';
const MM = 1e-3;
const MPA = 1e6;

const beam = () =>
  layeredSection({
    layers: [
      { modulus: 10.342e9, width: 101.6 * MM, thickness: 152.4 * MM },
      { modulus: 206.84e9, width: 101.6 * MM, thickness: 12.7 * MM },
    ],
    moment: 6779,
  });
const beamStress = (layer: number, face: 'top' | 'bottom') => (beam().stresses[layer]?.[face] ?? Number.NaN) / MPA;
const gere = {
  topic,
  source: 'gere-2004-mechanics',
  where: 'Example 6-1, p. 400',
  kind: 'published number',
  given: 'wood 10.342 GPa, 101.6 × 152.4 mm, on steel 206.84 GPa, 101.6 × 12.7 mm; 6779 N·m',
  because: 'the book prints three to four digits in inch units',
} as const;

/** An ordinary 5-inch arm: 14/12 mm tube, M3 screws 18 mm apart, 95 mm to the motor. */
export const ordinaryArm = {
  tubeOutside: 14 * MM,
  tubeInside: 12 * MM,
  sleeveOutside: 11.8 * MM,
  sleeveWall: 1 * MM,
  tubeModulus: 90e9,
  sleeveModulus: 90e9,
  shearModulus: 0.8e9,
  holeDiameter: 3.2 * MM,
  plane: 'vertical',
  tipForce: 450,
  armLength: 95 * MM,
  screwSpacing: 18 * MM,
  edgeDistance: 10 * MM,
  length: 42 * MM,
  taper: 0,
  tubeStrength: 400 * MPA,
  sleeveStrength: 400 * MPA,
  holeShare: 0.85,
  squareEndFactor: 1.25,
  sleeveDensity: 1550,
} as const;
const hardHit = { ...ordinaryArm, tipForce: 550 };

/** Two strips as stiff as the two walls, joined by the arm's bond, solved numerically. */
const patch = (at: number) =>
  solvePatch({ load: 1, length: 45 * MM, base: 90e9 * MM, patch: 90e9 * MM, layer: 0.8e9 / (0.1 * MM), at });
const arm = () => doubledTube(ordinaryArm);

/** Second moment of a ring, summed over ten thousand rings of equal height. */
const summedRing = (outer: number, inner: number) =>
  Array.from({ length: 10000 }, (_, i) => {
    const y = -outer + (2 * outer * (i + 0.5)) / 10000;
    const chord = 2 * (Math.sqrt(outer ** 2 - y ** 2) - Math.sqrt(Math.max(inner ** 2 - y ** 2, 0)));
    return (chord * y ** 2 * 2 * outer) / 10000;
  }).reduce((sum, part) => sum + part, 0);
const summedShare = () => {
  const tube = summedRing(7 * MM, 6 * MM);
  const sleeve = summedRing(5.9 * MM, 4.9 * MM);
  return sleeve / (tube + sleeve);
};

/** Walks out from the screw until the bare tube holds past a square end. */
const walked = () => {
  const ring = summedRing(7 * MM, 6 * MM);
  let x = 0;
  while ((1.25 * 550 * (95 * MM - x) * 7 * MM) / ring > 400 * MPA) x += 1e-6;
  return 10 + 18 + x / MM;
};

const padded = {
  tipForce: 60,
  armLength: 95 * MM,
  screwSpacing: 18 * MM,
  edgeDistance: 10 * MM,
  width: 12 * MM,
  plateThickness: 4 * MM,
  padThickness: 1.5 * MM,
  plateModulus: 60e9,
  padModulus: 60e9,
  plateStrength: 400 * MPA,
  shearModulus: 0.8e9,
  bondLine: 0.1 * MM,
  holeDiameter: 3.2 * MM,
  taper: 0,
  squareEndFactor: 1.25,
} as const;

/** Force in the pad from the stresses over its height, by the layered beam: what the bond has to hand over. */
const padEnd = () => {
  const { required, lambda } = padDoubler(padded);
  const layer = { modulus: 60e9, width: 12 * MM };
  const { stresses } = layeredSection({
    layers: [
      { ...layer, thickness: 1.5 * MM },
      { ...layer, thickness: 4 * MM },
    ],
    moment: 60 * (95 * MM - required.pastScrew),
  });
  const pad = stresses[0] ?? { top: 0, bottom: 0 };
  return (lambda * Math.abs(pad.top + pad.bottom) * 1.5 * MM) / 2;
};

export const cases: PublishedCase[] = [
  {
    topic,
    id: 'pad-end-peak',
    what: 'peak bond shear at the end of a pad on a plate arm',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'rate of transfer times the pad force of the layered beam',
    given: '1.5 mm pad on a 4 × 12 mm plate, both 60 GPa, 0.1 mm of adhesive at 0.8 GPa, 60 N at 95 mm',
    unit: 'MPa',
    expected: padEnd() / MPA,
    compute: () => padDoubler(padded).bondPeak / MPA,
    tolerance: { relative: 1e-9 },
    because: 'two routes to one force',
  },
  {
    topic,
    id: 'pad-rate',
    what: 'rate of transfer of a thin pad on a plate that bends: four times the stretch of the plate counts',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'limit of a very thin pad: G/t_a (4/(E t) + 1/(E_i t_i))',
    given: 'as the row above, pad 0.001 mm',
    unit: '1/mm',
    expected: Math.sqrt((0.8e9 / (0.1 * MM)) * (4 / (60e9 * 4 * MM) + 1 / (60e9 * 1e-6))) * MM,
    compute: () => padDoubler({ ...padded, padThickness: 1e-6 }).lambda * MM,
    tolerance: { relative: 1e-5 },
    because: 'limit, reached within the tolerance',
  },
  {
    topic,
    id: 'pad-plate-arm',
    what: 'pad length on an ordinary plate arm',
    kind: 'common practice',
    source: 'common-practice',
    where: 'doublers are a few centimetres long',
    given: 'as the first row',
    unit: 'mm',
    expected: 30,
    compute: () => padDoubler(padded).required.length / MM,
    tolerance: { absolute: 20 },
    because: 'a wide band',
  },
  {
    ...gere,
    id: 'two-material-neutral-axis',
    what: 'neutral axis of two bonded layers, from the top',
    unit: 'mm',
    expected: 127.79,
    compute: () => beam().neutralAxis / MM,
    tolerance: { relative: 0.002 },
  },
  {
    ...gere,
    id: 'two-material-top',
    what: 'stress at the top of the upper layer',
    unit: 'MPa',
    expected: -9,
    compute: () => beamStress(0, 'top'),
    tolerance: { relative: 0.002 },
  },
  {
    ...gere,
    id: 'two-material-wood-bottom',
    what: 'stress at the bottom of the upper layer',
    unit: 'MPa',
    expected: 1.733,
    compute: () => beamStress(0, 'bottom'),
    tolerance: { relative: 0.002 },
  },
  {
    ...gere,
    id: 'two-material-steel-top',
    what: 'stress at the top of the lower layer',
    unit: 'MPa',
    expected: 34.66,
    compute: () => beamStress(1, 'top'),
    tolerance: { relative: 0.002 },
  },
  {
    ...gere,
    id: 'two-material-bottom',
    what: 'stress at the bottom of the lower layer',
    unit: 'MPa',
    expected: 52.54,
    compute: () => beamStress(1, 'bottom'),
    tolerance: { relative: 0.002 },
  },
  {
    topic,
    id: 'sleeve-share',
    what: 'share of the moment that a sleeve takes',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'rings summed in ten thousand slices, equal curvature',
    given: '11.8/9.8 mm sleeve in a 14/12 mm tube, one material',
    unit: '',
    expected: summedShare(),
    compute: () => arm().whole.share,
    tolerance: { relative: 1e-3 },
    because: 'error of the slices',
  },
  {
    topic,
    id: 'sleeve-taken-up',
    what: 'share taken up 5 mm inside the end',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'bond-solver.ts, patch with two free ends',
    given: 'walls 1 mm at 90 GPa, 0.1 mm of adhesive at 0.8 GPa',
    unit: '',
    expected: patch(5 * MM).taken / 0.5,
    compute: () => shareReached({ lambda: arm().lambda, taper: 0, distance: 5 * MM }),
    tolerance: { relative: 1e-4 },
    because: 'error of the steps; the patch is not endless',
  },
  {
    topic,
    id: 'sleeve-end-transfer',
    what: 'transfer at a square end over the final load: the rate λ',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'bond-solver.ts, patch with two free ends',
    given: 'as the row above',
    unit: '1/mm',
    expected: (patch(5 * MM).end / 0.5) * MM,
    compute: () => arm().lambda * MM,
    tolerance: { relative: 1e-4 },
    because: 'error of the steps; the patch is not endless',
  },
  {
    topic,
    id: 'lead-in-95',
    what: 'share taken up after the lead-in length',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: '1 − exp(−3)',
    given: 'as the row above',
    unit: '',
    expected: 1 - Math.exp(-3),
    compute: () =>
      shareReached({ lambda: arm().lambda, taper: 0, distance: leadInLength({ lambda: arm().lambda, taper: 0 }) }),
    tolerance: { relative: 1e-9 },
    because: 'exact',
  },
  {
    topic,
    id: 'inner-screw-moment',
    what: 'moment midway between the screws, from the two reactions',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'statics: inner screw pulls F L/s',
    given: '450 N at 95 mm, screws 18 mm apart',
    unit: 'N·m',
    expected: ((450 * 95) / 18) * 9 * MM,
    compute: () => rootMoment(ordinaryArm, -9 * MM),
    tolerance: { relative: 1e-9 },
    because: 'exact',
  },
  {
    topic,
    id: 'doubler-length-walked',
    what: 'required sleeve length under a hard hit',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'walked out in steps of a micrometre',
    given: '14/12 mm tube at 400 MPa, end factor 1.25, 550 N at 95 mm, edge 10 and spacing 18 mm',
    unit: 'mm',
    expected: walked(),
    compute: () => tubeDoubler(hardHit).required.length / MM,
    tolerance: { absolute: 0.02 },
    because: 'error of the slices and steps',
  },
  {
    topic,
    id: 'doubler-length-lead-in',
    what: 'required sleeve length where the lead-in sets it',
    kind: 'own derivation or solver',
    source: 'own-derivation',
    where: 'by hand: 10 + 18 + 3.2 + 3/√(8000 · 2/90000)',
    given: '14/12 mm tube, 450 N at 95 mm, walls 1 mm at 90 GPa, 0.1 mm of adhesive at 0.8 GPa',
    unit: 'mm',
    expected: 10 + 18 + 3.2 + 3 / Math.sqrt((8000 * 2) / 90000),
    compute: () => tubeDoubler(ordinaryArm).required.length / MM,
    tolerance: { relative: 1e-9 },
    because: 'exact',
  },
  {
    topic,
    id: 'doubler-ordinary-arm',
    what: 'sleeve length in an ordinary 5-inch tube arm',
    kind: 'common practice',
    source: 'common-practice',
    where: 'root sleeves are a few centimetres long, about 30 mm',
    given: '14/12 mm tube, M3 screws 18 mm apart, 95 mm to the motor, 450 N',
    unit: 'mm',
    expected: 30,
    compute: () => tubeDoubler(ordinaryArm).required.length / MM,
    tolerance: { absolute: 20 },
    because: 'a wide band: makers differ, and so do their arms',
  },
  {
    topic,
    id: 'sleeve-wall-ordinary-arm',
    what: 'thinnest sleeve wall that holds in an ordinary 5-inch tube arm',
    kind: 'common practice',
    source: 'common-practice',
    where: 'walls of stock tube, 0.75 to 1.5 mm',
    given: 'as the row above',
    unit: 'mm',
    expected: 1,
    compute: () => leastSleeveWall(ordinaryArm).wall / MM,
    tolerance: { absolute: 0.75 },
    because: 'a wide band: it follows the force that the arm is meant to survive',
  },
];

export const missing: MissingCheck[] = [
  {
    topic,
    what: 'A published length of a sleeve or doubler in a tube under bending, with the loads it was chosen for',
    instead: 'The moment walked along the arm, and a wide band of common practice',
  },
  {
    topic,
    what: 'A measured or published stress factor at the end of a bonded sleeve',
    instead: 'A stated input, lowered by the taper',
  },
];
