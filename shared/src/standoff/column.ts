import { InputError } from '../error.ts';
import { requireBetween } from '../require.ts';

/** How an end of a standoff is held: a rotational stiffness [N·m/rad], or one of its two limits. */
export type EndFixity = 'fixed' | 'pinned' | number;

/** A standoff as a beam between two plates, for its own bending. */
export interface ColumnBeam {
  /** Between the plates [m]. */
  length: number;
  /** EI, the same in every direction: round or hexagon [N·m²]. */
  flexuralRigidity: number;
  /** κAG [N]. */
  shearRigidity: number;
  /** EA [N]. */
  axialRigidity: number;
  /** At the bottom plate. */
  foot: EndFixity;
  /** At the top plate. */
  head: EndFixity;
}

export interface Column extends ColumnBeam {
  /** Forward in the plan [m]. */
  x: number;
  /** To the left in the plan [m]. */
  y: number;
}

/**
 * Refuses a standoff that no body can have. The ranges keep every product of the six equations far from the limits of
 * arithmetic; buildings fit in them as well.
 * @throws InputError when a number is out of range
 */
export function requireColumnBeam(column: ColumnBeam): void {
  requireBetween(column.length, 1e-4, 1e3, { parameter: 'length', quantity: 'standoff length', kind: 'length' });
  requireBetween(column.flexuralRigidity, 1e-9, 1e12, { parameter: 'flexuralRigidity', quantity: 'flexural rigidity' });
  requireBetween(column.shearRigidity, 1e-6, 1e15, {
    parameter: 'shearRigidity',
    quantity: 'shear rigidity',
    kind: 'force',
  });
  requireBetween(column.axialRigidity, 1e-6, 1e15, {
    parameter: 'axialRigidity',
    quantity: 'axial rigidity',
    kind: 'force',
  });
  requireFixity(column.foot, 'foot');
  requireFixity(column.head, 'head');
}

/**
 * Refuses a plan position beyond reason.
 * @throws InputError when it is not a number within a hundred metres
 */
export function requirePosition(value: number, parameter: string, quantity: string): void {
  requireBetween(value, -100, 100, { parameter, quantity, kind: 'length' });
}

function requireFixity(fixity: EndFixity, parameter: 'foot' | 'head'): void {
  if (fixity === 'fixed' || fixity === 'pinned') return;
  const quantity = `rotational stiffness of the ${parameter}`;
  if (typeof fixity === 'string') {
    throw new InputError({ parameter, quantity, value: fixity, rule: 'must be a stiffness, fixed or pinned' });
  }
  requireBetween(fixity, 0, 1e15, { parameter, quantity, kind: 'rotationalStiffness' });
}

/**
 * Share of full fixity that an end spring gives: 0 pinned, 1 fixed.
 * $$\alpha = \frac{k_\theta}{k_\theta + EI/L}$$
 * @param fixity - preset or rotational stiffness [N·m/rad]
 * @param column - for EI/L
 * @returns share between 0 and 1 [-]
 * @validity linear spring
 * @throws InputError through requireColumnBeam, called by every public function
 * @derivation α = 1/(1+a) with the end's flexibility a = EI/(L kθ) in units of the column's own L/EI
 */
export function fixityShare(fixity: EndFixity, column: ColumnBeam): number {
  if (fixity === 'fixed') return 1;
  if (fixity === 'pinned') return 0;
  return fixity / (fixity + column.flexuralRigidity / column.length);
}
