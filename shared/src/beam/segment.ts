import { InputError } from '../error.ts';
import { requireNotNegative, requirePositive } from '../require.ts';
import type { Plane, Section } from '../section/index.ts';

/** One of the concentric parts of a stretch of arm: the tube, or the sleeve bonded in it. */
export interface Layer {
  section: Section;
  /** Young's modulus along the arm [Pa]. */
  youngsModulus: number;
  /** [Pa] */
  shearModulus: number;
  /** Needed for frequencies only [kg/m³]. */
  density?: number;
}

/** A stretch of arm over which nothing changes. */
export interface ArmSegment {
  /** [m] */
  length: number;
  /** The tube first. Parts share one axis and one curvature. */
  layers: readonly Layer[];
}

export interface Rigidity {
  /** EI of all layers [N·m²]. */
  flexural: number;
  /** κAG of all layers [N]. */
  shear: number;
  /** GJ of all layers [N·m²]. */
  torsional: number;
}

/**
 * Refuses segments that no arm can have.
 * @throws InputError when there is none, one has no layer, or a number is out of range
 */
export function requireSegments(segments: readonly ArmSegment[]): void {
  if (!Array.isArray(segments) || segments.length === 0) {
    throw new InputError({
      parameter: 'segments',
      quantity: 'segments of the arm',
      value: segments,
      rule: 'must be at least one',
    });
  }
  for (const { length, layers } of segments) {
    requirePositive(length, { parameter: 'length', quantity: 'length of a segment', kind: 'length' });
    if (!Array.isArray(layers) || layers.length === 0) {
      throw new InputError({
        parameter: 'layers',
        quantity: 'layers of a segment',
        value: layers,
        rule: 'must be at least one',
      });
    }
    for (const layer of layers) requireLayer(layer);
  }
}

function requireLayer({ section, youngsModulus, shearModulus, density }: Layer): void {
  requirePositive(youngsModulus, { parameter: 'youngsModulus', quantity: 'Young’s modulus', kind: 'modulus' });
  requirePositive(shearModulus, { parameter: 'shearModulus', quantity: 'shear modulus', kind: 'modulus' });
  if (density !== undefined)
    requireNotNegative(density, { parameter: 'density', quantity: 'density', kind: 'density' });
  requirePositive(section.area, { parameter: 'area', quantity: 'cross-section area', kind: 'area' });
  requirePositive(section.torsionConstant, {
    parameter: 'torsionConstant',
    quantity: 'torsion constant',
    kind: 'secondMomentOfArea',
  });
  requirePositive(section.shearCoefficient, {
    parameter: 'shearCoefficient',
    quantity: 'shear coefficient',
    kind: 'ratio',
  });
  for (const plane of [section.vertical, section.horizontal]) {
    requirePositive(plane.secondMomentOfArea, {
      parameter: 'secondMomentOfArea',
      quantity: 'second moment of area',
      kind: 'secondMomentOfArea',
    });
    requirePositive(plane.extremeFibre, {
      parameter: 'extremeFibre',
      quantity: 'extreme fibre distance',
      kind: 'length',
    });
  }
}

/**
 * Rigidities of a segment: concentric layers add.
 * $$EI = \sum E_i I_i,\quad \kappa A G = \sum \kappa_i A_i G_i,\quad GJ = \sum G_i J_i$$
 * @param segment - stretch of arm
 * @param plane - plane of bending
 * @returns flexural, shear and torsional rigidity
 * @validity layers bonded together, centred on one axis
 * @throws InputError through requireSegments, called by every public function
 * @source gere-2004-mechanics, § 6.2, composite beams, with a common neutral axis
 */
export function rigidity({ layers }: ArmSegment, plane: Plane): Rigidity {
  return layers.reduce(
    (sum, { section, youngsModulus, shearModulus }) => ({
      flexural: sum.flexural + youngsModulus * section[plane].secondMomentOfArea,
      shear: sum.shear + section.shearCoefficient * section.area * shearModulus,
      torsional: sum.torsional + shearModulus * section.torsionConstant,
    }),
    { flexural: 0, shear: 0, torsional: 0 },
  );
}
