import { requireBelow, requireBetween, requireNotNegative } from '../require.ts';
import { roundTubeSection, solidRoundSection, type Section } from '../section/index.ts';
import type { ColumnBeam, EndFixity } from './column.ts';

export interface RoundStandoff {
  /** Across the round, or across the flats of a hexagon, which is stiffer [m]. */
  outerDiameter: number;
  /** Hole or thread through it, major diameter; 0 for a solid one [m]. */
  bore: number;
  /** [m] */
  length: number;
  /** [Pa] */
  youngsModulus: number;
  /** [Pa] */
  shearModulus: number;
  foot: EndFixity;
  head: EndFixity;
}

/**
 * Section of a standoff with its thread through.
 * $$I = \tfrac{\pi}{64}(D^4-d^4)$$
 * @param standoff - outside diameter and bore [m]
 * @returns section
 * @validity the thread counts as a plain hole of its major diameter: its ridges carry no bending
 * @throws InputError when the bore does not fit in the standoff
 * @source gere-2004-mechanics, Appendix D
 */
export function standoffSection({ outerDiameter, bore }: Pick<RoundStandoff, 'outerDiameter' | 'bore'>): Section {
  requireBetween(outerDiameter, 1e-4, 1, { parameter: 'outerDiameter', quantity: 'standoff diameter', kind: 'length' });
  const subject = { parameter: 'bore', quantity: 'bore of the standoff', kind: 'length' } as const;
  requireNotNegative(bore, subject);
  // A wall thinner than this is foil: no thread can be cut in it.
  requireBelow(bore, 0.98 * outerDiameter, 'must leave a wall to the standoff', subject);
  return bore === 0
    ? solidRoundSection({ diameter: outerDiameter })
    : roundTubeSection({ outerDiameter, wall: (outerDiameter - bore) / 2 });
}

/**
 * Rigidities of a round standoff.
 * $$EI,\quad \kappa A G,\quad EA$$
 * @param standoff - sizes, moduli, ends
 * @returns beam for columnHeadStiffness and plateOnColumns
 * @validity one section from foot to head
 * @throws InputError when a number is out of range
 * @source cowper-1966-shear, κ of a round tube
 */
export function roundStandoff(standoff: RoundStandoff): ColumnBeam {
  const section = standoffSection(standoff);
  const { youngsModulus, shearModulus, length, foot, head } = standoff;
  requireBetween(youngsModulus, 1e6, 1e13, {
    parameter: 'youngsModulus',
    quantity: 'Young’s modulus',
    kind: 'modulus',
  });
  requireBetween(shearModulus, 1e6, 1e13, { parameter: 'shearModulus', quantity: 'shear modulus', kind: 'modulus' });
  return {
    length,
    foot,
    head,
    flexuralRigidity: youngsModulus * section.vertical.secondMomentOfArea,
    shearRigidity: section.shearCoefficient * section.area * shearModulus,
    axialRigidity: youngsModulus * section.area,
  };
}
