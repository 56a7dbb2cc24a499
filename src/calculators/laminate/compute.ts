import { orthotropicHoleFactor } from '@frameworthy/shared/joint';
import {
  flexuralConstants,
  flexuralStrength,
  inPlaneConstants,
  inPlaneStrength,
  joinedPlies,
  laminateStiffness,
  layupFromCounts,
  massPerArea,
  plyMaterial,
  reducedStiffness,
  turned,
  UNIDIRECTIONAL_PLY,
  WOVEN_PLY,
  type LaminateConstants,
  type LaminateStiffness,
  type LaminateStrength,
  type Ply,
  type PlyDirection,
  type PlyMaterial,
} from '@frameworthy/shared/laminate';
import type { LaminateValues } from './inputs.ts';

const ORDERS: Readonly<Record<LaminateValues['order'], readonly PlyDirection[]>> = {
  zero: ['0', '+45', '-45', '90'],
  fortyFive: ['+45', '-45', '0', '90'],
  ninety: ['90', '+45', '-45', '0'],
};

export interface LaminateResult {
  /** As laid, angles from the length of the part. */
  plies: readonly Ply[];
  asLaid: LaminateStiffness;
  /** The same in the axes of the load. */
  stiffness: LaminateStiffness;
  /** z of every face of a ply [m]. */
  faces: readonly number[];
  /** Q11 of one ply [Pa]. */
  plyStiffness: number;
  inPlane: LaminateConstants;
  flexural: LaminateConstants;
  tension: LaminateStrength;
  compression: LaminateStrength;
  bending: LaminateStrength;
  shear: LaminateStrength;
  /** Bent about the direction looked at: for a tube, its wall under a clamp. */
  bendingAcross: LaminateStrength;
  holeFactor: number;
  /** [kg/m²] */
  massPerArea: number;
  /** Share of the least filled of the three directions 0°, ±45°, 90° [-]. */
  leastShare: number;
}

function materialOf(values: LaminateValues): { material: PlyMaterial; density: number } {
  if (values.ply === 'own') {
    const { modulusAlong, modulusAcross, shearModulus, poissonRatio, density, ...rest } = values;
    const { alongTension, alongCompression, acrossTension, acrossCompression, shear } = rest;
    const strengths = { alongTension, alongCompression, acrossTension, acrossCompression, shear };
    return { material: { modulusAlong, modulusAcross, shearModulus, poissonRatio, strengths }, density };
  }
  const entry = values.ply === 'woven' ? WOVEN_PLY : UNIDIRECTIONAL_PLY;
  return { material: plyMaterial(entry), density: entry.density.typical };
}

/** Edges of a plate are free; the wall of a tube is held by closing on itself. */
export const edgesOf = (values: LaminateValues): 'free' | 'held' => (values.part === 'tube' ? 'held' : 'free');

export function compute(values: LaminateValues): LaminateResult {
  const { material, density } = materialOf(values);
  const counts = { '0': values.count0, '+45': values.countPlus, '-45': values.countMinus, '90': values.count90 };
  const plies = layupFromCounts({
    material,
    plyThickness: values.plyThickness,
    counts,
    order: ORDERS[values.order],
    mirrored: values.mirrored === 'yes',
  });
  const seen = turned(joinedPlies(plies), values.direction);
  const inPlane = inPlaneConstants(seen, edgesOf(values));
  const total = counts['0'] + counts['+45'] + counts['-45'] + counts['90'];
  const asLaid = laminateStiffness(plies);
  return {
    plies,
    asLaid,
    stiffness: laminateStiffness(seen),
    faces: asLaid.faces,
    plyStiffness: reducedStiffness(material)[0][0],
    inPlane,
    flexural: flexuralConstants(seen),
    tension: inPlaneStrength(seen, 'tension', edgesOf(values)),
    compression: inPlaneStrength(seen, 'compression', edgesOf(values)),
    bending: flexuralStrength(seen),
    shear: inPlaneStrength(seen, 'shear', edgesOf(values)),
    bendingAcross: flexuralStrength(turned(seen, Math.PI / 2)),
    holeFactor: orthotropicHoleFactor(inPlane),
    massPerArea: massPerArea(plies, density),
    leastShare: Math.min(counts['0'], counts['+45'] + counts['-45'], counts['90']) / total,
  };
}
