/** What a cross-section does against bending in one plane. */
export interface BendingPlane {
  /** About the neutral axis across this plane [m⁴]. */
  secondMomentOfArea: number;
  /** From the neutral axis to the farthest material in this plane [m]. */
  extremeFibre: number;
}

/** A cross-section of an arm. */
export interface Section {
  /** [m²] */
  area: number;
  /** Bending up and down: across the plane of the propellers. */
  vertical: BendingPlane;
  /** Bending in the plane of the propellers. */
  horizontal: BendingPlane;
  /** Saint-Venant torsion constant J: torque over shear modulus and twist rate [m⁴]. */
  torsionConstant: number;
  /** Timoshenko shear coefficient: effective over total area [-]. */
  shearCoefficient: number;
}

/** The two planes that an arm bends in. */
export type Plane = 'vertical' | 'horizontal';

export const DEFAULT_POISSON_RATIO = 0.3;
